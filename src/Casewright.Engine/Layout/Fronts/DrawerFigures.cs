using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// One drawer: a front in its field, and a box on side slides. Box width = opening − slides (26 mm, 1 in), height = its part of the opening
/// − headroom (30 mm, 1 1/4 in), depth = the longest slide that the case takes.
/// </summary>
/// <param name="Box">Its case.</param>
/// <param name="Span">The front it is part of.</param>
/// <param name="Bay">Its bay, from 0.</param>
/// <param name="Drawer">Its place in the opening, from 0 at the bottom.</param>
internal sealed record DrawerFigures(CaseFigures Box, FrontSpan Span, int Bay, int Drawer)
{
    private RunFigures Run => Box.Run;

    private FrontField Field { get; } = new(Box, Span, Bay);

    /// <summary>C3-W2, C3-W2.3 in the third bay: drawers are numbered from the bottom of the case up.</summary>
    public string Id => PartIds.InBay(Box.Id, "W", NumberInCase, Bay, Box.Bays);

    /// <summary>Name in words.</summary>
    public string Name => Box.Bays == 1
        ? string.Create(CultureInfo.InvariantCulture, $"drawer {NumberInCase}, case {Box.Number}")
        : string.Create(CultureInfo.InvariantCulture, $"drawer {NumberInCase} bay {Bay + 1}, case {Box.Number}");

    /// <summary>Width of the front, rounded down.</summary>
    public Derivation FrontWidth => Field.Across(1).Down(Dimensions.Length, Run.Step);

    /// <summary>Height of the front, rounded down.</summary>
    public Derivation FrontHeight => HeightOf(Drawer);

    /// <summary>Left edge of the front.</summary>
    public Length FrontX => Field.FirstX;

    /// <summary>Lower edge of the front.</summary>
    public Length FrontY => Enumerable.Range(0, Drawer).Aggregate(Field.FirstY, (y, below) => y + HeightOf(below).Exact + Field.Gap.Value);

    /// <summary>The part of the opening that it has.</summary>
    public (Length Low, Length High) Slice
    {
        get
        {
            var (low, high) = Field.Opening;
            var half = Field.Gap.Value / 2;
            var top = FrontY + FrontHeight.Exact;
            return (Drawer == 0 ? low : FrontY - half, Drawer == Span.Design.Drawers - 1 ? high : top + half);
        }
    }

    /// <summary>Outer width of the box.</summary>
    public Rule BoxWidth => Rule.Of(new("c", $"clear width of the {(Run.Frame is null ? "bay" : "opening in the frame")} in case {Box.Number}", Field.Clear.Right - Field.Clear.Left))
        .Minus(new("gs", $"room for a pair of slides ({Run.Path}.frontGaps.slides)", Run.Gaps.Slides));

    /// <summary>Height of the box.</summary>
    public Rule BoxHeight => Rule.Of(new("s", "clear height that this drawer has of the opening", Slice.High - Slice.Low))
        .Minus(new("gh", $"headroom ({Run.Path}.frontGaps.headroom)", Run.Gaps.Headroom));

    /// <summary>Clear depth from the back, or the nailers in view before it, to the rear face of the front.</summary>
    public Length ClearDepth => Span.RearZ(Run) - Run.BackFront - (Run.NailersBehind ? Length.Zero : Run.Nailer?.Thickness ?? Length.Zero);

    /// <summary>Length of slides and box: the longest on the list that fits; null when none does.</summary>
    public Length? SlideLength => SlideLengths.Longest(ClearDepth - Run.Gaps.BehindBox, Run.Job.Units);

    /// <summary>Left side of the box.</summary>
    public Length BoxX => Field.Clear.Left + (Run.Gaps.Slides / 2);

    /// <summary>How far the frame laps over the upright on either side: what the slides are packed out.</summary>
    public (Length Left, Length Right) Packing => (Field.Clear.Left - Box.BayLeft(Bay), Box.BayRight(Bay) - Field.Clear.Right);

    /// <summary>Lower edge of the box.</summary>
    public Length BoxY => Slice.Low + (Run.Gaps.Headroom / 2);

    private int NumberInCase => Box.Fronts.Where(f => f.IsDrawers && f.Number < Span.Number).Sum(f => f.Design.Drawers) + Drawer + 1;

    private Derivation HeightOf(int drawer)
    {
        var (given, count) = (Span.Design.Heights, Span.Design.Drawers);
        if (drawer < given.Count)
            return Rule.Of(new("h", string.Create(CultureInfo.InvariantCulture, $"height given ({Span.Path}.heights[{drawer}])"), given[drawer])).Down(Dimensions.Width, Run.Step);
        var rule = Field.Up(count);
        var taken = given.Aggregate(Length.Zero, (sum, h) => sum + h);
        if (taken > Length.Zero)
            rule = rule.Minus(new("hg", $"heights given ({Span.Path}.heights)", taken));
        return rule.ShareDown(Dimensions.Width, count - given.Count, Run.Step);
    }
}

/// <summary>Lengths in which drawer slides are sold (common practice, no source).</summary>
internal static class SlideLengths
{
    /// <summary>250 to 600 mm by 50; 10 to 24 in by 2; the longest that fits, or null.</summary>
    public static Length? Longest(Length room, UnitSystem units)
    {
        var lengths = units == UnitSystem.Inches
            ? Enumerable.Range(0, 8).Select(i => Length.FromInches(10 + (2 * i)))
            : Enumerable.Range(0, 8).Select(i => Length.FromMillimetres(250 + (50 * i)));
        return lengths.Where(l => l <= room).Select(l => (Length?)l).Max();
    }
}

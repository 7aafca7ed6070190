using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>A mark across a story stick.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Lower line from the foot; of a pin row, the first hole.</param>
/// <param name="To">Upper line from the foot; of a pin row, the last hole.</param>
/// <param name="Pitch">From hole to hole; zero for all else.</param>
/// <param name="Names">What it is for; names of both faces of a partition together.</param>
internal sealed record StickMark(UprightMarkKind Kind, Length From, Length To, Length Pitch, string Names)
{
    /// <summary>What makes two marks one.</summary>
    public string Key => $"{Kind} {From} {To} {Pitch}";
}

/// <summary>One strip of a story stick at full size: the stretch from number × step to the next, foot side down.</summary>
internal sealed class StickStrip(PlanIndex index, Length length, IReadOnlyList<StickMark> marks, Length step, int number)
{
    private const double Flap = 7;

    private static readonly Lettering Words = Lettering.Body.Sized(9.5);
    private static readonly Lettering Join = new(14, Weight: FontWeight.Bold);
    private static readonly Lettering Figure = Lettering.Figure.Sized(11);

    private readonly Length _low = step * number;
    private readonly Length _high = Length.Min(step * (number + 1), length);
    private readonly FreeSpace _space = new();

    /// <summary>The joints of the uprights that share a stick, each height once, with how many are joined there.</summary>
    public static IEnumerable<StickMark> JointsOf(PlanIndex index, IReadOnlyList<Part> uprights) => uprights
        .SelectMany(upright => index.SplicesOf(upright).Select(splice => splice.Position))
        .GroupBy(position => position)
        .Select(group => new StickMark(UprightMarkKind.Joint, group.Key, group.Key, Length.Zero, group.Count() == uprights.Count
            ? "joint"
            : string.Create(CultureInfo.InvariantCulture, $"joint of {group.Count()} of {uprights.Count}")));

    /// <summary>The dados, holes and cut-outs that an upright gives to its stick, from the foot up, those of both faces at one height together.</summary>
    public static IReadOnlyList<StickMark> MarksOf(PlanIndex index, Part upright) =>
    [
        .. UprightMarks.Of(index, upright)
            .Where(mark => mark.Kind is UprightMarkKind.Dado or UprightMarkKind.Pins or UprightMarkKind.Cut)
            .GroupBy(mark => (mark.Kind, mark.From, mark.To, mark.Pitch))
            .Select(group => new StickMark(group.Key.Kind, group.Key.From, group.Key.To, group.Key.Pitch, NamesOf(group)))
            .OrderBy(mark => mark.From).ThenBy(mark => mark.To),
    ];

    private static string NamesOf(IEnumerable<UprightMark> alike) => string.Join(", ", alike.Select(mark => mark.What).Distinct(StringComparer.Ordinal)).Replace(", dado ", ", ", StringComparison.Ordinal);

    /// <summary>Draws the strip; its top edge and the flap above it are the highest it reaches.</summary>
    public void Draw(Sketch sketch, double left, double top, double width)
    {
        var strip = new Box(left, top, width, Mm(_high - _low));
        sketch.Group($"strip:{number}", $"strip {number + 1}", "strip", group =>
        {
            group.Line(strip.Left, strip.Top, strip.Left, strip.Bottom, Pen.Reference);
            group.Line(strip.Right, strip.Top, strip.Right, strip.Bottom, Pen.Thin);
            DrawEnd(group, strip, strip.Top, _high, upper: true);
            DrawEnd(group, strip, strip.Bottom, _low, upper: false);
            foreach (var mark in marks)
                DrawMark(group, strip, mark);
            LabelEnd(group, strip, strip.Top, _high, upper: true);
            LabelEnd(group, strip, strip.Bottom, _low, upper: false);
            foreach (var mark in marks)
                LabelMark(group, strip, mark);
        });
    }

    private static double Mm(Length value) => PartBox.Mm(value);

    private double YOf(Box strip, Length x) => strip.Bottom - Mm(x - _low);

    // A lettered line to join at, or the end of the stick. The upper strip is glued onto the flap of the lower one.
    private void DrawEnd(Sketch sketch, Box strip, double y, Length at, bool upper)
    {
        sketch.Line(strip.Left, y, strip.Right, y, Pen.Object);
        if (IsOuter(at, upper))
            return;
        foreach (var x in (double[])[strip.Left + 8, strip.Left + 16])
            sketch.Line(x, y - 3, x, y + 3, Pen.Thin);
        if (upper)
            sketch.Chain([new(strip.Left, y), new(strip.Left + 2, y - Flap + 1), new(strip.Right - 2, y - Flap + 1), new(strip.Right, y)], Pen.Hidden);
    }

    private bool IsOuter(Length at, bool upper) => upper ? at == length : at == Length.Zero;

    private void LabelEnd(Sketch sketch, Box strip, double y, Length at, bool upper)
    {
        var text = IsOuter(at, upper) ? (upper ? "HEAD " : "FOOT ") : LetterOf(upper ? number : number - 1) + "  ";
        var baseline = upper ? y + 1.8 + Join.CapHeight : y - 1.8;
        var item = new TextItem(text + index.Figures.Main(at), new(strip.Right - 2, baseline), Join, Anchor.End, Backed: true);
        sketch.Add(item);
        _space.Take(item.Bounds.Inset(-0.6));
    }

    private static string LetterOf(int join) => ((char)('A' + (join % 26))).ToString();

    private void DrawMark(Sketch sketch, Box strip, StickMark mark)
    {
        switch (mark.Kind)
        {
            case UprightMarkKind.Pins:
                DrawPins(sketch, strip, mark);
                break;
            case UprightMarkKind.Joint:
                DrawLine(sketch, strip, mark.From, Pen.SightLine);
                break;
            default:
                DrawBand(sketch, strip, mark);
                break;
        }
    }

    private void DrawLine(Sketch sketch, Box strip, Length at, Pen pen)
    {
        if (at >= _low && at <= _high)
            sketch.Line(strip.Left, YOf(strip, at), strip.Right, YOf(strip, at), pen);
    }

    private void DrawBand(Sketch sketch, Box strip, StickMark mark)
    {
        var (from, to) = (Length.Max(mark.From, _low), Length.Min(mark.To, _high));
        if (to <= from)
            return;
        var band = new Box(strip.Left, YOf(strip, to), strip.Width, Mm(to - from));
        sketch.Add(Hatch.Lines([new(band.Left, band.Top), new(band.Left + 7, band.Top), new(band.Left + 7, band.Bottom), new(band.Left, band.Bottom)], 45, 2, Pen.Hair));
        DrawLine(sketch, strip, mark.From, Pen.Object);
        DrawLine(sketch, strip, mark.To, Pen.Object);
    }

    private void DrawPins(Sketch sketch, Box strip, StickMark mark)
    {
        for (var at = mark.From; at <= mark.To; at += mark.Pitch)
        {
            if (at < _low || at > _high)
                continue;
            var y = YOf(strip, at);
            sketch.Line(strip.Left, y, strip.Left + 5.4, y, Pen.Thin);
            sketch.Circle(strip.Left + 6.6, y, 1.2, Pen.Thin);
            if (mark.Pitch <= Length.Zero)
                break;
        }
    }

    private void LabelMark(Sketch sketch, Box strip, StickMark mark)
    {
        if (mark.Kind == UprightMarkKind.Pins)
        {
            var count = mark.Pitch > Length.Zero ? ((mark.To - mark.From) / mark.Pitch) + 1 : 1;
            Label(sketch, strip, mark.From, [$"first hole {index.Figures.Main(mark.From)}", string.Create(CultureInfo.InvariantCulture, $"{count} holes every {index.Figures.Main(mark.Pitch)}")]);
            if (mark.To > mark.From)
                Label(sketch, strip, mark.To, [$"last hole {index.Figures.Main(mark.To)}"]);
        }
        else if (mark.From == mark.To)
        {
            Label(sketch, strip, mark.From, [mark.Names, index.Figures.Main(mark.From)]);
        }
        else
        {
            Label(sketch, strip, Middle(mark), [mark.Names, $"{index.Figures.Main(mark.From)} to {index.Figures.Main(mark.To)}"]);
        }
    }

    // The middle of what this strip shows of a band.
    private Length Middle(StickMark mark)
    {
        var (from, to) = (Length.Max(mark.From, _low), Length.Min(mark.To, _high));
        return to <= from ? Length.FromNanometres(-1) : from + ((to - from) / 2);
    }

    // Beside its mark, or as near as there is room; joined to it by a thin line when it had to move.
    private void Label(Sketch sketch, Box strip, Length at, IReadOnlyList<string> lines)
    {
        if (at < _low || at > _high)
            return;
        var y = YOf(strip, at);
        var texts = lines.Select((line, i) => (Text: Kit.Fitting.Cut(line, i == 0 ? Words : Figure, strip.Width - 14), Lettering: i == 0 ? Words : Figure)).ToList();
        var height = texts.Count * Words.LineHeight;
        var left = strip.Left + 12;
        var spots = Enumerable.Range(0, 60).SelectMany(i => (double[])[y - (height / 2) + i, y - (height / 2) - i])
            .Select(top => new Box(left, top, strip.Width - 13, height)).Where(box => box.Top >= strip.Top + 0.4 && box.Bottom <= strip.Bottom - 0.4);
        if (_space.TakeFirst(spots) is not { } place)
            return;
        if (Math.Abs(place.Centre.Y - y) > 2)
            sketch.Chain([new(strip.Left + 8, y), new(strip.Left + 11, place.Centre.Y)], Pen.Dimension);
        for (var i = 0; i < texts.Count; i++)
            sketch.Text(texts[i].Text, left, place.Top + (i * Words.LineHeight) + Sketch.Ascent(texts[i].Lettering), texts[i].Lettering, backed: true);
    }
}

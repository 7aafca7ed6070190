using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Marks of the uprights at full size, to be glued onto a batten: the stick then lays out every upright that it names. The strips of a
/// stick are cut out and joined at lettered lines; a bar on every page proves that it was printed at full size.
/// </summary>
public static class StorySticks
{
    private const double Gap = 5;
    private const double Flap = 7;
    private const double CheckHeight = 11;
    private const int StripsPerPage = 4;

    /// <summary>The pages: uprights with the same marks share a stick.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var sticks = plan.Parts
            .Where(part => part.Role is PartRole.Side or PartRole.Partition && part.Machining.Count > 0)
            .Select(part => (Part: part, Marks: StickStrip.MarksOf(index, part)))
            .GroupBy(stick => string.Join('|', stick.Marks.Select(mark => mark.Key).Prepend(stick.Part.Length.ToString())), StringComparer.Ordinal)
            .Select((group, i) => new Stick(
                i + 1,
                [.. group.Select(stick => stick.Part)],
                [.. group.First().Marks.Concat(StickStrip.JointsOf(index, [.. group.Select(stick => stick.Part)])).OrderBy(mark => mark.From).ThenBy(mark => mark.To)]));
        return sticks.SelectMany(stick => PagesOf(index, stick, settings)).ToValueList();
    }

    private sealed record Stick(int Number, IReadOnlyList<Part> Parts, IReadOnlyList<StickMark> Marks)
    {
        public Length Length => Parts[0].Length;
    }

    private static IEnumerable<PageDraft> PagesOf(PlanIndex index, Stick stick, PaperSettings settings)
    {
        var names = NameList.Of(stick.Parts.Select(part => part.Id));
        var code = string.Create(CultureInfo.InvariantCulture, $"Stick {stick.Number}");
        var heading = new PageHeading("Story stick, full size", "measured from the foot; glue it onto a batten", code);
        var page = Drafting.Page(
            DocumentKind.StorySticks, settings, landscape: false, heading, $"{code}: marks at full size for {names}.", "Print at 100 %, never fitted to the page.", stick.Parts[0].Id);
        var body = page.Format.Body(heading.Height);
        var step = StepOf(index, stick.Length, body.Height - CheckHeight - (2 * Flap));
        var strips = Enumerable.Range(0, Count(stick.Length, step)).ToList();
        foreach (var onPage in strips.Chunk(StripsPerPage))
        {
            var sketch = new Sketch();
            for (var i = 0; i < onPage.Length; i++)
            {
                var column = body.WithoutTop(CheckHeight + Flap).Column(i, StripsPerPage, Gap);
                new StickStrip(index, stick.Length, stick.Marks, step, onPage[i]).Draw(sketch, column.Left, column.Top, column.Width);
            }

            DrawCheck(sketch, index, body, names, string.Create(CultureInfo.InvariantCulture, $"strips {onPage[0] + 1} to {onPage[^1] + 1} of {strips.Count}"));
            yield return page with { Body = sketch.Items, Heading = onPage[0] == 0 ? heading : heading with { Subtitle = heading.Subtitle + " · continued" } };
        }
    }

    private static int Count(Length length, Length step) => (int)(length.CeilingTo(step) / step);

    // Whole centimetres or inches, so that the join lines fall on figures that a tape checks; as even as the fewest strips allow.
    private static Length StepOf(PlanIndex index, Length length, double room)
    {
        var unit = index.Figures.Units == UnitSystem.Inches ? Length.FromInches(1) : Length.FromMillimetres(10);
        var most = Length.FromNanometres((long)(room * Length.NanometresPerMillimetre)).FloorTo(unit);
        return (length / Count(length, most)).CeilingTo(unit);
    }

    private static void DrawCheck(Sketch sketch, PlanIndex index, Box body, string names, string strips)
    {
        var inches = index.Figures.Units == UnitSystem.Inches;
        var length = inches ? 101.6 : 100.0;
        var y = body.Top + 3;
        sketch.Line(body.Left, y, body.Left + length, y, Pen.Object);
        foreach (var x in (double[])[0, length])
            sketch.Line(body.Left + x, y - 2, body.Left + x, y + 2, Pen.Object);
        var words = inches ? "exactly 4 in on the paper, or it was not printed at 100 %" : "exactly 100 mm on the paper, or it was not printed at 100 %";
        sketch.Text(words, body.Left, y + 6, Lettering.Note);
        var room = body.Width - length - 6;
        sketch.Text(Fitting.Cut(names, Lettering.BodyStrong, room), body.Right, y + 1, Lettering.BodyStrong, Anchor.End);
        sketch.Text(strips, body.Right, y + 6, Lettering.Note, Anchor.End);
    }
}

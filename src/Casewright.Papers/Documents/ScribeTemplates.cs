using System.Globalization;
using Casewright.Engine.Surveying;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Scribe edges at full size: each blank's edge in strips that are cut out and taped together on their crosses. A strip's straight line is
/// laid on a line drawn on the blank; the curve is the edge that is left. Every page has lengths to measure before it is trusted.
/// </summary>
public static class ScribeTemplates
{
    private const double LabelRoom = 15;
    private const double HeadRoom = 13;
    private const double Cross = 2.5;

    private static readonly Lettering Figure = Lettering.Figure.Sized(10);

    /// <summary>The pages; none without scribe tables.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var survey = SurveyStage.Read(plan.Job, new(plan.Cases, plan.Parts, []));
        return survey.Runs.SelectMany(run => run.AllScribes).Where(IsCut).SelectMany(s => PagesOf(index, s, settings)).ToValueList();
    }

    // A crown that ends under the ceiling all along is left straight; any other is cut where it would meet it.
    private static bool IsCut(ScribeTable scribe) => scribe.Against != "ceiling" || scribe.Rows.Any(row => row.TakeOff > Length.Zero);

    private static IEnumerable<PageDraft> PagesOf(PlanIndex index, ScribeTable scribe, PaperSettings settings)
    {
        var strip = new Strip(scribe, index.Figures.Units);
        var site = new SiteFigures(index.Figures);
        var heading = new PageHeading(
            "Template: " + scribe.Name,
            $"full size · heavy line {site.Main(strip.Base)} from the straight edge",
            scribe.Part);
        var page = Drafting.Page(
            DocumentKind.ScribeTemplates, settings, landscape: false, heading, $"Scribe edge of {scribe.Name} against the {scribe.Against}, at full size.", key: scribe.Part);
        var body = page.Format.Body(heading.Height);
        var width = strip.Width + LabelRoom + 6;
        var columns = Math.Max(1, (int)(body.Width / width));
        for (var first = 0; first < strip.Count; first += columns)
        {
            var sketch = new Sketch();
            for (var i = first; i < Math.Min(first + columns, strip.Count); i++)
                DrawStrip(sketch, site, strip, i, body.Left + LabelRoom + ((i - first) * width), body.Top + HeadRoom);
            DrawCheck(sketch, index.Figures.Units, body, $"Tape {strip.Count} strips on their crosses; heavy line on a line {site.Main(strip.Base)} from the straight edge; the thin line is the cut.");
            yield return page with { Body = sketch.Items };
        }
    }

    private static void DrawStrip(Sketch sketch, SiteFigures site, Strip strip, int number, double x, double top)
    {
        var (from, to) = strip.Span(number);
        var bottom = top + strip.Long;
        double Y(Length at) => bottom - Mm(at - from);
        sketch.Line(x, Y(to), x, bottom, Pen.Reference);
        sketch.Chain(strip.Edge(from, to).Select(p => new Point(x + Mm(p.Stands - strip.Base), Y(p.At))), Pen.Object);
        DrawCross(sketch, x, bottom);
        DrawCross(sketch, x, Y(to));
        var title = string.Create(CultureInfo.InvariantCulture, $"{strip.Scribe.Part} {number + 1}/{strip.Count}");
        sketch.Text(Fitting.Cut(title, Lettering.BodyStrong, strip.Width + LabelRoom), x - LabelRoom, top - 3.6, Lettering.BodyStrong);
        var words = strip.IsUpright ? ("foot", "top") : ("left", "right");
        sketch.Text(number == 0 ? words.Item1 : string.Create(CultureInfo.InvariantCulture, $"to {number}"), x - LabelRoom, bottom + 5.4, Lettering.Small);
        sketch.Text(number == strip.Count - 1 ? words.Item2 : string.Create(CultureInfo.InvariantCulture, $"to {number + 2}"), x - LabelRoom + 4, Y(to) + 5.4, Lettering.Small);
        foreach (var at in strip.Ticks(from, to).Where(at => Y(at) > Y(to) + 9 && Y(at) < bottom - 4))
        {
            sketch.Line(x - 2.4, Y(at), x - 0.8, Y(at), Pen.Thin);
            sketch.TextCentred(site.Main(at), x - 3, Y(at), Figure, Anchor.End);
        }
    }

    private static void DrawCross(Sketch sketch, double x, double y)
    {
        sketch.Line(x - Cross, y, x + Cross, y, Pen.Thin);
        sketch.Line(x, y - Cross, x, y + Cross, Pen.Thin);
        sketch.Circle(x, y, Cross * 0.6, Pen.Thin);
    }

    /// <summary>What to do, and check lengths both ways: 100 mm, or 4 in.</summary>
    private static void DrawCheck(Sketch sketch, UnitSystem units, Box body, string words)
    {
        sketch.Text(Fitting.Cut(words, Lettering.Small, body.Width), body.Left, body.Top + 3.4, Lettering.Small);
        var (length, name) = units == UnitSystem.Inches ? (101.6, "4 in") : (100.0, "100 mm");
        var y = body.Bottom - 4;
        sketch.Line(body.Left + 2, y, body.Left + 2 + length, y, Pen.Object);
        foreach (var x in (double[])[body.Left + 2, body.Left + 2 + length])
            sketch.Line(x, y - 2, x, y + 2, Pen.Object);
        sketch.Text($"Measure this line: exactly {name}, and each full strip from cross to cross {(units == UnitSystem.Inches ? "8 in" : "200 mm")}.", body.Left + 2, y - 3.4, Lettering.Small);
    }

    private static double Mm(Length length) => (double)length.Millimetres;

    /// <summary>A scribe edge cut into strips of equal length.</summary>
    private sealed class Strip
    {
        private readonly Length _long;

        public Strip(ScribeTable scribe, UnitSystem units)
        {
            Scribe = scribe;
            _long = units == UnitSystem.Inches ? Length.FromInches(8) : Length.FromMillimetres(200);
            var step = units == UnitSystem.Inches ? Length.FromInches(0, 1, 2) : Length.FromMillimetres(5);
            Base = Length.Max(Length.Zero, (scribe.Narrowest - (2 * step)).FloorTo(step));
        }

        public ScribeTable Scribe { get; }

        /// <summary>From the blank's straight edge to the line that the template is laid on.</summary>
        public Length Base { get; }

        public bool IsUpright => InstallTables.IsUpright(Scribe);

        public double Long => Mm(_long);

        public double Width => Mm(Scribe.Widest - Base) + 4;

        public int Count => (int)((Scribe.Length + _long - Length.FromNanometres(1)) / _long);

        /// <summary>Full strips; where little would be left for the last one, the last two share what is left.</summary>
        public (Length From, Length To) Span(int number) => (Cut(number), Cut(number + 1));

        private Length Cut(int number)
        {
            var rest = Scribe.Length - (_long * (Count - 1));
            if (number == Count - 1 && Count > 1 && rest < _long / 2)
                return (_long * (Count - 2)) + ((_long + rest) / 2);
            return Length.Min(_long * number, Scribe.Length);
        }

        /// <summary>Quarters of a strip, to be marked with their distance from the reference end.</summary>
        public IEnumerable<Length> Ticks(Length from, Length to) =>
            Enumerable.Range(1, 3).Select(i => from + (_long / 4 * i)).Where(at => at < to);

        /// <summary>The edge between two places, with both ends.</summary>
        public IEnumerable<(Length At, Length Stands)> Edge(Length from, Length to)
        {
            var curve = new Model.Site.Surveying.ReadingCurve(Scribe.Rows.Select(r => (r.At, r.Stands)));
            return Scribe.Rows.Select(r => r.At).Where(at => at > from && at < to).Prepend(from).Append(to).Select(at => (at, curve.At(at)));
        }
    }
}

using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The wall from above and a section through its first bay: depths, backs, base and head.</summary>
public static class PlanAndSection
{
    private const double SectionRoom = 92;

    private static readonly Lettering Figure = Lettering.Figure;

    /// <summary>The pages: one for each page of the elevation.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        return plan.Job.Runs.SelectMany(run => Elevation.SpreadsOf(index, run, settings).Select(spread => PageOf(index, run, spread, settings))).ToValueList();
    }

    private static PageDraft PageOf(PlanIndex index, Run run, Elevation.Spread spread, PaperSettings settings)
    {
        var wall = Elevation.WallOf(index, run);
        var heading = new PageHeading("Plan and section: " + run.Name, $"{wall.Name}{spread.Words} · dimensions in {index.Figures.Unit}, do not measure on the paper");
        var page = Drafting.Page(DocumentKind.PlanAndSection, settings, true, heading, $"{run.Name} from above and in section.", index.Figures.FootNote, run.Id);
        var body = page.Format.Body(heading.Height);
        var sketch = new Sketch();
        DrawPlan(sketch, index, run, spread, body with { Width = body.Width - SectionRoom });
        DrawSection(sketch, index, run, spread, new(body.Right - SectionRoom + 8, body.Top, SectionRoom - 8, body.Height));
        return page with { Body = sketch.Items };
    }

    private static void DrawPlan(Sketch sketch, PlanIndex index, Run run, Elevation.Spread spread, Box area)
    {
        sketch.Text("Plan", area.Left, area.Top + 4.4, Lettering.Heading);
        var (from, to) = (spread.Stretch.From, spread.Stretch.To);
        var scale = (area.Width - 34) / Mm(to - from);
        var (left, wallY) = (area.Left + 24, area.Top + 20);
        sketch.Add(Hatch.Lines([new(left, wallY - 3), new(left + (Mm(to - from) * scale), wallY - 3), new(left + (Mm(to - from) * scale), wallY), new(left, wallY)], 45, 1.5, Pen.Hair));
        sketch.Line(left, wallY, left + (Mm(to - from) * scale), wallY, Pen.Rule);
        double X(Length x) => left + (Mm(x - from) * scale);
        foreach (var part in PartsOf(index, run, spread).Where(part => part.Role is not (PartRole.AdjustableShelf or PartRole.Nosing or PartRole.Rail)).OrderBy(part => High(part).Y))
        {
            var outline = PlanOutline.Of(part).Select(p => new Point(X(p.X), wallY + (Mm(p.Z) * scale)));
            sketch.Group("plan:" + part.Id, $"{part.Name}, {part.Id}", "part", group => group.Area(outline, Pen.Thin, Tone.Wood));
        }

        var foremost = PartsOf(index, run, spread).Select(part => High(part).Z).Append(spread.Cases.Max(box => box.Depth)).Max();
        DrawPlanFigures(sketch, index, spread, X, wallY, scale, foremost);
    }

    private static void DrawPlanFigures(Sketch sketch, PlanIndex index, Elevation.Spread spread, Func<Length, double> x, double wallY, double scale, Length foremost)
    {
        var depth = spread.Cases.Max(box => box.Depth);
        var front = wallY + (Mm(depth) * scale);
        DimensionLine.Vertical(sketch, wallY, front, x(spread.Stretch.From) - 7, x(spread.Stretch.From), index.Figures.Main(depth), Figure);
        var clear = wallY + (Mm(foremost) * scale);
        foreach (var box in spread.Cases.Where(box => box.Tier == spread.Cases.Min(other => other.Tier)))
        {
            var width = Mm(box.Width) * scale;
            if (TextLayout.Width(box.Id, Figure) + 2 < width)
                sketch.Text(box.Id, x(box.X + (box.Width / 2)), clear + 6, Figure, Anchor.Middle);
        }

        var overall = clear + 14;
        DimensionLine.Horizontal(
            sketch, x(spread.Stretch.From), x(spread.Stretch.To), overall, overall - 3, index.Figures.Both(spread.Stretch.To - spread.Stretch.From) + " overall", Figure.Sized(13));
        var note = "Wall drawn straight: fit fillers and backs to the wall as it is.";
        sketch.Text(note, x(spread.Stretch.From), overall + 12, Lettering.Note);
    }

    private static void DrawSection(Sketch sketch, PlanIndex index, Run run, Elevation.Spread spread, Box area)
    {
        var wall = Elevation.WallOf(index, run);
        var box = spread.Cases[0];
        var at = box.X + (box.ClearBay / 2) + (box.Width / 20);
        sketch.Text("Section through " + box.Id, area.Left, area.Top + 4.4, Lettering.Heading);
        var ceiling = wall.CeilingAt(at);
        var tallest = Length.Max(ceiling, spread.Stretch.Top);
        var scale = (area.Height - 32) / Mm(tallest);
        var (wallX, floor) = (area.Left + 8, area.Top + 11 + (Mm(tallest) * scale));
        sketch.Add(Hatch.Lines([new(wallX - 3, floor - (Mm(ceiling) * scale)), new(wallX, floor - (Mm(ceiling) * scale)), new(wallX, floor), new(wallX - 3, floor)], 45, 1.5, Pen.Hair));
        sketch.Line(wallX, floor - (Mm(ceiling) * scale), wallX, floor, Pen.Rule);
        var front = wallX + (Mm(box.Depth) * scale);
        sketch.Line(wallX - 3, floor, front + 1.5, floor, Pen.Rule);
        sketch.Line(wallX - 3, floor - (Mm(ceiling) * scale), front + 1.5, floor - (Mm(ceiling) * scale), Pen.Thin);
        var cut = PartsOf(index, run, spread).Where(part => Low(part).X <= at && High(part).X >= at).ToList();
        foreach (var part in cut)
        {
            var (low, high) = (Low(part), High(part));
            if (PartSolid.IsCut(part) && PartSolid.HeightsAt(part, at) is { } here)
                (low, high) = (low with { Y = here.Low }, high with { Y = here.High });
            sketch.Group("section:" + part.Id, $"{part.Name}, {part.Id}", "part", group => group.Rectangle(
                new(wallX + (Mm(low.Z) * scale), floor - (Mm(high.Y) * scale), Mm(high.Z - low.Z) * scale, Mm(high.Y - low.Y) * scale), Pen.Thin, Tone.WoodEdge));
        }

        DimensionLine.Horizontal(sketch, wallX, front, floor + 7, floor + 1, index.Figures.Both(box.Depth), Figure);
        DrawShelfNotes(sketch, index, cut, front, floor, scale, area.Right);
    }

    // Each shelf's code and depth at its own height, thinned out where they would touch.
    private static void DrawShelfNotes(Sketch sketch, PlanIndex index, List<Part> cut, double front, double floor, double scale, double right)
    {
        var last = double.PositiveInfinity;
        foreach (var part in cut.Where(part => part.Role is PartRole.Bottom or PartRole.Top or PartRole.FixedShelf or PartRole.AdjustableShelf or PartRole.Counter).OrderBy(part => Low(part).Y))
        {
            var y = floor - (Mm(Low(part).Y + High(part).Y) * scale / 2);
            if (last - y < Figure.CapHeight + 1.4)
                continue;
            last = y;
            sketch.Line(front + 2, y, front + 6, y, Pen.Dimension);
            var words = string.Create(CultureInfo.InvariantCulture, $"{part.Id}  {index.Figures.Main(part.Width)} deep");
            sketch.TextCentred(Fitting.Cut(words, Figure, right - front - 8), front + 7.5, y, Figure);
        }
    }

    private static IEnumerable<Part> PartsOf(PlanIndex index, Run run, Elevation.Spread spread) => index.Plan.Parts
        .Where(part => part.Run == run.Id && Low(part).X >= spread.Stretch.From && High(part).X <= spread.Stretch.To && (Low(part).Z >= Length.Zero || part.Role == PartRole.Counter));

    private static Point3 Low(Part part) => part.LowCorner;

    private static Point3 High(Part part) => part.HighCorner;

    private static double Mm(Length length) => (double)length.Millimetres;
}

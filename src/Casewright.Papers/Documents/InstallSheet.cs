using Casewright.Engine.Checks;
using Casewright.Engine.Surveying;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Site.Surveying;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>What is set out and fitted on site, run by run: base heights and shims by station, scribe tables, studs, order of work, cautions.</summary>
public static class InstallSheet
{
    private const double FloorHeight = 46;

    private static readonly Lettering Figure = Lettering.Figure;

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var survey = SurveyStage.Read(plan.Job, new(plan.Cases, plan.Parts, []));
        return plan.Job.Runs.SelectMany(run => PagesOf(index, survey, run, settings)).ToValueList();
    }

    private static ValueList<PageDraft> PagesOf(PlanIndex index, SurveyResult survey, Run run, PaperSettings settings)
    {
        var wall = Elevation.WallOf(index, run);
        var site = new SiteFigures(index.Figures);
        var flow = Drafting.Flow(
            DocumentKind.InstallSheet, settings, landscape: false, new("Install: " + run.Name, $"{wall.Name} · figures in {index.Figures.Unit}, {site.Rounding}"),
            $"Setting out and fitting {run.Name}.", index.Figures.FootNote);
        var read = survey.Runs.FirstOrDefault(r => r.Run == run.Id);
        var level = survey.Walls.FirstOrDefault(w => w.Wall == wall.Id)?.Level;
        if (read is { Base.Count: > 0 } && level is not null)
        {
            DrawFloor(flow, site, read, level);
            DrawStations(flow, site, read);
        }

        if (read is not null)
        {
            InstallTables.Fillers(flow, site, read);
            InstallTables.Scribes(flow, site, read);
            InstallTables.Studs(flow, site, index, read);
        }

        InstallTables.Features(flow, site, wall);
        Missing(flow, survey, wall.Id);
        Order(flow, index, run);
        Cautions(flow);
        return flow.Finish();
    }

    /// <summary>Floor and base along the wall; heights ten times as large as lengths, or as fits, and so stated.</summary>
    private static void DrawFloor(PageFlow flow, SiteFigures site, SurveyedRun read, LevelLine level)
    {
        flow.Heading("Floor and base, from left to right", FloorHeight + 8);
        var (from, to) = (read.Base[0].At, read.Base[^1].At);
        var slope = site.Main(Length.FromMillimetres((decimal)Math.Round(Math.Abs(level.Best.Slope) * 1000, 1)));
        flow.Paragraph(
            $"Highest floor at {site.Both(level.HighAt)} along the wall, {Line(level.HighLine)}. The floor differs by {site.Both(level.Fall)}; its best straight line is {slope} in 1000 out of level. "
            + "Set the base to one level: full height at the highest point, packed up everywhere else.", Lettering.Body);
        flow.Draw(FloorHeight, (sketch, box) =>
        {
            var scale = (box.Width - 12) / Mm(to - from);
            var deep = Math.Max(1, read.Base.Max(s => Mm(s.Below)));
            var times = Math.Clamp(Math.Floor(18 / (deep * scale)), 1, 40);
            var (zero, left) = (box.Top + 20, box.Left + 6);
            double X(Length at) => left + (Mm(at - from) * scale);
            sketch.Rectangle(new(left, zero - 12, box.Width - 12, 10), Pen.Thin, Tone.Wood);
            sketch.Line(left, zero, left + box.Width - 12, zero, Pen.SightLine);
            foreach (var line in read.Base.Select(s => s.Line).Distinct())
            {
                var floor = read.Base.Where(s => s.Line == line).Select(s => new Point(X(s.At), zero + (Mm(s.Below) * scale * times))).ToList();
                sketch.Chain(floor, line == ReadingLine.Back ? Pen.Object : Pen.Hidden);
            }

            sketch.Text(FormattableString.Invariant($"base; chalk line: level of the highest floor point; floor at the wall full, in front dashed, heights {times:0} times enlarged"), left, box.Top + 4.4, Lettering.Small);
        });
    }

    private static void DrawStations(PageFlow flow, SiteFigures site, SurveyedRun read)
    {
        Column[] columns = [new("", Fixed: 6), new("At, from the left end", 1.2, Lettering: Figure), new("Line", 1), new("Floor lies below", 1, Lettering: Figure), new("Base to this height", 1.2, Lettering: Lettering.ListCode), new("Shim", 1, Lettering: Figure)];
        Table.Draw(flow, columns, [.. read.Base.Select(s => Row.Of(
            Cell.TickBox,
            new(site.Both(s.At)),
            new(Line(s.Line) + (s.Measured ? "" : ", not read")),
            new(site.Main(s.Below)),
            new(site.Main(s.Height)),
            new(site.Main(s.Shim))))]);
    }

    private static void Missing(PageFlow flow, SurveyResult survey, string wall)
    {
        var missing = survey.Missing.Where(m => m.Wall == wall).ToList();
        if (missing.Count == 0)
            return;
        flow.Heading("Readings still missing: take them before the parts are cut");
        Column[] columns = [new("", Fixed: 6), new("Reading", 1.2), new("It decides", 1.4), new("Read", Fixed: 34)];
        Table.Draw(flow, columns, [.. missing.Select(m => Row.Of(Cell.TickBox, new(m.What), new(m.Decides), Cell.Empty))]);
    }

    private static void Order(PageFlow flow, PlanIndex index, Run run)
    {
        flow.Heading("Order of work", 40);
        Column[] columns = [new("", Fixed: 6), new("", Fixed: 8, Lettering: Figure), new("", 1)];
        var cases = index.Plan.Cases.Where(c => c.Run == run.Id).OrderBy(c => c.Tier).ThenBy(c => c.X).Select(c => c.Id).ToList();
        var steps = InstallOrder.Of(run, cases);
        Table.Draw(flow, columns, [.. steps.Select((step, i) => Row.Of(Cell.TickBox, new((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)), new(step)))]);
    }

    private static void Cautions(PageFlow flow)
    {
        flow.Heading("Mind", 30);
        foreach (var caution in WorkCaution.Usual.Where(c => c.Work is Work.Installing or Work.Lifting))
            flow.Paragraph("– " + caution.Text, Lettering.Body);
        flow.Paragraph("Local codes, the makers' instructions and licensed practice come first.", Lettering.BodyStrong);
    }

    /// <summary>A line in words.</summary>
    internal static string Line(ReadingLine line) => line == ReadingLine.Back ? "at the wall" : "in front";

    private static double Mm(Length length) => (double)length.Millimetres;
}

using Casewright.Engine.Surveying;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Tables of the install sheet.</summary>
internal static class InstallTables
{
    private static readonly Lettering Figure = Lettering.Figure;

    /// <summary>Blanks against walls, floor and ceiling, with the straight cut that leaves least to plane.</summary>
    public static void Fillers(PageFlow flow, SiteFigures site, SurveyedRun read)
    {
        var all = read.AllScribes.ToList();
        if (all.Count == 0)
            return;
        flow.Heading("Blanks to scribe", 24);
        Column[] columns = [new("Part", Fixed: 22, Lettering: Lettering.ListCode), new("Against", 1), new("Blank", Fixed: 20, Lettering: Figure), new("Left on it", 1.1, Lettering: Figure), new("Nearest straight cut", 2)];
        Table.Draw(flow, columns, [.. all.Select(scribe => Row.Of(
            new(scribe.Part),
            new(scribe.Against),
            new(site.Main(scribe.Blank)),
            new($"{site.Main(scribe.Narrowest)} to {site.Main(scribe.Widest)}"),
            new(Straight(site, scribe))))]);
        if (read.EvenFiller is { } even && read.Fillers.Count == 2 && read.Fillers[0].Visible != read.Fillers[1].Visible)
            flow.Paragraph($"The fillers are not alike: {site.Main(read.Fillers[0].Visible)} left, {site.Main(read.Fillers[1].Visible)} right. Split evenly they would be {site.Main(even)} each.", Lettering.Body);
    }

    /// <summary>One table for each blank, in columns side by side.</summary>
    public static void Scribes(PageFlow flow, SiteFigures site, SurveyedRun read)
    {
        foreach (var scribe in read.AllScribes)
        {
            var start = IsUpright(scribe) ? "the foot of the part" : "the left end of the part";
            flow.Heading($"Scribe {scribe.Part} to the {scribe.Against}", 30);
            flow.Paragraph($"Distances from {start}. Mark what is left from the straight edge at the case; off is what comes off the blank. • is a reading; between readings the {(scribe.Against == "floor" ? "floor" : "wall")} is taken as straight.", Lettering.Note);
            Column[] columns = [.. Enumerable.Range(0, 2).SelectMany(_ => new Column[]
            {
                new("", Fixed: 5), new("At", 1, Lettering: Figure), new("Left", 1, Lettering: Lettering.Figure.Sized(14)), new("Off", 1, Lettering: Figure),
            })];
            var half = (scribe.Rows.Count + 1) / 2;
            Table.Draw(flow, columns, [.. Enumerable.Range(0, half).Select(i => Row.Of(
                [.. Cells(site, scribe.Rows[i]), .. i + half < scribe.Rows.Count ? Cells(site, scribe.Rows[i + half]) : [Cell.Empty, Cell.Empty, Cell.Empty, Cell.Empty]]))]);
        }
    }

    /// <summary>What each nailer is screwed to, and where blocking is needed.</summary>
    public static void Studs(PageFlow flow, SiteFigures site, PlanIndex index, SurveyedRun read)
    {
        if (read.Studs.Count == 0)
            return;
        var wanted = index.Plan.Job.Shop.Checks.FixingsPerCase;
        flow.Heading("Studs behind the nailers", 24);
        Column[] columns = [new("", Fixed: 6), new("Case", Fixed: 18, Lettering: Lettering.ListCode), new("Height of the screws", 1, Lettering: Figure), new("Studs, from the left end of the wall", 1.6, Lettering: Figure), new("Pack out", 1, Lettering: Figure), new("", 1.8)];
        Table.Draw(flow, columns, [.. read.Studs.Select(hit => Row.Of(
            Cell.TickBox,
            new(hit.Case),
            new(site.Main(hit.Height)),
            new(hit.Studs.Count == 0 ? "none" : string.Join(", ", hit.Studs.Select(site.Main))),
            new(string.Join(", ", hit.Gaps.Select(site.Main))),
            new(Note(hit, wanted, site))))]);
    }

    /// <summary>What is on the wall.</summary>
    public static void Features(PageFlow flow, SiteFigures site, Wall wall)
    {
        if (wall.Survey is not { Features.Count: > 0 } survey)
            return;
        flow.Heading("On this wall", 24);
        Column[] columns = [new("What", 1.4), new("Along the wall", 1.3, Lettering: Figure), new("Height", 1.3, Lettering: Figure), new("", 1.2)];
        Table.Draw(flow, columns, [.. survey.Features.OrderBy(f => f.X).ThenBy(f => f.Y).Select(f => Row.Of(
            new(f.Name),
            new($"{site.Main(f.X)} to {site.Main(f.X + f.Width)}"),
            new($"{site.Main(f.Y)} to {site.Main(f.Y + f.Height)}"),
            new(f.Moves ? "to be moved first" : f.Kind == FeatureKind.Pipe ? "no screws near it" : "stays")))]);
    }

    /// <summary>Whether a blank stands upright.</summary>
    public static bool IsUpright(ScribeTable scribe) => scribe.Against is not ("floor" or "ceiling");

    private static Cell[] Cells(SiteFigures site, ScribeRow row) =>
        [new(row.Measured ? "•" : ""), new(site.Main(row.At)), new(site.Main(row.Stands)), new(row.TakeOff < Length.Zero ? "open " + site.Main(-row.TakeOff) : site.Main(row.TakeOff))];

    private static string Note(StudHits hit, int wanted, SiteFigures site)
    {
        var pipes = hit.Kept.Count == 0 ? "" : $"Leave {string.Join(", ", hit.Kept.Select(site.Main))}: pipe or cable. ";
        return pipes + (hit.Studs.Count < wanted ? "Blocking needed." : "");
    }

    private static string Straight(SiteFigures site, ScribeTable scribe)
    {
        var line = scribe.BestStraight;
        var (first, last) = (line.Intercept, line.Intercept + (line.Slope * (double)scribe.Length.Millimetres));
        var left = line.Deviation < 0.05 ? "which is all" : $"then {site.Metres(2 * line.Deviation / 1000)} at most to plane";
        return $"{site.Metres((first + line.Deviation) / 1000)} at {(IsUpright(scribe) ? "the foot" : "the left")}, {site.Metres((last + line.Deviation) / 1000)} at {(IsUpright(scribe) ? "the top" : "the right")}, {left}";
    }
}

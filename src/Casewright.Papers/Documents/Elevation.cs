using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The wall from the front: cases, shelves, sight lines of the splices, dimensions, findings where they are.</summary>
public static class Elevation
{
    private const double LeftRoom = 34;
    private const double RightRoom = 38;
    private const double BelowRoom = 28;
    private const double AboveRoom = 9;
    private const double NarrowestCase = 15;

    /// <summary>The pages: each run on one, or on several when its cases would be too small to read.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        return plan.Job.Runs.SelectMany(run => PagesOf(index, run, settings)).ToValueList();
    }

    /// <summary>A run as one drawing without page, for screens and files: millimetres of the room divided by <paramref name="divisor"/>.</summary>
    public static Scene Drawing(Plan plan, string run, double divisor = 20)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(divisor);
        var index = new PlanIndex(plan);
        var design = plan.Job.Runs.First(r => r.Id == run);
        var cases = CasesOf(index, design);
        var wall = plan.Job.Walls.First(w => w.Id == design.Wall);
        var stretch = Stretch.Of(index, design, cases, whole: true);
        var width = (double)(stretch.To - stretch.From).Millimetres / divisor;
        var height = (double)wall.Height.Millimetres / divisor;
        var sketch = new Sketch();
        var area = new Box(3, 3, width + LeftRoom + RightRoom, height + AboveRoom + BelowRoom);
        new ElevationDrawing(index, design, wall, cases, stretch, sketch, area, divisor).Draw();
        return sketch.ToScene(area.Width + 6, area.Height + 6, design.Name, $"{design.Name} from the front: {Words.Count(cases.Count, "case", "cases")}.");
    }

    internal static IReadOnlyList<CaseBox> CasesOf(PlanIndex index, Run run) =>
        [.. index.Plan.Cases.Where(box => box.Run == run.Id).OrderBy(box => box.X).ThenBy(box => box.Y)];

    /// <summary>Cases of a run that share a page, the stretch of wall they take, and how many times smaller it is drawn.</summary>
    internal sealed record Spread(IReadOnlyList<CaseBox> Cases, Stretch Stretch, double Divisor, int Part, int Parts)
    {
        /// <summary>Which part of a run that takes several pages; empty for the whole.</summary>
        public string Words => Parts == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" · {Cases[0].Id} to {Cases[^1].Id}, part {Part} of {Parts}");
    }

    internal static IEnumerable<Spread> SpreadsOf(PlanIndex index, Run run, PaperSettings settings)
    {
        var cases = CasesOf(index, run);
        if (cases.Count == 0)
            yield break;
        var wall = WallOf(index, run);
        var columns = cases.Select(box => box.Column).Distinct().ToList();
        var body = BodyOf(settings);
        var perPage = ColumnsPerPage(index, run, cases, columns.Count, wall, body);
        var pages = (columns.Count + perPage - 1) / perPage;
        for (var page = 0; page < pages; page++)
        {
            var shown = columns.Skip(page * perPage).Take(perPage).ToHashSet();
            var some = cases.Where(box => shown.Contains(box.Column)).ToList();
            var stretch = Stretch.Of(index, run, some, pages == 1);
            yield return new(some, stretch, DivisorFor(stretch, wall, body), page + 1, pages);
        }
    }

    internal static Wall WallOf(PlanIndex index, Run run) => index.Plan.Job.Walls.First(wall => wall.Id == run.Wall);

    private static Box BodyOf(PaperSettings settings) => new PageFormat(settings.Size, true).Body(new PageHeading("").Height);

    private static IEnumerable<PageDraft> PagesOf(PlanIndex index, Run run, PaperSettings settings)
    {
        var (wall, body) = (WallOf(index, run), BodyOf(settings));
        foreach (var spread in SpreadsOf(index, run, settings))
        {
            var sketch = new Sketch();
            var spare = body.Width - LeftRoom - RightRoom - ((double)(spread.Stretch.To - spread.Stretch.From).Millimetres / spread.Divisor);
            new ElevationDrawing(index, run, wall, spread.Cases, spread.Stretch, sketch, body with { Left = body.Left + (spare / 2) }, spread.Divisor).Draw();
            var subtitle = string.Create(CultureInfo.InvariantCulture, $"{wall.Name}{spread.Words} · scale 1 : {spread.Divisor:0} · dimensions in {index.Figures.Unit}, do not measure on the paper");
            yield return Drafting.Page(DocumentKind.Elevation, settings, true, new("Elevation: " + run.Name, subtitle), $"{run.Name} from the front.", index.Figures.FootNote, run.Id) with { Body = sketch.Items };
        }
    }

    private static int ColumnsPerPage(PlanIndex index, Run run, IReadOnlyList<CaseBox> cases, int columns, Wall wall, Box body)
    {
        for (var pages = 1; pages < columns; pages++)
        {
            var perPage = (columns + pages - 1) / pages;
            var some = cases.Where(box => box.Column < perPage).ToList();
            var divisor = DivisorFor(Stretch.Of(index, run, some, pages == 1), wall, body);
            if ((double)cases.Min(box => box.Width).Millimetres / divisor >= NarrowestCase)
                return perPage;
        }

        return 1;
    }

    private static double DivisorFor(Stretch stretch, Wall wall, Box body)
    {
        var needed = Math.Max(
            (double)(stretch.To - stretch.From).Millimetres / (body.Width - LeftRoom - RightRoom),
            (double)Length.Max(wall.Height, stretch.Top).Millimetres / (body.Height - AboveRoom - BelowRoom));
        return Math.Max(1, Math.Ceiling(needed));
    }

    internal sealed record Stretch(Length From, Length To, Length Top)
    {
        public static Stretch Of(PlanIndex index, Run run, IReadOnlyList<CaseBox> cases, bool whole)
        {
            var (from, to, top) = (cases.Min(box => box.X), cases.Max(box => box.X + box.Width), cases.Max(box => box.Y + box.Height));
            foreach (var part in whole ? index.Plan.Parts.Where(part => part.Run == run.Id) : [])
            {
                var (low, high) = (part.LowCorner, part.HighCorner);
                (from, to, top) = (Length.Min(from, low.X), Length.Max(to, high.X), Length.Max(top, high.Y));
            }

            return new(from, to, top);
        }
    }

    internal static (double Left, double Above, double Below) Margins => (LeftRoom, AboveRoom, BelowRoom);
}

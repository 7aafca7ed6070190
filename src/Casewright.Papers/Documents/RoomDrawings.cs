using System.Globalization;
using Casewright.Engine.Surveying;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The room as a whole: each wall that carries several runs from the front, and corners with casework from above.</summary>
public static class RoomDrawings
{
    private const double Between = 14;

    /// <summary>One page for each wall with several runs; they come before the runs one by one.</summary>
    public static ValueList<PageDraft> WallPages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return WallsOf(plan).Where(wall => plan.Job.Runs.Count(run => run.Wall == wall.Id) > 1).Select(wall => WallPage(plan, wall, settings)).ToValueList();
    }

    /// <summary>A page with the plan of the room; none without corners.</summary>
    public static ValueList<PageDraft> PlanPages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return RoomPlan.CornersOf(plan.Job).Any() ? [PlanPage(plan, settings)] : [];
    }

    /// <summary>All walls with casework side by side, for the catalogue of examples: millimetres of the room divided by <paramref name="divisor"/>.</summary>
    public static Scene Picture(Plan plan, double divisor = 40)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(divisor);
        var sketch = new Sketch();
        var walls = WallsOf(plan).ToList();
        var floor = 12 + (walls.Max(wall => Mm(wall.Height)) / divisor);
        var left = 6.0;
        foreach (var wall in walls)
        {
            var picture = new WallPicture(plan, wall);
            picture.Draw(sketch, left, floor, 1 / divisor);
            sketch.Text(wall.Name, left, floor + 6, Lettering.BodyStrong);
            var width = Mm(picture.To - picture.From) / divisor;
            left += Math.Max(width, TextLayout.Width(wall.Name, Lettering.BodyStrong)) + Between;
        }

        return sketch.ToScene(left - Between + 6, floor + 11, plan.Job.Name, $"{plan.Job.Name}: {Words.Count(plan.Cases.Count, "case", "cases")} from the front.");
    }

    private static IEnumerable<Wall> WallsOf(Plan plan) => plan.Job.Walls.Where(wall => plan.Cases.Any(box => box.Wall == wall.Id));

    private static PageDraft WallPage(Plan plan, Wall wall, PaperSettings settings)
    {
        var figures = new Figures(plan.Job.Units);
        var heading = new PageHeading("Wall: " + wall.Name, "every run on it; each has its own page with dimensions");
        var page = Drafting.Page(DocumentKind.Elevation, settings, true, heading, $"{wall.Name} from the front.", figures.FootNote, "wall:" + wall.Id);
        var body = page.Format.Body(heading.Height);
        var picture = new WallPicture(plan, wall);
        var scale = Math.Min((body.Width - 16) / Mm(picture.To - picture.From), (body.Height - 44) / Mm(wall.Height));
        var (left, floor) = (body.Left + ((body.Width - (Mm(picture.To - picture.From) * scale)) / 2), body.Top + 6 + (Mm(wall.Height) * scale));
        var sketch = new Sketch();
        picture.Draw(sketch, left, floor, scale);
        picture.Letter(sketch, left, floor, scale, figures);
        var (x0, x1) = (left - (Mm(picture.From) * scale), left + (Mm(wall.Width - picture.From) * scale));
        DimensionLine.Horizontal(sketch, x0, x1, floor + 33, floor + 30, figures.Both(wall.Width) + " wall", Lettering.Figure.Sized(13));
        return page with { Body = sketch.Items };
    }

    private static PageDraft PlanPage(Plan plan, PaperSettings settings)
    {
        var figures = new Figures(plan.Job.Units);
        var heading = new PageHeading("Plan of the room", "corners at their angles; the lowest cases, their fillers and counters");
        var page = Drafting.Page(DocumentKind.PlanAndSection, settings, true, heading, "The room from above.", figures.FootNote, "room");
        var body = page.Format.Body(heading.Height);
        var poses = RoomPlan.Of(plan.Job);
        var tied = RoomPlan.CornersOf(plan.Job).SelectMany(c => new[] { c.Left, c.Right }).ToHashSet(StringComparer.Ordinal);
        var walls = plan.Job.Walls.Where(wall => tied.Contains(wall.Id)).ToList();
        var shown = plan.Parts.Where(p => tied.Contains(p.Place.Wall) && p.Role is PartRole.Side or PartRole.Bottom or PartRole.Filler or PartRole.BlindPanel or PartRole.Door or PartRole.DrawerFront or PartRole.EndPanel).ToList();
        var points = walls.SelectMany(w => new[] { (0.0, 0.0), (w.Width.Metres, 0.0) }.Select(p => At(poses[w.Id], p.Item1, p.Item2)))
            .Concat(shown.SelectMany(p => Corners(p).Select(c => At(poses[p.Place.Wall], c.X, c.Z)))).ToList();
        var (minX, maxX, minZ, maxZ) = (points.Min(p => p.X), points.Max(p => p.X), points.Min(p => p.Z), points.Max(p => p.Z));
        var scale = Math.Min((body.Width - 40) / (maxX - minX), (body.Height - 30) / (maxZ - minZ));
        Point Paper((double X, double Z) p) => new(body.Left + 12 + ((p.X - minX) * scale), body.Top + 10 + ((p.Z - minZ) * scale));
        var sketch = new Sketch();
        foreach (var part in shown.OrderBy(p => p.Role == PartRole.Bottom ? 0 : 1))
            sketch.Group("room:" + part.Id, $"{part.Name}, {part.Id}", "part", group => group.Area(Corners(part).Select(c => Paper(At(poses[part.Place.Wall], c.X, c.Z))), Pen.Thin, part.Role == PartRole.Filler ? Tone.WoodEdge : Tone.Wood));
        foreach (var wall in walls)
        {
            var (a, b) = (Paper(At(poses[wall.Id], 0, 0)), Paper(At(poses[wall.Id], wall.Width.Metres, 0)));
            sketch.Line(a.X, a.Y, b.X, b.Y, Pen.Rule);
        }

        DrawCases(sketch, plan, tied, poses, Paper);
        DrawAngles(sketch, plan.Job, poses, Paper);
        DrawNotes(sketch, plan, body);
        return page with { Body = sketch.Items };
    }

    private static void DrawCases(Sketch sketch, Plan plan, HashSet<string> walls, IReadOnlyDictionary<string, WallPose> poses, Func<(double X, double Z), Point> paper)
    {
        foreach (var box in plan.Cases.Where(c => c.Tier == 0 && walls.Contains(c.Wall)))
        {
            var at = paper(At(poses[box.Wall], (box.X + (box.Width / 2)).Metres, box.Depth.Metres / 2));
            sketch.TextCentred(box.Id, at.X, at.Y, Lettering.Figure, Anchor.Middle, backed: true);
        }
    }

    private static void DrawAngles(Sketch sketch, Job job, IReadOnlyDictionary<string, WallPose> poses, Func<(double X, double Z), Point> paper)
    {
        foreach (var (_, right, angle) in RoomPlan.CornersOf(job))
        {
            var at = paper(At(poses[right], 0, 0));
            sketch.Text(string.Create(CultureInfo.InvariantCulture, $"{angle:0.##}°"), at.X + 2, at.Y - 2, Lettering.Figure);
        }
    }

    // What the layout says of each corner, in its own words.
    private static void DrawNotes(Sketch sketch, Plan plan, Box body)
    {
        var y = body.Bottom - 18;
        foreach (var finding in plan.Findings.Where(f => f.Check == "corner-filler").Take(3))
            y += sketch.Paragraph(finding.Message, body.Left + (body.Width * 0.02), y, body.Width * 0.55, Lettering.Small) + 1;
    }

    private static IEnumerable<(double X, double Z)> Corners(Part part) => PlanOutline.Of(part).Select(p => (p.X.Metres, p.Z.Metres));

    private static (double X, double Z) At(WallPose pose, double along, double @out) => pose.At(along, @out);

    private static double Mm(Length length) => (double)length.Millimetres;
}

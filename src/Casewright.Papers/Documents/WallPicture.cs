using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>A whole wall from the front: every run on it side by side and above one another, with doors and windows as surveyed.</summary>
internal sealed class WallPicture(Plan plan, Wall wall)
{
    private static readonly Lettering RunName = new(11, FontFamily.BarlowCondensed, FontWeight.SemiBold);

    private readonly Part[] _parts = [.. plan.Parts.Where(p => p.Place.Wall == wall.Id).OrderBy(p => High(p).Z).ThenBy(p => p.Id, StringComparer.Ordinal)];

    /// <summary>Left end of what is drawn, along the wall.</summary>
    public Length From => _parts.Select(p => Low(p).X).Append(Length.Zero).Min();

    /// <summary>Right end of what is drawn.</summary>
    public Length To => _parts.Select(p => High(p).X).Append(wall.Width).Max();

    /// <summary>Draws it with the floor at a height of the paper; <paramref name="scale"/> is paper millimetres for one of the room.</summary>
    public void Draw(Sketch sketch, double left, double floor, double scale)
    {
        var view = new RoomView(From, floor, left, scale);
        sketch.Area([.. view.Ceiling(wall, Length.Zero, wall.Width), new(view.X(wall.Width), floor), new(view.X(Length.Zero), floor)], Pen.Hair);
        foreach (var feature in wall.Survey?.Features ?? [])
            DrawFeature(sketch, view, feature);
        sketch.Line(view.X(From) - 3, floor, view.X(To) + 3, floor, Pen.Rule);
        foreach (var part in _parts)
            PartPicture.Draw(sketch, view, part);
        foreach (var box in plan.Cases.Where(c => c.Wall == wall.Id))
            sketch.Area(view.Outline(box), Pen.Object);
    }

    /// <summary>Writes the name of each run in the middle of its cases, where it fits, and returns the heights it used below the floor.</summary>
    public void Letter(Sketch sketch, double left, double floor, double scale, Kit.Figures figures)
    {
        var view = new RoomView(From, floor, left, scale);
        var row = 0;
        foreach (var run in plan.Job.Runs.Where(r => r.Wall == wall.Id))
        {
            var boxes = plan.Cases.Where(c => c.Run == run.Id).ToList();
            if (boxes.Count == 0)
                continue;
            var (x0, x1) = (view.X(boxes.Min(b => b.X)), view.X(boxes.Max(b => b.X + b.Width)));
            var y = floor + 7 + (row++ % 3 * 6.5);
            sketch.Line(x0, y, x1, y, Pen.Dimension);
            foreach (var x in new[] { x0, x1 })
                sketch.Line(x, y - 1.2, x, y + 1.2, Pen.Dimension);
            var words = $"{run.Name} {figures.Main(boxes.Max(b => b.X + b.Width) - boxes.Min(b => b.X))}";
            sketch.Text(Kit.Fitting.Cut(words, RunName, Math.Max(10, x1 - x0)), (x0 + x1) / 2, y + 4.4, RunName, Anchor.Middle);
        }
    }

    private static void DrawFeature(Sketch sketch, RoomView view, WallFeature feature)
    {
        if (feature.Moves)
            return;
        var width = Mm(feature.OuterRight - feature.OuterLeft) * view.Scale;
        var height = Mm(feature.OuterTop - feature.OuterBottom) * view.Scale;
        sketch.Rectangle(new(view.X(feature.OuterLeft), view.Y(feature.OuterTop), width, height), Pen.Hidden);
    }

    private static Point3 Low(Part part) => part.LowCorner;

    private static Point3 High(Part part) => part.HighCorner;

    private static double Mm(Length length) => (double)length.Millimetres;
}

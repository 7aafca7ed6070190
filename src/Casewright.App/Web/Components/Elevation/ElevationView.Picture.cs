using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.App.Web.Components.Elevation;

/// <content>How things look and where they stand on the screen.</content>
public sealed partial class ElevationView
{
    private static string PartClass(Part part) => part.Role switch
    {
        PartRole.Back => "part back",
        PartRole.BaseRail or PartRole.BaseRung or PartRole.ToeFace => "part base",
        PartRole.Crown or PartRole.BaseMould or PartRole.LightRail or PartRole.TrimBand or PartRole.Nosing or PartRole.Stile or PartRole.Rail => "part solid",
        PartRole.FixedShelf => "part fixed",
        PartRole.Door or PartRole.DrawerFront or PartRole.BlindPanel => "part front",
        PartRole.Counter => "part solid",
        PartRole.Filler or PartRole.EndPanel => "part filler",
        _ => "part",
    };

    private static (double From, double To) Stretch(ElevationPicture picture, string run)
    {
        var boxes = picture.Cases.Where(c => c.Run == run).ToList();
        return boxes.Count == 0 ? (0, picture.WallWidth) : (boxes.Min(c => Mm(c.X)), boxes.Max(c => Mm(c.X + c.Width)));
    }

    private static string Points(ElevationPicture picture, IEnumerable<(double X, double Y)> outline) =>
        string.Join(' ', outline.Select(p => $"{N(p.X)},{N(Top(picture, p.Y))}"));

    private string Label(ElevationPicture picture) =>
        $"Elevation of {Job.Walls.First(w => w.Id == Wall).Name}: {picture.Cases.Count} cases, {picture.Splices.Sum(s => s.Count)} upright splices";

    private string CaseLabel(CaseBox box) =>
        $"Case {box.Id}, {Text(box.Width)} wide, {Text(box.Height)} high{(box.Rake is null ? "" : $" falling to {Text(box.LowHeight)}")}, {box.Bays} {(box.Bays == 1 ? "bay" : "bays")}";

    private IEnumerable<WallFeature> OnTheWall => _shownJob.Walls.First(w => w.Id == Wall).Survey?.Features ?? [];

    private string PartLabel(Part part) => $"{part.Id}, {part.Name}, {Text(part.Length)} by {Text(part.Width)}";

    /// <summary>
    /// Parts that a click or a key chooses: those outside any case, doors and drawers, and those of the case chosen; not the panels behind, and
    /// nothing that a front hides.
    /// </summary>
    private IEnumerable<PartPicture> Pickable(ElevationPicture picture) =>
        picture.Parts.Where(p => p.Part.Role is not (PartRole.Back or PartRole.DrawerSide or PartRole.DrawerEnd or PartRole.DrawerBottom)
            && (p.Part.Case == p.Part.Run || p.Part.Role is PartRole.Door or PartRole.DrawerFront || p.Part.Case == Chosen?.Id));

    /// <summary>Two lines that meet at the hinged edge: the usual sign of the way a door opens, as on the papers.</summary>
    private static string Swing(ElevationPicture picture, PartPicture door)
    {
        var (free, hinged) = door.Part.Hand == Hand.Left ? (door.X + door.Width, door.X) : (door.X, door.X + door.Width);
        return $"M{N(free)} {N(Top(picture, door.Y + door.Height))} L{N(hinged)} {N(Top(picture, door.Y + (door.Height / 2)))} L{N(free)} {N(Top(picture, door.Y))}";
    }

    private bool Stated(SpliceLine line) => Job.Runs.Any(r => r.Id == line.Run && r.Splices.Height == line.Height);

    private double KeyX(ElevationPicture picture, SpliceLine line) => _scale.Narrow ? line.FromX + (8 * U) : picture.WallWidth + (22 * U);

    private double Room(Dimension dimension) => (Text(dimension.Value).Length * 7.6) + 14;

    private (double X, double Y) OnScreen(ElevationPicture picture, double x, double y) =>
        _scale.OnScreen(x, y, picture.WallWidth, picture.WallHeight, _pixelsWide, _pixelsHigh);

    /// <summary>Where the figure of what is held stands: beside its line, clear of the hand.</summary>
    private (double X, double Y) Tag(ElevationPicture picture)
    {
        var (from, to) = Stretch(picture, _drag!.Run);
        var (x, y) = _drag.IsVertical
            ? OnScreen(picture, (from + to) / 2, Top(picture, _drag.Value))
            : OnScreen(picture, _drag.Value, 0);
        return (Math.Clamp(x, 70, Math.Max(70, _pixelsWide - 150)), Math.Max(4, _drag.IsVertical ? y - 44 : y + 6));
    }
}

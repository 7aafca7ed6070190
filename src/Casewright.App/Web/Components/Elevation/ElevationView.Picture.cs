using Casewright.Model.Parts;

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
        PartRole.Filler or PartRole.EndPanel => "part filler",
        _ => "part",
    };

    private static (double From, double To) Stretch(ElevationPicture picture, string run)
    {
        var boxes = picture.Cases.Where(c => c.Run == run).ToList();
        return boxes.Count == 0 ? (0, picture.WallWidth) : (boxes.Min(c => Mm(c.X)), boxes.Max(c => Mm(c.X + c.Width)));
    }

    private string Label(ElevationPicture picture) =>
        $"Elevation of {Job.Walls.First(w => w.Id == Wall).Name}: {picture.Cases.Count} cases, {picture.Splices.Sum(s => s.Count)} upright splices";

    private string CaseLabel(CaseBox box) =>
        $"Case {box.Id}, {Text(box.Width)} wide, {Text(box.Height)} high, {box.Bays} {(box.Bays == 1 ? "bay" : "bays")}";

    /// <summary>Parts that a click chooses: those outside any case, and those of the case chosen; not the panels behind and the pieces in front of others.</summary>
    private IEnumerable<PartPicture> Pickable(ElevationPicture picture) =>
        picture.Parts.Where(p => p.Part.Role != PartRole.Back && (p.Part.Case == p.Part.Run || p.Part.Case == Chosen?.Id));

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

using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Model.Files.JobShapes;

/// <summary>What is on a wall, in a job file.</summary>
internal static class FeatureShapes
{
    public static ChoiceShape<ReadingLine> Line { get; } = ChoiceShape.Of(
        "readingLine",
        "A line along which a wall is measured.",
        (ReadingLine.Back, "close to the wall"),
        (ReadingLine.Front, "at the stated distance from it"));

    private static ChoiceShape<FeatureKind> Kind { get; } = ChoiceShape.Of(
        "featureKind",
        "Something on or in a wall.",
        (FeatureKind.Door, "a door, its clear opening"),
        (FeatureKind.Window, "a window, its clear opening"),
        (FeatureKind.Outlet, "a socket outlet"),
        (FeatureKind.Switch, "a switch"),
        (FeatureKind.Register, "a grille for air"),
        (FeatureKind.Radiator, "a radiator"),
        (FeatureKind.Beam, "a beam, chase or other part of the building that stands out"),
        (FeatureKind.Pipe, "a pipe or cable where no screw may go"));

    private static ChoiceShape<DoorSwing> Swing { get; } = ChoiceShape.Of(
        "doorSwing",
        "How a door opens, seen from the room.",
        (DoorSwing.InHungLeft, "into the room, hung on its left"),
        (DoorSwing.InHungRight, "into the room, hung on its right"),
        (DoorSwing.Out, "out of the room"),
        (DoorSwing.None, "it slides, or there is only the opening"));

    public static RecordShape<WallFeature> Feature { get; } = new("wallFeature", "Something on or in a wall.", f => new()
    {
        Name = f.Required("name", x => x.Name, TextShape.Words, "Name as people say it."),
        Kind = f.Required("kind", x => x.Kind, Kind, "What it is."),
        X = f.Required("x", x => x.X, LengthShape.ZeroOrMore(), "Left edge along the wall, casing not counted."),
        Y = f.Required("y", x => x.Y, LengthShape.ZeroOrMore(), "Lower edge above the highest floor point."),
        Width = f.Required("width", x => x.Width, LengthShape.Positive(), "Width, casing not counted."),
        Height = f.Required("height", x => x.Height, LengthShape.Positive(), "Height, casing not counted."),
        Depth = f.Default("depth", x => x.Depth, LengthShape.ZeroOrMore(5000), Length.Zero, "How far it stands out from the wall."),
        Casing = f.Default("casing", x => x.Casing, LengthShape.ZeroOrMore(500), Length.Zero, "Width of the casing round a door or window."),
        Stool = f.Default("stool", x => x.Stool, LengthShape.ZeroOrMore(1000), Length.Zero, "How far the stool under a window stands out."),
        KeepClear = f.Default(
            "keepClear", x => x.KeepClear, LengthShape.ZeroOrMore(5000), Length.Zero, "Free space that must stay in front of it, from the wall."),
        Swing = f.OptionalValue("swing", x => x.Swing, Swing, "How a door opens."),
        Moves = f.Default("moves", x => x.Moves, FlagShape.Instance, false, "Whether it will be moved away before the casework comes."),
    })
    {
        Rules = [PresenceRule.Excludes("swing", "kind", "window", "outlet", "switch", "register", "radiator", "beam", "pipe")],
    };

    public static RecordShape<WallMoulding> Moulding { get; } = new("wallMoulding", "A skirting or cornice along a wall.", f => new()
    {
        Height = f.Required("height", m => m.Height, LengthShape.Positive(1000), "Height on the wall."),
        Projection = f.Required("projection", m => m.Projection, LengthShape.Positive(500), "How far it stands out from the wall."),
        Stays = f.Default("stays", m => m.Stays, FlagShape.Instance, false, "Whether it stays where the casework comes."),
    });
}

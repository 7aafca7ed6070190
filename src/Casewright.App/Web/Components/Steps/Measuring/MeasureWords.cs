using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.App.Web.Components.Steps.Measuring;

/// <summary>What the choices of a survey are called on the page.</summary>
public static class MeasureWords
{
    /// <summary>Things on a wall.</summary>
    public static IReadOnlyList<(FeatureKind Choice, string Words)> Features { get; } =
    [
        (FeatureKind.Outlet, "socket outlet"), (FeatureKind.Switch, "switch"), (FeatureKind.Register, "air register"), (FeatureKind.Radiator, "radiator"),
        (FeatureKind.Door, "door"), (FeatureKind.Window, "window"), (FeatureKind.Beam, "beam or chase"), (FeatureKind.Pipe, "pipe or cable"),
    ];

    /// <summary>Ways a door opens.</summary>
    public static IReadOnlyList<(DoorSwing Choice, string Words)> Swings { get; } =
    [
        (DoorSwing.InHungLeft, "into the room, hung left"), (DoorSwing.InHungRight, "into the room, hung right"),
        (DoorSwing.Out, "out of the room"), (DoorSwing.None, "slides, or an opening only"),
    ];

    /// <summary>What a wall is made of.</summary>
    public static IReadOnlyList<(WallStructure Choice, string Words)> Structures { get; } =
        [(WallStructure.WoodStuds, "wood studs"), (WallStructure.SteelStuds, "thin steel studs"), (WallStructure.Masonry, "masonry")];

    /// <summary>The air of a room.</summary>
    public static IReadOnlyList<(Climate Choice, string Words)> Climates { get; } =
        [(Climate.Heated, "heated"), (Climate.Unheated, "dry, not heated"), (Climate.Damp, "damp")];

    /// <summary>Narrow places on the way in.</summary>
    public static IReadOnlyList<(PassageKind Choice, string Words)> Passages { get; } =
    [
        (PassageKind.Doorway, "doorway"), (PassageKind.Turn, "turn"), (PassageKind.Stair, "stairs"),
        (PassageKind.LiftCar, "lift"), (PassageKind.Window, "window or hatch"),
    ];

    /// <summary>What something on a wall is called when nobody gave it a name.</summary>
    public static string Of(FeatureKind kind) => Features.First(f => f.Choice == kind).Words;

    /// <summary>What a narrow place is called when nobody gave it a name.</summary>
    public static string Of(PassageKind kind) => Passages.First(p => p.Choice == kind).Words;
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Site;

/// <summary>The air that the casework will live in; decides creep and strength of wood and panels.</summary>
public enum Climate
{
    /// <summary>A heated room: wood settles at about 12 % moisture or drier.</summary>
    Heated,

    /// <summary>Dry but unheated, or under a roof outdoors: wood below about 20 % moisture.</summary>
    Unheated,

    /// <summary>Wetter than that.</summary>
    Damp,
}

/// <summary>What the wall is made of where cases are fixed to it.</summary>
public enum WallStructure
{
    /// <summary>Studs of spruce, pine or fir under board or plaster.</summary>
    WoodStuds,

    /// <summary>Studs of thin steel; they hold no wood screw.</summary>
    SteelStuds,

    /// <summary>Brick, block, stone or concrete; fixings of its own with a rated load.</summary>
    Masonry,
}

/// <summary>A narrow place on the way in.</summary>
public enum PassageKind
{
    /// <summary>A doorway, gone through straight.</summary>
    Doorway,

    /// <summary>A right-angled turn from a passage of one width into a passage of another.</summary>
    Turn,

    /// <summary>A lift car: its clear width, depth and height.</summary>
    LiftCar,

    /// <summary>A flight of stairs: clear width between wall and rail, headroom plumb over the nosings, and the landing where it turns.</summary>
    Stair,

    /// <summary>A window or hatch that things are handed in through.</summary>
    Window,
}

/// <summary>One narrow place between the van and the room, with clear sizes.</summary>
public sealed record Passage
{
    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required PassageKind Kind { get; init; }

    /// <summary>Clear width, of a doorway between its stops; positive.</summary>
    public required Length Width { get; init; }

    /// <summary>Clear height; positive.</summary>
    public required Length Height { get; init; }

    /// <summary>Clear width after a turn, the depth of a lift car, or the clear depth of the landing where stairs turn; null for a straight way.</summary>
    public Length? NextWidth { get; init; }

    /// <summary>How far the open leaf of a doorway stands in the way: its thickness where it opens to a right angle only; zero where it folds back or comes off.</summary>
    public Length Leaf { get; init; }

    /// <summary>Clear width that is left beside the open leaf.</summary>
    public Length Clear => Width - Leaf;

    /// <summary>Clear width of a lift's door; null when it is as wide as the car.</summary>
    public Length? DoorWidth { get; init; }

    /// <summary>Clear height of a lift's door; null when it is as high as the car.</summary>
    public Length? DoorHeight { get; init; }

    /// <summary>Pitch of stairs in degrees from level, 20 to 60; null for anything else.</summary>
    public double? Pitch { get; init; }
}

/// <summary>What is known of the building. Everything may be missing; a check that needs it then says so.</summary>
public sealed record SiteFacts
{
    /// <summary>Stated live-load rating of the floor, in kN/m²; positive.</summary>
    public double? FloorRating { get; init; }

    /// <summary>The air of the room.</summary>
    public Climate? Climate { get; init; }

    /// <summary>Room temperature in °C.</summary>
    public double? RoomTemperature { get; init; }

    /// <summary>Relative humidity of the room in its driest season, in %.</summary>
    public double? DriestHumidity { get; init; }

    /// <summary>Relative humidity of the room in its dampest season, in %.</summary>
    public double? DampestHumidity { get; init; }

    /// <summary>Days that panels and solid stock will lie in the heated, plaster-dry room or shop before they are cut; not negative.</summary>
    public int? AcclimatisingDays { get; init; }

    /// <summary>What the walls are made of.</summary>
    public WallStructure? Walls { get; init; }

    /// <summary>Distance of the studs from centre to centre; positive.</summary>
    public Length? StudSpacing { get; init; }

    /// <summary>Narrow places between the van and the room; null when nobody has looked, empty when there are none.</summary>
    public ValueList<Passage>? Route { get; init; }

    /// <summary>Year the building was put up; old paint may hold lead.</summary>
    public int? YearBuilt { get; init; }
}

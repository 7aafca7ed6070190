using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Model.Files.JobShapes;

/// <summary>What is known of the building, in a job file.</summary>
internal static class SiteShapes
{
    public static RecordShape<Passage> Passage { get; } = new("passage", "A narrow place between the van and the room, with clear sizes.", f => new()
    {
        Name = f.Required("name", p => p.Name, TextShape.Words, "Name as people say it."),
        Kind = f.Required("kind", p => p.Kind, Choices.PassageKind, "What it is."),
        Width = f.Required("width", p => p.Width, LengthShape.Between(100, 30_000), "Clear width, of a doorway between its stops."),
        Height = f.Required("height", p => p.Height, LengthShape.Between(100, 30_000), "Clear height."),
        NextWidth = f.OptionalValue(
            "nextWidth", p => p.NextWidth, LengthShape.Between(100, 30_000), "Clear width after a turn, the depth of a lift car, or the depth of the landing where stairs turn."),
        DoorWidth = f.OptionalValue("doorWidth", p => p.DoorWidth, LengthShape.Between(100, 30_000), "Clear width of a lift's door."),
        DoorHeight = f.OptionalValue("doorHeight", p => p.DoorHeight, LengthShape.Between(100, 30_000), "Clear height of a lift's door."),
        Leaf = f.Default(
            "leaf", p => p.Leaf, LengthShape.ZeroOrMore(90), Length.Zero, "How far the open leaf of a doorway stands in the way; none where it folds back or comes off its hinges."),
        Pitch = f.OptionalValue("pitch", p => p.Pitch, NumberShape.Between(20, 60), "Pitch of stairs in degrees from level."),
    })
    {
        Rules =
        [
            PresenceRule.Needs("nextWidth", "kind", "turn", "liftCar"),
            PresenceRule.Excludes("nextWidth", "kind", "doorway", "window"),
            PresenceRule.Excludes("leaf", "kind", "turn", "liftCar", "stair", "window"),
            PresenceRule.Needs("pitch", "kind", "stair"),
            PresenceRule.Excludes("pitch", "kind", "doorway", "turn", "liftCar", "window"),
            PresenceRule.Excludes("doorWidth", "kind", "doorway", "turn", "stair", "window"),
            PresenceRule.Excludes("doorHeight", "kind", "doorway", "turn", "stair", "window"),
        ],
    };

    public static RecordShape<SiteFacts> Site { get; } = new("site", "What is known of the building. A check that lacks a figure says so.", f => new()
    {
        FloorRating = f.OptionalValue(
            "floorRating", s => s.FloorRating, QuantityShape.FloorRating, "Stated live-load rating of the floor."),
        Climate = f.OptionalValue("climate", s => s.Climate, Choices.Climate, "The air of the room."),
        RoomTemperature = f.OptionalValue("roomTemperature", s => s.RoomTemperature, QuantityShape.Temperature, "Temperature of the room."),
        DriestHumidity = f.OptionalValue(
            "driestHumidity", s => s.DriestHumidity, QuantityShape.Humidity, "Relative humidity in the driest season."),
        DampestHumidity = f.OptionalValue(
            "dampestHumidity", s => s.DampestHumidity, QuantityShape.Humidity, "Relative humidity in the dampest season."),
        AcclimatisingDays = f.OptionalValue(
            "acclimatisingDays",
            s => s.AcclimatisingDays,
            new CountShape(0, 365),
            "Days that stock will lie in the heated, plaster-dry room or shop before it is cut."),
        Walls = f.OptionalValue("walls", s => s.Walls, Choices.WallStructure, "What the walls are made of where cases are fixed."),
        StudSpacing = f.OptionalValue(
            "studSpacing", s => s.StudSpacing, LengthShape.Between(100, 3000), "Distance of the studs from centre to centre."),
        Route = f.Optional(
            "route",
            s => s.Route,
            new ListShape<Passage>(Passage, 0, 50),
            "Narrow places on the way in; an empty list when there are none, left out when nobody has looked."),
        YearBuilt = f.OptionalValue(
            "yearBuilt", s => s.YearBuilt, new CountShape(1000, 2200), "Year the building was put up; old paint may hold lead."),
    })
    {
        Check = CheckHumidity,
    };

    private static void CheckHumidity(SiteFacts site, Spot spot)
    {
        if (site.DriestHumidity > site.DampestHumidity)
            spot["driestHumidity"].Fail("The driest season is damper than the dampest.", null, "at most what stands in \"dampestHumidity\"");
    }
}

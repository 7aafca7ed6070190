using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The readings of a wall in a job file. Whether they agree is asked when the wall is laid out, so that a half-taken survey can be kept.</summary>
internal static class SurveyShapes
{
    private const int MostReadings = 200;
    private static readonly LengthShape s_along = LengthShape.ZeroOrMore(30_000);
    private static readonly LengthShape s_reading = LengthShape.Positive(30_000);
    private static readonly LengthShape s_gap = LengthShape.ZeroOrMore(2_000);
    private static readonly RecordShape<HeightReading> s_width = Height("widthReading", s_reading);
    private static readonly RecordShape<HeightReading> s_plumb = Height("plumbReading", s_gap);

    private static RecordShape<LineReading> Reading { get; } = new(
        "lineReading", "A distance from a string or plumb line to the wall.", f => new(
            f.Required("at", r => r.At, s_along, "Along the wall on a string, height on a plumb line."),
            f.Required("gap", r => r.Gap, s_gap, "From the line to the wall.")));

    private static RecordShape<StationReading> Station { get; } = new(
        "stationReading", "Readings at one place along the wall.", f => new()
        {
            At = f.Required("at", r => r.At, s_along, "Place along the wall."),
            Back = f.OptionalValue("back", r => r.Back, s_reading, "The reading at the wall."),
            Front = f.OptionalValue("front", r => r.Front, s_reading, "The reading at the front line."),
        })
    {
        Rules = [PresenceRule.AtLeastOne("back", "front")],
    };

    private static RecordShape<CornerReading> Corner { get; } = new(
        "corner", "An angle in degrees, or the three sides of a triangle marked in the corner.", f => new()
        {
            Degrees = f.OptionalValue(
                "degrees", c => c.Degrees, NumberShape.Between(45, 315), "The angle; more than 180 is an outer corner."),
            AlongWall = f.OptionalValue("alongWall", c => c.AlongWall, s_reading, "Leg marked along this wall."),
            AlongOther = f.OptionalValue("alongOther", c => c.AlongOther, s_reading, "Leg marked along the other wall."),
            Across = f.OptionalValue("across", c => c.Across, s_reading, "Distance between the ends of the two legs."),
        })
    {
        Rules =
        [
            PresenceRule.ExactlyOne("degrees", "across"),
            PresenceRule.OnlyWith("across", "alongWall"),
            PresenceRule.OnlyWith("across", "alongOther"),
            PresenceRule.OnlyWith("alongWall", "across"),
            PresenceRule.OnlyWith("alongOther", "across"),
        ],
    };

    private static RecordShape<WallEnd> End { get; } = new("wallEnd", "What stands at one end of a wall.", f => new()
    {
        Wall = f.Optional("wall", e => e.Wall, Ids.Wall, "Id of the job's wall that meets this one here."),
        Corner = f.Optional("corner", e => e.Corner, Corner, "The angle of the corner, measured in the room."),
        Reach = f.OptionalValue("reach", e => e.Reach, s_reading, "How far the wall at this end reaches out from the corner."),
        Plumb = f.Items(
            "plumb",
            e => e.Plumb,
            s_plumb,
            0,
            MostReadings,
            "Distances from a plumb line to the wall at this end, by height; one line at the back, one at the front."),
    });

    private static RecordShape<DiagonalReading> Diagonal { get; } = new("diagonal", "A diagonal from the left to the right end.", f => new()
    {
        LeftHeight = f.Required("leftHeight", d => d.LeftHeight, s_along, "Height of its left end."),
        RightHeight = f.Required("rightHeight", d => d.RightHeight, s_along, "Height of its right end."),
        Line = f.Default("line", d => d.Line, FeatureShapes.Line, ReadingLine.Back, "Where it was measured."),
        Distance = f.Required("distance", d => d.Distance, s_reading, "The diagonal."),
    });

    private static RecordShape<StringLine> StringLine { get; } = new(
        "stringLine", "A string stretched level along the wall, held off by equal blocks at both ends.", f => new()
        {
            Height = f.Required("height", s => s.Height, s_along, "Height of the string."),
            Readings = f.Required("readings", s => s.Readings, new ListShape<LineReading>(Reading, 2, MostReadings), "Distances from the string to the wall."),
        });

    private static RecordShape<PlumbLine> PlumbLine { get; } = new("plumbLine", "A plumb line in front of the wall.", f => new()
    {
        At = f.Required("at", s => s.At, s_along, "Place along the wall."),
        Readings = f.Required("readings", s => s.Readings, new ListShape<LineReading>(Reading, 2, MostReadings), "Distances from the line to the wall."),
    });

    public static RecordShape<WallSurvey> Survey { get; } = new(
        "wallSurvey",
        "The readings of a wall. Places along it count from the plumb line at the innermost point of its left end, heights from the highest floor point.",
        f => new()
        {
            Datum = f.Required(
                "datum",
                s => s.Datum,
                LengthShape.Between(100, 3000),
                "Height of the level line above the highest floor point of the room; the same for all walls of a room."),
            FrontLine = f.OptionalValue(
                "frontLine", s => s.FrontLine, LengthShape.Between(50, 5000), "Distance from the wall at which the front readings were taken."),
            Floor = f.Items("floor", s => s.Floor, Station, 0, MostReadings, "Down from the level line to the floor, by station."),
            Ceiling = f.Items("ceiling", s => s.Ceiling, Station, 0, MostReadings, "Up from the level line to the ceiling, by station."),
            Widths = f.Items("widths", s => s.Widths, s_width, 0, MostReadings, "Level widths between the ends, by height."),
            Diagonals = f.Items("diagonals", s => s.Diagonals, Diagonal, 0, MostReadings, "Diagonals from end to end."),
            LeftEnd = f.Optional("leftEnd", s => s.LeftEnd, End, "Left end of the wall; left out when it is open."),
            RightEnd = f.Optional("rightEnd", s => s.RightEnd, End, "Right end of the wall; left out when it is open."),
            Strings = f.Items("strings", s => s.Strings, StringLine, 0, MostReadings, "Bow of the wall, by strings stretched along it."),
            PlumbLines = f.Items("plumbLines", s => s.PlumbLines, PlumbLine, 0, MostReadings, "Lean of the wall, by plumb lines in front of it."),
            Structure = f.OptionalValue(
                "structure", s => s.Structure, Choices.WallStructure, "What this wall is made of; left out, what is said of the site."),
            Studs = f.Items("studs", s => s.Studs, s_along, 0, MostReadings, "Centres of the studs along the wall."),
            Features = f.Items(
                "features", s => s.Features, FeatureShapes.Feature, 0, MostReadings, "Doors, windows, outlets, registers, radiators, beams and pipes."),
            Skirting = f.Optional("skirting", s => s.Skirting, FeatureShapes.Moulding, "Skirting along the wall."),
            Cornice = f.Optional("cornice", s => s.Cornice, FeatureShapes.Moulding, "Cornice along the wall."),
        });

    private static RecordShape<HeightReading> Height(string name, ReadableShape<Length> shape) => new(
        name, "Readings at one height.", f => new()
        {
            Height = f.Required("height", r => r.Height, s_along, "Height above the highest floor point."),
            Back = f.OptionalValue("back", r => r.Back, shape, "The reading at the wall."),
            Front = f.OptionalValue("front", r => r.Front, shape, "The reading at the front line."),
        })
    {
        Rules = [PresenceRule.AtLeastOne("back", "front")],
    };
}

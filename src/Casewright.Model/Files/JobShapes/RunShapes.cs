using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The ends, base, head, back and front of a run in a job file.</summary>
internal static class RunShapes
{
    private static RecordShape<CornerDesign> Corner { get; } = new("runCorner", "The corner where the run on the next wall comes in.", f => new()
    {
        Run = f.Required("run", c => c.Run, TextShape.Id, "Id of the run on the other wall."),
        Kind = f.Required("kind", c => c.Kind, Choices.CornerKind, "How the two meet."),
        Angle = f.OptionalValue("angle", c => c.Angle, NumberShape.Between(1, 179), "Angle in degrees; left out, the one surveyed, or 90."),
        Leg = f.OptionalValue(
            "leg", c => c.Leg, LengthShape.Between(300, 3000), "Length of the diagonal case along this run's wall; only in the run that carries it."),
        Shelves = f.Default("shelves", c => c.Shelves, new CountShape(0, 20), 0, "Fixed shelves in the diagonal case, at equal openings."),
        Door = f.Optional("door", c => c.Door, Ids.Sheet, "Sheet material of a door inset in the diagonal front; left out, it is open."),
    })
    {
        Rules =
        [
            PresenceRule.Excludes("leg", "kind", "butt", "blind", "dead"),
            PresenceRule.OnlyWith("shelves", "leg"),
            PresenceRule.OnlyWith("door", "leg"),
        ],
    };

    private static RecordShape<LippingDesign> Lipping { get; } = new("lipping", "Thin strips on the edges of the sides that a finished end shows.", f => new()
    {
        Front = f.Optional("front", l => l.Front, Ids.Material, "Material on the front edge, trimmed flush: a board, or strips of a sheet."),
        Rear = f.Optional("rear", l => l.Rear, Ids.Material, "Material on the rear edge, planed to the wall: a board, or strips of a sheet."),
    })
    {
        Rules = [PresenceRule.AtLeastOne("front", "rear")],
    };

    public static RecordShape<RunEnd> End { get; } = new("runEnd", "One end of a run.", f => new()
    {
        Kind = f.Required("kind", e => e.Kind, Choices.EndKind, "What stands there."),
        Filler = f.Default(
            "filler", e => e.Filler, LengthShape.ZeroOrMore(1000), Length.Zero, "Visible width of the filler at a wall."),
        FillerMaterial = f.Optional(
            "fillerMaterial", e => e.FillerMaterial, Ids.Sheet, "Sheet material of the filler; left out, the run's."),
        Panel = f.Optional(
            "panel", e => e.Panel, Ids.Sheet, "Sheet material of a panel applied to a finished end; left out, the side itself shows."),
        Lipping = f.Optional(
            "lipping", e => e.Lipping, Lipping, "Lipping on the edges of the sides at a finished end; left out, there is none."),
        Corner = f.Optional("corner", e => e.Corner, Corner, "The run that it meets in the corner."),
    })
    {
        Rules =
        [
            PresenceRule.Needs("corner", "kind", "corner"),
            PresenceRule.Excludes("corner", "kind", "wall", "finished", "neighbour"),
            PresenceRule.Excludes("panel", "kind", "corner"),
            PresenceRule.Needs("filler", "kind", "wall"),
            PresenceRule.Excludes("filler", "kind", "finished", "neighbour"),
            PresenceRule.Excludes("fillerMaterial", "kind", "finished", "neighbour"),
            PresenceRule.Excludes("panel", "kind", "wall", "neighbour"),
            PresenceRule.Excludes("lipping", "kind", "wall", "neighbour", "corner"),
            PresenceRule.AtMostOne("panel", "lipping"),
        ],
    };

    public static RecordShape<BaseDesign> Base { get; } = new("base", "What the cases of a run stand on.", f => new()
    {
        Kind = f.Required("kind", b => b.Kind, Choices.BaseKind, "Which kind."),
        Height = f.Default(
            "height",
            b => b.Height,
            LengthShape.Positive(5000),
            Length.Zero,
            "From the highest floor point to the underside of the bottom panel."),
        Setback = f.Default(
            "setback",
            b => b.Setback,
            LengthShape.ZeroOrMore(1000),
            Length.Zero,
            "How far the toe face stands back from the front."),
        Material = f.Optional("material", b => b.Material, Ids.Sheet, "Sheet material of rails, rungs and toe face; left out, the run's."),
        ShimRoom = f.Default(
            "shimRoom", b => b.ShimRoom, LengthShape.ZeroOrMore(200), Length.Zero, "Left off the rails of a ladder base for shims."),
        LongestSection = f.Default(
            "longestSection",
            b => b.LongestSection,
            LengthShape.Between(300, 30_000),
            Length.FromMillimetres(2400),
            "Longest section of a ladder base that is built and carried as one. Sections meet under uprights."),
        Mould = f.Optional("mould", b => b.Mould, Ids.Board, "Board material of a moulding along the base; left out, there is none."),
        LightRail = f.Optional("lightRail", b => b.LightRail, Ids.Board, "Board material of a light rail under a hung run; left out, there is none."),
    })
    {
        Rules =
        [
            PresenceRule.Needs("height", "kind", "plinth", "sidesToFloor", "hung"),
            PresenceRule.Needs("setback", "kind", "plinth", "sidesToFloor"),
            PresenceRule.Excludes("height", "kind", "none"),
            PresenceRule.Excludes("setback", "kind", "none", "hung"),
            PresenceRule.Excludes("material", "kind", "none", "hung"),
            PresenceRule.Excludes("shimRoom", "kind", "sidesToFloor", "none", "hung"),
            PresenceRule.Excludes("longestSection", "kind", "sidesToFloor", "none", "hung"),
            PresenceRule.Excludes("mould", "kind", "none", "hung"),
            PresenceRule.Excludes("lightRail", "kind", "plinth", "sidesToFloor", "none"),
        ],
    };

    public static RecordShape<HeadDesign> Head { get; } = new("head", "How a run ends at the top.", f => new()
    {
        Height = f.OptionalValue(
            "height", h => h.Height, LengthShape.Between(50, 15_000), "Top of the cases above the highest floor point."),
        Gap = f.OptionalValue(
            "gap", h => h.Gap, LengthShape.ZeroOrMore(15_000), "Room left between the top of the cases and the lowest ceiling."),
        Crown = f.Optional(
            "crown", h => h.Crown, Ids.Board, "Board material of the crown; its board width is the height shown. Left out, there is none."),
        SlopeGap = f.OptionalValue(
            "slopeGap",
            h => h.SlopeGap,
            LengthShape.ZeroOrMore(1000),
            "Room left plumb between raked tops and a sloping ceiling; left out, the gap."),
        SlopeFiller = f.Optional(
            "slopeFiller",
            h => h.SlopeFiller,
            Ids.Sheet,
            "Sheet material of the scribed strip that closes the gap along a sloping ceiling; left out, it stays open."),
        CrownLap = f.Default(
            "crownLap", h => h.CrownLap, LengthShape.ZeroOrMore(500), Length.Zero, "How far the crown laps down over the cases."),
    })
    {
        Rules = [PresenceRule.ExactlyOne("height", "gap"), PresenceRule.OnlyWith("crownLap", "crown")],
    };

    public static RecordShape<BackDesign> Back { get; } = new("back", "The backs of a run.", f => new()
    {
        Kind = f.Required("kind", b => b.Kind, Choices.BackKind, "How it sits."),
        Material = f.Optional("material", b => b.Material, Ids.Sheet, "Sheet material."),
        Inset = f.Default(
            "inset",
            b => b.Inset,
            LengthShape.ZeroOrMore(500),
            Length.Zero,
            "From the wall side of the case to the rear face of a captured back: room for nailers and scribing."),
    })
    {
        Rules =
        [
            PresenceRule.Needs("material", "kind", "captured", "rabbeted", "overlaid"),
            PresenceRule.Excludes("material", "kind", "none"),
            PresenceRule.Needs("inset", "kind", "captured"),
            PresenceRule.Excludes("inset", "kind", "rabbeted", "overlaid", "none"),
        ],
    };

    public static RecordShape<NailerDesign> Nailers { get; } = new("nailers", "Strips across the back of each case through which it is fixed to the studs.", f => new()
    {
        Height = f.Required("height", n => n.Height, LengthShape.Between(20, 500), "Height of a nailer."),
        Material = f.Optional("material", n => n.Material, Ids.Sheet, "Sheet material; left out, the run's."),
    });

    public static RecordShape<NosingDesign> Nosing { get; } = new(
        "nosing",
        "Solid nosing on the fronts. The board material's thickness lies in the depth; its board width is the height shown.",
        f => new()
        {
            Shelves = f.Optional("shelves", n => n.Shelves, Ids.Board, "Board material on the fronts of fixed and loose shelves."),
            Uprights = f.Optional(
                "uprights", n => n.Uprights, Ids.Board, "Board material on the fronts of sides, partitions, tops and bottoms."),
        })
    {
        Rules = [PresenceRule.AtLeastOne("shelves", "uprights")],
    };

    public static RecordShape<FaceFrameDesign> FaceFrame { get; } = new(
        "faceFrame",
        "Members of the face frame; each names a board material whose board width is the width shown.",
        f => new()
        {
            EndStile = f.Required("endStile", d => d.EndStile, Ids.Board, "Stile at either end of a case."),
            MidStile = f.Optional(
                "midStile", d => d.MidStile, Ids.Board, "Stile over a partition; needed when a case has two bays or more."),
            TopRail = f.Required("topRail", d => d.TopRail, Ids.Board, "Top rail."),
            BottomRail = f.Required(
                "bottomRail", d => d.BottomRail, Ids.Board, "Bottom rail; its top edge is flush with the upper face of the bottom panel."),
            MidRail = f.Optional(
                "midRail", d => d.MidRail, Ids.Board, "Rail in front of a fixed shelf at which doors or drawers end; needed where one does."),
            JointStile = f.Optional(
                "jointStile", d => d.JointStile, Ids.Board, "Stile over the joint of two cases; one frame then covers all. Left out, every case has its own."),
            SlidePacker = f.Optional(
                "slidePacker", d => d.SlidePacker, Ids.Board, "Board that packers of drawer slides are planed from; needed where drawers are behind the frame."),
            FinishedOverlap = f.Default(
                "finishedOverlap",
                d => d.FinishedOverlap,
                LengthShape.ZeroOrMore(50),
                Length.Zero,
                "How far the frame laps past the case at a finished end, trimmed flush after gluing."),
        });

    public static RecordShape<TrimBandDesign> TrimBand { get; } = new("trimBand", "A flat strip over the joint line of the backs, at one height along the run.", f => new()
    {
        Material = f.Required(
            "material",
            t => t.Material,
            Ids.Board,
            "Board material; its board width must cover the joint by the shop's overlap on each side."),
    });
}

using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Splices;
using Casewright.Model.Stock;
using Casewright.Model.Timeline;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The words of a job file that stand for one of a few values.</summary>
internal static class Choices
{
    public static ChoiceShape<UnitSystem> Units { get; } = ChoiceShape.Of(
        "units",
        "Unit of lengths written without one, and of the papers.",
        (UnitSystem.Millimetres, "millimetres"),
        (UnitSystem.Inches, "inches; papers print feet, inches and fractions"));

    public static ChoiceShape<string> Currency { get; } = new("currency", "Currency of all prices, by its ISO 4217 code.", Currencies.Codes.Select(c => (c, c)));

    public static ChoiceShape<MaterialKind> MaterialKind { get; } = ChoiceShape.Of(
        "materialKind",
        "What a material is made of; it decides stiffness, creep, weight and which joints it takes.",
        (Stock.MaterialKind.BirchPlywood, "birch plywood, birch throughout"),
        (Stock.MaterialKind.HardwoodPlywood, "hardwood-faced plywood on a softwood veneer core"),
        (Stock.MaterialKind.SoftwoodPlywood, "softwood plywood"),
        (Stock.MaterialKind.Mdf, "medium-density fibreboard"),
        (Stock.MaterialKind.Particleboard, "particleboard (chipboard)"),
        (Stock.MaterialKind.Osb, "oriented strandboard"),
        (Stock.MaterialKind.Hardboard, "hardboard"),
        (Stock.MaterialKind.Hardwood, "solid hardwood"),
        (Stock.MaterialKind.Softwood, "solid softwood"));

    public static ChoiceShape<Construction> Construction { get; } = ChoiceShape.Of(
        "construction",
        "How the front of the cases is made.",
        (Design.Construction.Frameless, "the panel edges are the front"),
        (Design.Construction.FaceFrame, "a solid frame covers the front"));

    public static ChoiceShape<EndKind> EndKind { get; } = ChoiceShape.Of(
        "endKind",
        "What stands at an end of a run.",
        (Design.EndKind.Wall, "a wall, met with a scribed filler"),
        (Design.EndKind.Finished, "open to the room: the side or its panel shows"),
        (Design.EndKind.Neighbour, "other casework: the side is hidden"),
        (Design.EndKind.Corner, "a corner into which the run on the next wall comes"));

    public static ChoiceShape<CornerKind> CornerKind { get; } = ChoiceShape.Of(
        "cornerKind",
        "How two runs meet in a corner of the room.",
        (Design.CornerKind.Butt, "the other run goes through to the wall, open; this one stops clear of its front"),
        (Design.CornerKind.Blind, "as butt, and the end case of the other run has doors and a blind panel"),
        (Design.CornerKind.Dead, "both stop; a post closes the corner"),
        (Design.CornerKind.Diagonal, "both stop beside a case in the corner with its front at 45 degrees"));

    public static ChoiceShape<BaseKind> BaseKind { get; } = ChoiceShape.Of(
        "baseKind",
        "What cases stand on.",
        (Design.BaseKind.Plinth, "a ladder base of its own, set and levelled first"),
        (Design.BaseKind.SidesToFloor, "the sides run down to the floor, notched for the toe space"),
        (Design.BaseKind.None, "the bottom panel stands on the floor or on what is there"),
        (Design.BaseKind.Hung, "nothing: the cases hang, their lower edge at this height"));

    public static ChoiceShape<CounterUse> CounterUse { get; } = ChoiceShape.Of(
        "counterUse",
        "What a counter is used as; it decides how far apart its supports may stand.",
        (Design.CounterUse.Counter, "a top that things stand on"),
        (Design.CounterUse.Desk, "a desk"),
        (Design.CounterUse.Seat, "a window seat or bench"));

    public static ChoiceShape<BackKind> BackKind { get; } = ChoiceShape.Of(
        "backKind",
        "How a back sits.",
        (Design.BackKind.Captured, "in a groove of sides, top and bottom"),
        (Design.BackKind.Rabbeted, "in a rabbet of the sides, lapping top and bottom"),
        (Design.BackKind.Overlaid, "on the rear edges"),
        (Design.BackKind.None, "no back"));

    public static ChoiceShape<FrontKind> FrontKind { get; } = ChoiceShape.Of(
        "frontKind",
        "What closes the front of a bay.",
        (Design.FrontKind.Doors, "a door or a pair, on concealed hinges"),
        (Design.FrontKind.Drawers, "drawers above one another, on side slides"));

    public static ChoiceShape<FrontFit> FrontFit { get; } = ChoiceShape.Of(
        "frontFit",
        "How a front sits against its case.",
        (Design.FrontFit.Overlay, "over the edges of the case or over its face frame"),
        (Design.FrontFit.Inset, "within the opening, flush with the front"));

    public static ChoiceShape<HingeSide> HingeSide { get; } = ChoiceShape.Of(
        "hingeSide",
        "Edge of a single door that its hinges are on, seen from the front.",
        (Design.HingeSide.Left, "the left edge"),
        (Design.HingeSide.Right, "the right edge"));

    public static ChoiceShape<FirstCut> FirstCut { get; } = ChoiceShape.Of(
        "firstCut",
        "Which way the first cuts of a sheet go.",
        (Shop.FirstCut.Rip, "rips along the sheet first, crosscuts after: the usual way"),
        (Shop.FirstCut.Crosscut, "crosscuts first"),
        (Shop.FirstCut.Either, "whichever uses less, sheet by sheet"));

    public static ChoiceShape<CutKind> CutKind { get; } = ChoiceShape.Of(
        "cutKind",
        "Direction of a cut on its sheet.",
        (Cutting.CutKind.Rip, "along the sheet's length"),
        (Cutting.CutKind.Crosscut, "across it"));

    public static ChoiceShape<SheetAim> SheetAim { get; } = ChoiceShape.Of(
        "sheetAim",
        "What decides between sheet layouts of one cost.",
        (Shop.SheetAim.FewestSettings, "the fewest fence settings, then the fewest cuts"),
        (Shop.SheetAim.LargestOffcut, "the most useful offcut in one piece, then the fewest settings"));

    /// <summary>Rounds of cuts; 0 stands for no limit.</summary>
    public static ChoiceShape<int> Stages { get; } = new(
        "stages",
        "Rounds of cuts on a sheet, which is turned between them. two: strips, then their crosscuts; three: those may be ripped once more; any: no limit.",
        [(2, "two"), (3, "three"), (0, "any")]);

    /// <summary>Methods a person chooses; a covered butt is made wherever a thin back is joined and needs no choosing.</summary>
    public static ChoiceShape<SpliceMethod> SpliceMethod { get; } = ChoiceShape.Of(
        "spliceMethod",
        "How parts are joined end to end.",
        (Splices.SpliceMethod.LooseTenons, "loose tenons, closed with clamps; no mark on either face"),
        (Splices.SpliceMethod.TenonsAndConnectors, "loose tenons, closed by draw connectors from one hidden face"),
        (Splices.SpliceMethod.Spline, "a full-width loose tongue"),
        (Splices.SpliceMethod.HalfLap, "halves lapped over a length"),
        (Splices.SpliceMethod.Scarf, "a long bevel glued face to face"),
        (Splices.SpliceMethod.BackedButt, "a butt joint with a plate glued behind, on one hidden face"));

    public static ChoiceShape<SpliceMethod> WishedMethod { get; } = ChoiceShape.Of(
        "wishedMethod",
        "How parts of one run are joined end to end.",
        (Splices.SpliceMethod.LooseTenons, "loose tenons, closed with clamps"),
        (Splices.SpliceMethod.TenonsAndConnectors, "loose tenons, closed by draw connectors"),
        (Splices.SpliceMethod.Spline, "a full-width loose tongue"),
        (Splices.SpliceMethod.HalfLap, "halves lapped over a length"),
        (Splices.SpliceMethod.Scarf, "a long bevel glued face to face"),
        (Splices.SpliceMethod.BackedButt, "a butt joint with a plate glued behind"),
        (Splices.SpliceMethod.CoveredButt, "no joints but those of backs and trim, which lie on the parts that carry them"));

    public static ChoiceShape<Climate> Climate { get; } = ChoiceShape.Of(
        "climate",
        "The air that the casework will live in; it decides creep and strength of wood and panels.",
        (Site.Climate.Heated, "a heated room"),
        (Site.Climate.Unheated, "dry but unheated, or under a roof outdoors"),
        (Site.Climate.Damp, "wetter than that"));

    public static ChoiceShape<WallStructure> WallStructure { get; } = ChoiceShape.Of(
        "wallStructure",
        "What the wall is made of where cases are fixed to it.",
        (Site.WallStructure.WoodStuds, "studs of spruce, pine or fir under board or plaster"),
        (Site.WallStructure.SteelStuds, "studs of thin steel, which hold no wood screw"),
        (Site.WallStructure.Masonry, "brick, block, stone or concrete"));

    public static ChoiceShape<PassageKind> PassageKind { get; } = ChoiceShape.Of(
        "passageKind",
        "A narrow place on the way in.",
        (Site.PassageKind.Doorway, "a doorway, gone through straight"),
        (Site.PassageKind.Turn, "a right-angled turn from a passage of one width into another"),
        (Site.PassageKind.LiftCar, "a lift car"),
        (Site.PassageKind.Stair, "a flight of stairs, its headroom plumb over the nosings"),
        (Site.PassageKind.Window, "a window or hatch that things are handed in through"));

    public static ChoiceShape<Operation> Operation { get; } = ChoiceShape.Of<Operation>("operation", "An operation of the shop that has a standard time.");

    public static ChoiceShape<DayOfWeek> Weekday { get; } = ChoiceShape.Of<DayOfWeek>("weekday", "A day of the week.");

    public static ChoiceShape<Skill> Skill { get; } = ChoiceShape.Of(
        "skill",
        "A kind of work that not everybody may do.",
        (Timeline.Skill.Machining, "sawing, routing, boring"),
        (Timeline.Skill.Assembling, "glue-ups and assembly"),
        (Timeline.Skill.Finishing, "sanding and finishing"),
        (Timeline.Skill.Installing, "setting and fitting on site"));

    public static ChoiceShape<ClampKind> ClampKind { get; } = ChoiceShape.Of(
        "clampKind",
        "A kind of clamp that glue-ups compete for.",
        (Timeline.ClampKind.LongBar, "a bar clamp that reaches from end to end of a tall part"),
        (Timeline.ClampKind.Bar, "a bar clamp across a case"),
        (Timeline.ClampKind.Face, "a clamp across the faces of a panel"),
        (Timeline.ClampKind.Spreader, "a reversed spreader that pushes from a stop"),
        (Timeline.ClampKind.PinchDog, "a pinch dog"));

    public static ChoiceShape<CoatApplication> CoatApplication { get; } = ChoiceShape.Of(
        "coatApplication",
        "How a coat is put on.",
        (Timeline.CoatApplication.Spray, "sprayed"),
        (Timeline.CoatApplication.Brush, "brushed or rolled"));
}

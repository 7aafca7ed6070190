using Casewright.Model.Files.Shapes;
using Casewright.Model.Shop;

namespace Casewright.Model.Files.JobShapes;

/// <summary>The limits of the checks in a job file; each that is left out is the program's own.</summary>
internal static class CheckLimitsShape
{
    private static readonly CheckLimits s_usual = new();
    private static readonly NumberShape s_ratio = NumberShape.Between(10, 100_000);

    public static RecordShape<CheckLimits> Shape { get; } = new("checks", "Limits that the checks hold a plan to.", f => new()
    {
        SagRatio = f.Default(
            "sagRatio", c => c.SagRatio, s_ratio, s_usual.SagRatio, "Span divided by the elastic sag under the stated load."),
        VisibleSagRatio = f.Default(
            "visibleSagRatio",
            c => c.VisibleSagRatio,
            s_ratio,
            s_usual.VisibleSagRatio,
            "Span divided by the sag that an eye begins to see (0.02 in a foot is 600)."),
        FinalSagRatio = f.Default(
            "finalSagRatio", c => c.FinalSagRatio, s_ratio, s_usual.FinalSagRatio, "Span divided by the sag after years, creep included."),
        StandardSagRatio = f.Default(
            "standardSagRatio",
            c => c.StandardSagRatio,
            s_ratio,
            s_usual.StandardSagRatio,
            "Span divided by the elastic sag under the woodwork standard's load."),
        StandardLoad = f.Default(
            "standardLoad", c => c.StandardLoad, QuantityShape.AreaLoad, s_usual.StandardLoad, "Load of the woodwork standard for books."),
        StandardShelfMass = f.Default(
            "standardShelfMass",
            c => c.StandardShelfMass,
            QuantityShape.Mass,
            s_usual.StandardShelfMass,
            "Most that the woodwork standard puts on one shelf."),
        SustainedShare = f.Default(
            "sustainedShare",
            c => c.SustainedShare,
            NumberShape.Share,
            s_usual.SustainedShare,
            "Share of the load that stays on the shelf for years; books stay."),
        LoadFactor = f.Default(
            "loadFactor",
            c => c.LoadFactor,
            NumberShape.Between(1, 10),
            s_usual.LoadFactor,
            "Factor on stated loads before they are held against a strength."),
        BoardSpan = f.Default(
            "boardSpan",
            c => c.BoardSpan,
            LengthShape.Between(50, 5000),
            s_usual.BoardSpan,
            "Longest clear span of a particleboard or fibreboard shelf at 30 kg/m."),
        LeastWeb = f.Default(
            "leastWeb",
            c => c.LeastWeb,
            NumberShape.Share,
            s_usual.LeastWeb,
            "Least wood left between two housings of one upright, as a share of its thickness."),
        SpliceFreeShare = f.Default(
            "spliceFreeShare",
            c => c.SpliceFreeShare,
            NumberShape.Share,
            s_usual.SpliceFreeShare,
            "Middle share of an unsupported span that no splice may enter."),
        TenonToEdge = f.Default(
            "tenonToEdge",
            c => c.TenonToEdge,
            LengthShape.ZeroOrMore(5000),
            s_usual.TenonToEdge,
            "Nearest that a tenon's centre may come to an edge."),
        ConnectorToEdge = f.Default(
            "connectorToEdge",
            c => c.ConnectorToEdge,
            LengthShape.ZeroOrMore(5000),
            s_usual.ConnectorToEdge,
            "Nearest that a draw connector may come to an edge."),
        ThinnestForTenon = f.Default(
            "thinnestForTenon",
            c => c.ThinnestForTenon,
            LengthShape.Between(1, 150),
            s_usual.ThinnestForTenon,
            "Thinnest panel that takes a loose tenon."),
        BucklingSafety = f.Default(
            "bucklingSafety", c => c.BucklingSafety, NumberShape.Between(1, 20), s_usual.BucklingSafety, "Safety against buckling."),
        SwayShare = f.Default(
            "swayShare",
            c => c.SwayShare,
            NumberShape.Share,
            s_usual.SwayShare,
            "Sideways push on a loaded case as a share of its weight, for racking."),
        DriftRatio = f.Default(
            "driftRatio",
            c => c.DriftRatio,
            s_ratio,
            s_usual.DriftRatio,
            "Height of a case divided by its sideways drift under that push."),
        TipPull = f.Default("tipPull", c => c.TipPull, QuantityShape.Force, s_usual.TipPull, "Pull on a case for tip-over and anchorage."),
        TipPullHeight = f.Default(
            "tipPullHeight", c => c.TipPullHeight, LengthShape.ZeroOrMore(5000), s_usual.TipPullHeight, "Height at which the pull acts."),
        FixingsPerCase = f.Default(
            "fixingsPerCase",
            c => c.FixingsPerCase,
            new CountShape(1, 50),
            s_usual.FixingsPerCase,
            "Least fixings of each case into the structure."),
        FixingForce = f.Default(
            "fixingForce", c => c.FixingForce, QuantityShape.Force, s_usual.FixingForce, "Pull that each fixing at the top must hold."),
        FixingDiameter = f.Default(
            "fixingDiameter",
            c => c.FixingDiameter,
            LengthShape.Between(1, 50),
            s_usual.FixingDiameter,
            "Shank diameter of the wood screws into the studs (No. 10 is 0.190 in)."),
        FixingThread = f.Default(
            "fixingThread", c => c.FixingThread, LengthShape.Between(1, 500), s_usual.FixingThread, "Thread of those screws in the stud."),
        MassPerPerson = f.Default(
            "massPerPerson",
            c => c.MassPerPerson,
            QuantityShape.Mass,
            s_usual.MassPerPerson,
            "Mass that one pair of hands may have to lift. Also held to the lifting equation."),
        LiftReach = f.Default(
            "liftReach",
            c => c.LiftReach,
            LengthShape.ZeroOrMore(5000),
            s_usual.LiftReach,
            "From the ankles to the hands when a case is lifted."),
        SheetForOne = f.Default(
            "sheetForOne", c => c.SheetForOne, QuantityShape.Mass, s_usual.SheetForOne, "Heaviest sheet for one person."),
        PieceForOne = f.Default(
            "pieceForOne", c => c.PieceForOne, LengthShape.Between(300, 30_000), s_usual.PieceForOne, "Longest piece for one person."),
        Aisle = f.Default(
            "aisle",
            c => c.Aisle,
            LengthShape.ZeroOrMore(5000),
            s_usual.Aisle,
            "Free floor in front of a run over which its load is spread when it is held against the floor's rating."),
        TiltPlay = f.Default(
            "tiltPlay",
            c => c.TiltPlay,
            LengthShape.ZeroOrMore(5000),
            s_usual.TiltPlay,
            "Play kept when a case is tilted up under a ceiling."),
        LiftRoom = f.Default(
            "liftRoom",
            c => c.LiftRoom,
            LengthShape.ZeroOrMore(5000),
            s_usual.LiftRoom,
            "Room kept between ceiling and case for lifting it onto its base."),
        CarryPlay = f.Default(
            "carryPlay",
            c => c.CarryPlay,
            LengthShape.ZeroOrMore(5000),
            s_usual.CarryPlay,
            "Play kept on each side where a case is carried through."),
        FilmThickness = f.Default(
            "filmThickness",
            c => c.FilmThickness,
            LengthShape.ZeroOrMore(5),
            s_usual.FilmThickness,
            "Thickness of the finish on one face after all coats."),
        SmallOverrun = f.Default(
            "smallOverrun",
            c => c.SmallOverrun,
            LengthShape.ZeroOrMore(5000),
            s_usual.SmallOverrun,
            "Least change of a dimension that is worth designing away a splice for: overruns below it are pointed out."),
        JustOver = f.Default(
            "justOver",
            c => c.JustOver,
            LengthShape.ZeroOrMore(5000),
            s_usual.JustOver,
            "Band of bay or depth just over a better division of the sheet in which it is pointed out."),
        AcclimatisingDays = f.Default(
            "acclimatisingDays",
            c => c.AcclimatisingDays,
            new CountShape(0, 365),
            s_usual.AcclimatisingDays,
            "Days of acclimatising before cutting."),
        CaseForOne = f.Default(
            "caseForOne",
            c => c.CaseForOne,
            QuantityShape.Mass,
            s_usual.CaseForOne,
            "Heaviest case that one person assembles, moves and sets."),
        SolidMovement = f.Default(
            "solidMovement",
            c => c.SolidMovement,
            LengthShape.ZeroOrMore(500),
            s_usual.SolidMovement,
            "Largest seasonal change of width of one solid member that a finish and its joints bear."),
        RunMovement = f.Default(
            "runMovement",
            c => c.RunMovement,
            LengthShape.ZeroOrMore(500),
            s_usual.RunMovement,
            "Seasonal change of length of a run between two walls that its fillers hide."),
        LeastShelfPlay = f.Default(
            "leastShelfPlay",
            c => c.LeastShelfPlay,
            LengthShape.ZeroOrMore(500),
            s_usual.LeastShelfPlay,
            "Play that must be left to a loose shelf when all faces are finished."),
        ScrewsPerStud = f.Default(
            "screwsPerStud",
            c => c.ScrewsPerStud,
            new CountShape(1, 20),
            s_usual.ScrewsPerStud,
            "Most screws at one stud before another fixing is called for."),
        ClampForce = f.Default(
            "clampForce", c => c.ClampForce, QuantityShape.Force, s_usual.ClampForce, "What one long clamp gives without bowing a panel."),
        PullStandsOut = f.Default(
            "pullStandsOut", c => c.PullStandsOut, LengthShape.ZeroOrMore(500), s_usual.PullStandsOut, "How far the pull of a door stands out."),
        LadderBracketForce = f.Default(
            "ladderBracketForce",
            c => c.LadderBracketForce,
            QuantityShape.Force,
            s_usual.LadderBracketForce,
            "Pull that a bracket of a ladder rail and its screws are laid out for."),
        LadderBracketsApart = f.Default(
            "ladderBracketsApart",
            c => c.LadderBracketsApart,
            LengthShape.Between(100, 5000),
            s_usual.LadderBracketsApart,
            "Farthest that two brackets of a ladder rail may stand apart."),
    });
}

using Casewright.Model.Measure;

namespace Casewright.Model.Shop;

/// <summary>
/// Limits that the checks hold a plan to. The shop may edit every one; each check prints the published or usual value beside the
/// shop's own, with its source.
/// </summary>
public sealed record CheckLimits
{
    /// <summary>Span divided by the elastic sag under the stated load; above 0.</summary>
    public double SagRatio { get; init; } = 360;

    /// <summary>Span divided by the sag that an eye begins to see (0.02 in a foot is 600); above 0.</summary>
    public double VisibleSagRatio { get; init; } = 600;

    /// <summary>Span divided by the sag after years, creep included; above 0.</summary>
    public double FinalSagRatio { get; init; } = 240;

    /// <summary>Span divided by the elastic sag under the woodwork standard's load; above 0.</summary>
    public double StandardSagRatio { get; init; } = 144;

    /// <summary>Load of the woodwork standard for books, in Pa (50 psf); above 0.</summary>
    public double StandardLoad { get; init; } = 2394.0;

    /// <summary>Most that the woodwork standard puts on one shelf, in kg (200 lb); above 0.</summary>
    public double StandardShelfMass { get; init; } = 90.7;

    /// <summary>Share of the load that stays on the shelf for years, 0 to 1; books stay.</summary>
    public double SustainedShare { get; init; } = 1;

    /// <summary>Factor on stated loads before they are held against a strength; at least 1.</summary>
    public double LoadFactor { get; init; } = 1.5;

    /// <summary>Longest clear span of a particleboard or fibreboard shelf at 30 kg/m.</summary>
    public Length BoardSpan { get; init; } = Length.FromMillimetres(500);

    /// <summary>Least wood left between two housings of one upright, as a share of its thickness, 0 to 1.</summary>
    public double LeastWeb { get; init; } = 1.0 / 3.0;

    /// <summary>Middle share of an unsupported span that no splice may enter, 0 to 1.</summary>
    public double SpliceFreeShare { get; init; } = 1.0 / 3.0;

    /// <summary>Nearest that a tenon's centre may come to an edge.</summary>
    public Length TenonToEdge { get; init; } = Length.FromMillimetres(40);

    /// <summary>Nearest that a draw connector may come to an edge.</summary>
    public Length ConnectorToEdge { get; init; } = Length.FromMillimetres(60);

    /// <summary>Thinnest panel that takes a loose tenon.</summary>
    public Length ThinnestForTenon { get; init; } = Length.FromMillimetres(15);

    /// <summary>Safety against buckling; at least 1.</summary>
    public double BucklingSafety { get; init; } = 3;

    /// <summary>Sideways push on a loaded case as a share of its weight, for racking.</summary>
    public double SwayShare { get; init; } = 0.025;

    /// <summary>Height of a case divided by its sideways drift under that push; above 0.</summary>
    public double DriftRatio { get; init; } = 300;

    /// <summary>Pull on a case for tip-over and anchorage, in N (50 lb); above 0.</summary>
    public double TipPull { get; init; } = 222.4;

    /// <summary>Height at which the pull acts.</summary>
    public Length TipPullHeight { get; init; } = Length.FromInches(60);

    /// <summary>Least fixings of each case into the structure; at least 1.</summary>
    public int FixingsPerCase { get; init; } = 2;

    /// <summary>Pull that each fixing at the top must hold, in N; above 0.</summary>
    public double FixingForce { get; init; } = 1000;

    /// <summary>Shank diameter of the wood screws into the studs (No. 10 is 0.190 in).</summary>
    public Length FixingDiameter { get; init; } = Length.FromInches(0.190m);

    /// <summary>Thread of those screws in the stud.</summary>
    public Length FixingThread { get; init; } = Length.FromInches(1.5m);

    /// <summary>Mass that one pair of hands may have to lift, in kg; above 0. Also held to the lifting equation.</summary>
    public double MassPerPerson { get; init; } = 23;

    /// <summary>From the ankles to the hands when a case is lifted.</summary>
    public Length LiftReach { get; init; } = Length.FromMillimetres(400);

    /// <summary>Heaviest sheet for one person, in kg; above 0.</summary>
    public double SheetForOne { get; init; } = 35;

    /// <summary>Heaviest case that one person assembles, moves and sets, in kg; above 0.</summary>
    public double CaseForOne { get; init; } = 40;

    /// <summary>Longest piece for one person.</summary>
    public Length PieceForOne { get; init; } = Length.FromMillimetres(2600);

    /// <summary>Free floor in front of a run over which its load is spread when it is held against the floor's rating.</summary>
    public Length Aisle { get; init; } = Length.FromMillimetres(900);

    /// <summary>Play kept when a case is tilted up under a ceiling.</summary>
    public Length TiltPlay { get; init; } = Length.FromMillimetres(10);

    /// <summary>Room kept between ceiling and case for lifting it onto its base.</summary>
    public Length LiftRoom { get; init; } = Length.FromMillimetres(12);

    /// <summary>Play kept on each side where a case is carried through.</summary>
    public Length CarryPlay { get; init; } = Length.FromMillimetres(10);

    /// <summary>Thickness of the finish on one face after all coats.</summary>
    public Length FilmThickness { get; init; } = Length.FromMillimetres(0.1m);

    /// <summary>Least change of a dimension that is worth designing away a splice for: overruns below it are pointed out.</summary>
    public Length SmallOverrun { get; init; } = Length.FromMillimetres(60);

    /// <summary>Band of bay or depth just over a better division of the sheet in which it is pointed out.</summary>
    public Length JustOver { get; init; } = Length.FromMillimetres(30);

    /// <summary>Days of acclimatising before cutting; not negative.</summary>
    public int AcclimatisingDays { get; init; } = 3;

    /// <summary>Largest seasonal change of width of one solid member that a finish and its joints bear.</summary>
    public Length SolidMovement { get; init; } = Length.FromInches(0, 1, 32);

    /// <summary>Seasonal change of length of a run between two walls that its fillers hide.</summary>
    public Length RunMovement { get; init; } = Length.FromMillimetres(2);

    /// <summary>Play that must be left to a loose shelf when all faces are finished.</summary>
    public Length LeastShelfPlay { get; init; } = Length.FromMillimetres(1);

    /// <summary>Most screws at one stud before another fixing is called for; at least 1.</summary>
    public int ScrewsPerStud { get; init; } = 3;

    /// <summary>Force that one long clamp gives without bowing a panel, in N; positive.</summary>
    public double ClampForce { get; init; } = 4000;

    /// <summary>How far the pull of a door stands out.</summary>
    public Length PullStandsOut { get; init; } = Length.FromMillimetres(40);

    /// <summary>Pull that a bracket of a ladder rail and its screws are laid out for, in N; positive.</summary>
    public double LadderBracketForce { get; init; } = 1000;

    /// <summary>Farthest that two brackets of a ladder rail may stand apart.</summary>
    public Length LadderBracketsApart { get; init; } = Length.FromMillimetres(900);
}

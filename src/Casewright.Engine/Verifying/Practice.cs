using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying;

/// <summary>
/// Limits of joints that no field of the shop's rules states. Common practice of the trade, no source, each taken at the easy end
/// of its usual range, so that a plan is refused only for what a maker would refuse.
/// </summary>
internal static class Practice
{
    /// <summary>Two tenons or more in parts at least this wide; one alone lets the joint turn.</summary>
    public static readonly Length TwoTenonsFrom = Length.FromMillimetres(150);

    /// <summary>Nearest that a tenon's centre may come to a long edge in such parts: about 40 mm, or 1 1/2 in.</summary>
    public static readonly Length TenonToEdge = Length.FromMillimetres(38);

    /// <summary>Least wood between a mortise and a long edge in narrower parts, and between mortises.</summary>
    public static readonly Length WoodBesideMortise = Length.FromMillimetres(5);

    /// <summary>Nearest that a draw connector's centre may come to a long edge: about 60 mm, or 2 1/4 in.</summary>
    public static readonly Length ConnectorToEdge = Length.FromMillimetres(57);

    /// <summary>Least wood between a mortise and the centre of a draw connector's hole.</summary>
    public static readonly Length MortiseToConnector = Length.FromMillimetres(10);

    /// <summary>Nearest that the centres of two draw connectors may come.</summary>
    public static readonly Length ConnectorToConnector = Length.FromMillimetres(40);

    /// <summary>Nearest that the match triangle's centre may come to the centre of a hole.</summary>
    public static readonly Length MarkToHole = Length.FromMillimetres(10);

    /// <summary>A mortise deeper than half its tenon by more than this only weakens the piece.</summary>
    public static readonly Length MostGlueRoom = Length.FromMillimetres(5);

    /// <summary>A mortise wider than its tenon by more than this no longer places the piece.</summary>
    public static readonly Length MostPlay = Length.FromMillimetres(3);

    /// <summary>A step or shift that hands do not feel while closing a joint: within it a wrong piece passes for a right one.</summary>
    public static readonly Length Unnoticed = Length.FromMillimetres(1);

    /// <summary>Gap between a back and what carries or covers it within which they still touch once pinned.</summary>
    public static readonly Length Touching = Length.FromMillimetres(2);

    /// <summary>Bearing of a strip of trim, on each side of its joint, on what stands behind it.</summary>
    public static readonly Length TrimBearing = Length.FromMillimetres(5);

    /// <summary>Width of part that the minutes of a method are stated for.</summary>
    public static readonly Length MinutesWidth = Length.FromMillimetres(300);

    /// <summary>Thicknesses in which each method is made; measured or nominal thickness must lie between.</summary>
    public static (Length Least, Length Most) Thickness(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => (Length.FromMillimetres(15), Length.FromMillimetres(30)),
        SpliceMethod.TenonsAndConnectors => (Length.FromMillimetres(18), Length.FromMillimetres(30)),
        SpliceMethod.Spline => (Length.FromMillimetres(15), Length.FromMillimetres(25)),
        SpliceMethod.HalfLap => (Length.FromMillimetres(18), Length.FromMillimetres(30)),
        SpliceMethod.Scarf => (Length.FromMillimetres(12), Length.FromMillimetres(25)),
        _ => (Length.Zero, Length.FromMillimetres(60)),
    };

    /// <summary>Length that a method's overlap takes, as multiples of the thickness: a lap 4 to 6, a scarf 8 to 12.</summary>
    public static (int Least, int Most) OverlapInThicknesses(SpliceMethod method) => method switch
    {
        SpliceMethod.HalfLap => (4, 6),
        SpliceMethod.Scarf => (8, 12),
        _ => (0, 0),
    };

    /// <summary>Whether a method holds the pieces with loose tenons.</summary>
    public static bool HasTenons(SpliceMethod method) => method is SpliceMethod.LooseTenons or SpliceMethod.TenonsAndConnectors;

    /// <summary>
    /// Whether a part is a strip of trim: fixed along its length, so that its joints carry nothing and may be plain butts over what
    /// stands behind them.
    /// </summary>
    public static bool IsTrim(PartRole role) => role is PartRole.Crown or PartRole.ToeFace or PartRole.TrimBand or PartRole.Nosing
        or PartRole.Stile or PartRole.Rail or PartRole.Filler or PartRole.BaseRail or PartRole.BaseMould or PartRole.LightRail;

    /// <summary>Whether a method needs a face that takes holes or a plate.</summary>
    public static bool NeedsAccess(SpliceMethod method) => method is SpliceMethod.TenonsAndConnectors or SpliceMethod.BackedButt;
}

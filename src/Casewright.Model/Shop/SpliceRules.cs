using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Splices;

namespace Casewright.Model.Shop;

/// <summary>A joint method that the shop is set up for.</summary>
public sealed record ShopMethod
{
    /// <summary>The method.</summary>
    public required SpliceMethod Method { get; init; }

    /// <summary>Hands-on minutes of one joint in a 300 mm wide part; positive.</summary>
    public required double Minutes { get; init; }
}

/// <summary>Rules of joining parts end to end. All lengths are shop practice, to be edited by the shop.</summary>
public sealed record SpliceRules
{
    /// <summary>Shortest piece of a spliced part.</summary>
    public required Length ShortestPiece { get; init; }

    /// <summary>Shortest piece as a share of the part: the divisor n of "at least 1/n of the length"; at least 2.</summary>
    public int ShortestShare { get; init; } = 8;

    /// <summary>Nearest that a joint line may come to the edge of a dado, before half the tenon's length is added where that is more.</summary>
    public required Length ClearOfDado { get; init; }

    /// <summary>Nearest that a joint line may come to a pin hole.</summary>
    public required Length ClearOfPinHole { get; init; }

    /// <summary>Nearest that a joint line may come to a hinge plate, slide or bracket screw.</summary>
    public required Length ClearOfHardware { get; init; }

    /// <summary>How far below the underside of a fixed shelf a joint hides best.</summary>
    public required Length BelowShelf { get; init; }

    /// <summary>Left on each side of a joint for squaring the ends before mortising.</summary>
    public required Length SquaringAllowance { get; init; }

    /// <summary>Left on the outer end opposite the datum end, trimmed after the cure.</summary>
    public required Length EndAllowance { get; init; }

    /// <summary>Most joints in one part; 0 forbids splicing.</summary>
    public int MostJoints { get; init; } = 2;

    /// <summary>Step of the grid on which joint positions are tried.</summary>
    public required Length PositionStep { get; init; }

    /// <summary>Whether joints of uprights along a run keep one height.</summary>
    public bool OneSightLine { get; init; } = true;

    /// <summary>Methods the shop is set up for, the preferred first; a covered butt for backs needs no entry.</summary>
    public required ValueList<ShopMethod> Methods { get; init; }

    /// <summary>Width of a loose tenon.</summary>
    public required Length TenonWidth { get; init; }

    /// <summary>Depth of a tenon in each piece.</summary>
    public required Length TenonEmbedment { get; init; }

    /// <summary>Least bearing of a back's joint on a fixed shelf, each side.</summary>
    public required Length BackBearing { get; init; }

    /// <summary>Least overlap of a trim band over a back's joint, each side.</summary>
    public required Length BandOverlap { get; init; }

    /// <summary>Shop practice in round figures of the unit system (common practice, no source).</summary>
    public static SpliceRules For(UnitSystem units) => units == UnitSystem.Inches
        ? new()
        {
            ShortestPiece = Length.FromInches(12),
            ClearOfDado = Length.FromInches(1, 1, 4),
            ClearOfPinHole = Length.FromInches(1),
            ClearOfHardware = Length.FromInches(2),
            BelowShelf = Length.FromInches(1, 3, 8),
            SquaringAllowance = Length.FromInches(0, 1, 8),
            EndAllowance = Length.FromInches(0, 3, 8),
            PositionStep = Length.FromInches(0, 1, 4),
            Methods = UsualMethods,
            TenonWidth = Length.FromInches(0, 7, 8),
            TenonEmbedment = Length.FromInches(0, 7, 8),
            BackBearing = Length.FromInches(0, 5, 16),
            BandOverlap = Length.FromInches(1),
        }
        : new()
        {
            ShortestPiece = Length.FromMillimetres(300),
            ClearOfDado = Length.FromMillimetres(30),
            ClearOfPinHole = Length.FromMillimetres(25),
            ClearOfHardware = Length.FromMillimetres(50),
            BelowShelf = Length.FromMillimetres(35),
            SquaringAllowance = Length.FromMillimetres(3),
            EndAllowance = Length.FromMillimetres(10),
            PositionStep = Length.FromMillimetres(5),
            Methods = UsualMethods,
            TenonWidth = Length.FromMillimetres(22),
            TenonEmbedment = Length.FromMillimetres(22),
            BackBearing = Length.FromMillimetres(8),
            BandOverlap = Length.FromMillimetres(25),
        };

    private static ValueList<ShopMethod> UsualMethods { get; } =
    [
        new() { Method = SpliceMethod.TenonsAndConnectors, Minutes = 28 },
        new() { Method = SpliceMethod.LooseTenons, Minutes = 26 },
    ];
}

using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Gluing;

/// <summary>What holds a splice while its glue cures: clamps by kind, and whether the station stays taken (common practice, no source).</summary>
internal static class HoldingGear
{
    /// <summary>Clamps of one loading.</summary>
    public static (ClampKind Kind, int Count)? Clamps(HoldingMethod holding) => holding switch
    {
        HoldingMethod.EndClamps => (ClampKind.LongBar, 2),
        HoldingMethod.SpreaderAgainstStop => (ClampKind.Spreader, 1),
        HoldingMethod.PinchDogs => (ClampKind.PinchDog, 4),
        HoldingMethod.FaceClamps => (ClampKind.Face, 4),
        _ => null,
    };

    /// <summary>Whether the joint has to lie at its station under pressure; connectors hold it and free the place.</summary>
    public static bool KeepsStation(HoldingMethod holding) => holding is not (HoldingMethod.DrawConnectors or HoldingMethod.Carried);

    /// <summary>Whether a tall part takes a second pair of hands: stops and connectors let one person close it alone.</summary>
    public static bool TallNeedsTwo(HoldingMethod holding) => holding is HoldingMethod.EndClamps or HoldingMethod.FaceClamps or HoldingMethod.PinchDogs;

    /// <summary>Clamps in words.</summary>
    public static string Name(ClampKind kind) => kind switch
    {
        ClampKind.LongBar => "long bar clamps",
        ClampKind.Bar => "bar clamps",
        ClampKind.Face => "face clamps",
        ClampKind.Spreader => "spreaders",
        ClampKind.PinchDog => "pinch dogs",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}

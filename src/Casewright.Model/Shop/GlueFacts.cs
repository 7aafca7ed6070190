using Casewright.Model.Collections;

namespace Casewright.Model.Shop;

/// <summary>How clamp, handling and cure times grow at a temperature.</summary>
/// <param name="Celsius">Temperature of wood, glue and shop, in °C.</param>
/// <param name="Factor">On the times at 20 °C; positive.</param>
public sealed record GlueFactor(double Celsius, double Factor);

/// <summary>The glue used for splices and cases; defaults are common practice for white and yellow PVA glue at 20 °C, no source.</summary>
public sealed record GlueFacts
{
    /// <summary>Minutes from spreading until the faces must meet; positive.</summary>
    public double OpenMinutes { get; init; } = 6;

    /// <summary>Minutes from meeting until the clamps must be tight; positive.</summary>
    public double ClosedMinutes { get; init; } = 12;

    /// <summary>Minutes under pressure for a splice; positive.</summary>
    public double ClampMinutes { get; init; } = 60;

    /// <summary>Hours until the joint may be loaded or machined; positive.</summary>
    public double CureHours { get; init; } = 24;

    /// <summary>Coldest that wood, glue and shop may be, in °C.</summary>
    public double LeastTemperature { get; init; } = 10;

    /// <summary>Whether the glue creeps under a load that stays (PVA does); its strength under such load is then halved.</summary>
    public bool Creeps { get; init; } = true;

    /// <summary>Minutes under pressure for a joint that is not under stress, such as a housing; positive.</summary>
    public double UnstressedClampMinutes { get; init; } = 30;

    /// <summary>Hours until the joint may be handled with care; positive.</summary>
    public double HandleHours { get; init; } = 3;

    /// <summary>Factors on clamp, handling and cure times by temperature, ascending; between two of them in proportion, beyond the last as the last.</summary>
    public ValueList<GlueFactor> Factors { get; init; } = [new(10, 2.2), new(15, 1.5), new(20, 1), new(27, 0.7)];
}

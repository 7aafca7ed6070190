namespace Casewright.Model.Shop;

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
}

using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Seasons;

/// <summary>What the seasons do to wood in the room.</summary>
/// <param name="Dry">Moisture content in the driest season, in %.</param>
/// <param name="Damp">Moisture content in the dampest season, in %.</param>
/// <param name="HumiditySwing">Change of relative humidity between them, in %.</param>
public sealed record SeasonalMoisture(double Dry, double Damp, double HumiditySwing)
{
    /// <summary>Change of moisture content, in %.</summary>
    public double Swing => Damp - Dry;

    /// <summary>From the facts of the site; null when one is missing.</summary>
    public static SeasonalMoisture? Of(SiteFacts site)
    {
        ArgumentNullException.ThrowIfNull(site);
        if (site is not { RoomTemperature: { } temperature, DriestHumidity: { } dry, DampestHumidity: { } damp })
            return null;
        return new(Moisture.Equilibrium(temperature, dry), Moisture.Equilibrium(temperature, damp), damp - dry);
    }
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>A shelf pin in its hole. SI units: m, Pa, N.</summary>
public static class PinBearing
{
    /// <summary>
    /// Load in N at which a stiff pin crushes its hole: f d (√((l + 2e)² + l²) − (l + 2e)), the balance of a stiff pin pressing
    /// upward at the mouth and downward at the bottom (plastic bearing, as in the European yield model).
    /// </summary>
    /// <param name="bearing">Bearing strength of the panel, in Pa.</param>
    /// <param name="diameter">Of the pin, in m.</param>
    /// <param name="depth">Of the hole, in m.</param>
    /// <param name="arm">From the upright's face to the middle of what lies on the pin, in m.</param>
    public static double Load(double bearing, double diameter, double depth, double arm)
    {
        var reach = depth + (2 * arm);
        return bearing * diameter * (Math.Sqrt((reach * reach) + (depth * depth)) - reach);
    }

    /// <summary>Bearing strength of plywood in Pa: 0.11 ρ d^−0.3 N/mm², ρ in kg/m³, d in mm (EN 1995-1-1 eq. 8.36, from memory). Takes m.</summary>
    public static double PlywoodBearing(double density, double diameter) => 0.11 * density * Math.Pow(diameter * 1000, -0.3) * 1e6;

    /// <summary>Bearing strength of particleboard, fibreboard and strandboard in Pa: 50 d^−0.6 t^0.2 N/mm², d and t in mm (EN 1995-1-1 eq. 8.37, from memory). Takes m.</summary>
    public static double BoardBearing(double diameter, double thickness) =>
        50 * Math.Pow(diameter * 1000, -0.6) * Math.Pow(thickness * 1000, 0.2) * 1e6;

    /// <summary>Bearing strength of solid wood in Pa: 0.082 (1 − 0.01 d) ρ N/mm², ρ in kg/m³, d in mm (EN 1995-1-1 eq. 8.32, from memory). Takes m.</summary>
    public static double SolidBearing(double density, double diameter) => 0.082 * (1 - (0.01 * diameter * 1000)) * density * 1e6;
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Wood and the air's moisture.</summary>
public static class Moisture
{
    /// <summary>Swelling of plywood in its plane for each 10 % of relative humidity (panel trade).</summary>
    public const double PlywoodPerTenPercent = 0.0002;

    /// <summary>
    /// Equilibrium moisture content of wood in % (Wood Handbook, eq. 4-5, after Hailwood and Horrobin; within 0.15 of its table 4-2).
    /// </summary>
    /// <param name="celsius">Temperature in °C, 0 to 70.</param>
    /// <param name="humidity">Relative humidity in %, 0 to 98.</param>
    public static double Equilibrium(double celsius, double humidity)
    {
        var t = (celsius * 9 / 5) + 32;
        var w = 330 + (0.452 * t) + (0.00415 * t * t);
        var k = 0.791 + (0.000463 * t) - (0.000000844 * t * t);
        var k1 = 6.34 + (0.000775 * t) - (0.0000935 * t * t);
        var k2 = 1.09 + (0.0284 * t) - (0.0000904 * t * t);
        var kh = k * humidity / 100;
        return 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh))));
    }

    /// <summary>
    /// Change of size across the grain for each % of moisture content, between 6 and 14 %, from the shrinkage green to oven-dry in %:
    /// 1/(3000/S − 20) (Wood Handbook, chapter 13; reproduces its table 13-5).
    /// </summary>
    public static double ChangeCoefficient(double shrinkage) => 1 / ((3000 / shrinkage) - 30 + 10);

    /// <summary>Change of a dimension, in its own unit: D·C·ΔM.</summary>
    public static double Change(double dimension, double coefficient, double moistureChange) => dimension * coefficient * moistureChange;

    /// <summary>Change of a plywood dimension in its plane, in its own unit, for a change of relative humidity in %.</summary>
    public static double PlywoodChange(double dimension, double humidityChange) => dimension * PlywoodPerTenPercent * humidityChange / 10;
}

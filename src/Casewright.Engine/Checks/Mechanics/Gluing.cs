namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Glue and clamps. SI units: m, Pa, N, kg.</summary>
public static class Gluing
{
    /// <summary>Glue needed in kg: spread × area × (1 + waste). The spread is in kg/m².</summary>
    public static double Mass(double spread, double area, double waste) => spread * area * (1 + waste);

    /// <summary>Force in N that the clamps of one joint must give: pressure × area.</summary>
    public static double ClampForce(double pressure, double area) => pressure * area;

    /// <summary>
    /// How much longer clamps stay on at a temperature than at 20 °C: 0.7 at 27 °C, 1 at 20, 1.5 at 15, 2.2 at 10, straight lines between,
    /// held at the ends (common practice, no source). The caller stops below the glue's least temperature.
    /// </summary>
    public static double ClampTimeFactor(double celsius)
    {
        ReadOnlySpan<(double Celsius, double Factor)> points = [(10, 2.2), (15, 1.5), (20, 1), (27, 0.7)];
        if (celsius <= points[0].Celsius)
            return points[0].Factor;
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            if (celsius <= to.Celsius)
                return from.Factor + ((to.Factor - from.Factor) * (celsius - from.Celsius) / (to.Celsius - from.Celsius));
        }

        return points[^1].Factor;
    }
}

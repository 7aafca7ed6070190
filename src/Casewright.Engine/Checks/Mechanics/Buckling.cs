namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Buckling of uprights under the weight they carry. SI units: m, Pa, N.</summary>
public static class Buckling
{
    /// <summary>Euler load in N of a strip pinned at both ends: π²EI/L² (Euler 1744).</summary>
    public static double Euler(double elasticity, RectangularSection section, double length) =>
        Math.PI * Math.PI * elasticity * section.SecondMoment / (length * length);

    /// <summary>
    /// Buckling load in N of a panel loaded along its length and held straight along one long edge (by a back), free along the other:
    /// width × (π²D/L² + 12 D₆₆/b²) with D = Et³/12, D₆₆ = Gt³/12 (orthotropic plate theory, Lekhnitskii; for an isotropic
    /// plate it is Timoshenko's 0.425 + (b/L)²).
    /// </summary>
    public static double OneEdgeHeld(double elasticity, double shearModulus, RectangularSection section, double length)
    {
        var cube = Math.Pow(section.Depth, 3) / 12;
        return section.Width * ((Math.PI * Math.PI * elasticity * cube / (length * length)) + (12 * shearModulus * cube / (section.Width * section.Width)));
    }
}

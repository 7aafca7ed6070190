namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Growth of sag with time. Sags in any one unit; factors without unit.</summary>
public static class Creep
{
    /// <summary>Final sag by EN 1995-1-1 2.2.3: u_G (1 + k_def) + u_Q (1 + ψ₂ k_def).</summary>
    /// <param name="permanent">Elastic sag under permanent load.</param>
    /// <param name="variable">Elastic sag under variable load.</param>
    /// <param name="kDef">Creep factor of material and climate, table 3.2.</param>
    /// <param name="sustained">Share of the variable load that stays, ψ₂ (0.8 storage, 0.3 domestic).</param>
    public static double FinalSag(double permanent, double variable, double kDef, double sustained) =>
        (permanent * (1 + kDef)) + (variable * (1 + (sustained * kDef)));

    /// <summary>Total sag by the North American wood design specification 3.5.2: K_cr Δ_LT + Δ_ST.</summary>
    public static double TotalSag(double longTerm, double shortTerm, double creepFactor) => (creepFactor * longTerm) + shortTerm;
}

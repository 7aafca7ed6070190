using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Materials;

/// <summary>How long a load stays.</summary>
public enum LoadDuration
{
    /// <summary>For good: books on a shelf.</summary>
    Permanent,

    /// <summary>Minutes or hours: carrying, tilting up.</summary>
    Short,
}

/// <summary>
/// Creep and strength factors of EN 1995-1-1, tables 3.1 and 3.2. Creep of timber, plywood, strandboard, particleboard P4, fibreboard MDF.LA and
/// hardboard as quoted in public code tables; the arrangement by class and the strength factors from memory.
/// </summary>
public static class ClimateFactors
{
    /// <summary>Creep factor k_def; null where the material may not be used in that climate.</summary>
    public static double? CreepFactor(MaterialKind kind, Climate climate) => (kind, climate) switch
    {
        (MaterialKind.Hardwood or MaterialKind.Softwood, Climate.Heated) => 0.60,
        (MaterialKind.Hardwood or MaterialKind.Softwood, Climate.Unheated) => 0.80,
        (MaterialKind.Hardwood or MaterialKind.Softwood, _) => 2.00,
        (MaterialKind.BirchPlywood or MaterialKind.HardwoodPlywood or MaterialKind.SoftwoodPlywood, Climate.Heated) => 0.80,
        (MaterialKind.BirchPlywood or MaterialKind.HardwoodPlywood or MaterialKind.SoftwoodPlywood, Climate.Unheated) => 1.00,
        (MaterialKind.BirchPlywood or MaterialKind.SoftwoodPlywood, _) => 2.50,
        (_, Climate.Heated) => 2.25,
        (MaterialKind.Osb, Climate.Unheated) => 2.25,
        (MaterialKind.Particleboard or MaterialKind.Mdf or MaterialKind.Hardboard, Climate.Unheated) => 3.00,
        _ => null,
    };

    /// <summary>Strength factor k_mod in a heated or unheated dry room.</summary>
    public static double StrengthFactor(MaterialKind kind, LoadDuration duration) => (kind, duration) switch
    {
        (MaterialKind.Mdf, LoadDuration.Permanent) => 0.20,
        (MaterialKind.Mdf, _) => 0.80,
        (MaterialKind.Particleboard or MaterialKind.Osb or MaterialKind.Hardboard, LoadDuration.Permanent) => 0.30,
        (MaterialKind.Particleboard or MaterialKind.Osb or MaterialKind.Hardboard, _) => 0.85,
        (_, LoadDuration.Permanent) => 0.60,
        _ => 0.90,
    };
}

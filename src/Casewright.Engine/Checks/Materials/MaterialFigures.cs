using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Materials;

/// <summary>Figures of a material for engineering. SI units. Strengths are characteristic (5-percentile) planning figures.</summary>
public sealed record MaterialFigures
{
    /// <summary>Bending modulus of elasticity along the face grain, in Pa.</summary>
    public required double ElasticityAlong { get; init; }

    /// <summary>Bending modulus of elasticity across the face grain, in Pa.</summary>
    public required double ElasticityAcross { get; init; }

    /// <summary>Bending strength along the face grain, in Pa.</summary>
    public required double BendingAlong { get; init; }

    /// <summary>Bending strength across the face grain, in Pa.</summary>
    public required double BendingAcross { get; init; }

    /// <summary>Shear modulus in the plane of the panel, in Pa.</summary>
    public required double PanelShearModulus { get; init; }

    /// <summary>Shear modulus through the thickness (planar, rolling), in Pa.</summary>
    public required double PlanarShearModulus { get; init; }

    /// <summary>Strength in rolling shear beside a mortise, or of the mid-layer, in Pa: the bond strength of tenons.</summary>
    public required double RollingShear { get; init; }

    /// <summary>Mean density in kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Partial factor γ_M on the strength.</summary>
    public required double MaterialFactor { get; init; }

    /// <summary>Where the stiffness comes from.</summary>
    public required string Source { get; init; }

    /// <summary>What stands behind it.</summary>
    public required Standing Standing { get; init; }

    /// <summary>Bending modulus of elasticity in a direction, in Pa.</summary>
    public double Elasticity(bool alongGrain) => alongGrain ? ElasticityAlong : ElasticityAcross;

    /// <summary>Bending strength in a direction, in Pa.</summary>
    public double Bending(bool alongGrain) => alongGrain ? BendingAlong : BendingAcross;
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>A rectangular cross-section bent about its width.</summary>
/// <param name="Width">Width, across the bending, in m; positive.</param>
/// <param name="Depth">Depth, in the direction of bending, in m; positive.</param>
public readonly record struct RectangularSection(double Width, double Depth)
{
    /// <summary>Area in m².</summary>
    public double Area => Width * Depth;

    /// <summary>Second moment of area in m⁴: b t³/12.</summary>
    public double SecondMoment => Width * Depth * Depth * Depth / 12;

    /// <summary>Section modulus in m³: b t²/6.</summary>
    public double Modulus => Width * Depth * Depth / 6;

    /// <summary>Shear area in m²: five sixths of the area.</summary>
    public double ShearArea => 5 * Area / 6;

    /// <summary>
    /// Torsion constant in m⁴: l s³ (1/3 − 0.21 (s/l)(1 − s⁴/12l⁴)), s and l the smaller and larger side
    /// (Roark, formulas for stress and strain; from memory).
    /// </summary>
    public double TorsionConstant
    {
        get
        {
            var (s, l) = Width < Depth ? (Width, Depth) : (Depth, Width);
            var ratio = s / l;
            return l * s * s * s * ((1.0 / 3.0) - (0.21 * ratio * (1 - (Math.Pow(ratio, 4) / 12))));
        }
    }
}

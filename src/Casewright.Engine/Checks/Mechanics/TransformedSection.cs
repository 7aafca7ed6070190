namespace Casewright.Engine.Checks.Mechanics;

/// <summary>One rectangle of a built-up section.</summary>
/// <param name="Section">Its sizes in m.</param>
/// <param name="Elasticity">Its modulus of elasticity in Pa.</param>
/// <param name="Centre">Height of its centre over any common level, in m.</param>
public readonly record struct SectionPart(RectangularSection Section, double Elasticity, double Centre);

/// <summary>
/// A section of parts glued to act together. True only when the section cannot twist: strips on both edges, or a front strip
/// with the back edge carried. One front strip alone twists; see <see cref="NosedShelf"/>.
/// </summary>
public static class TransformedSection
{
    /// <summary>Largest shortfall of the transformed section against solid finite elements for strips on both edges (11 to 16 %).</summary>
    public const double ModelAllowance = 1.15;

    /// <summary>Bending stiffness EI in N·m² about the common axis: ΣE(I + A(z − z̄)²).</summary>
    public static double Stiffness(params ReadOnlySpan<SectionPart> parts)
    {
        double axial = 0, first = 0;
        foreach (var part in parts)
        {
            axial += part.Elasticity * part.Section.Area;
            first += part.Elasticity * part.Section.Area * part.Centre;
        }

        var axis = first / axial;
        double stiffness = 0;
        foreach (var part in parts)
        {
            var arm = part.Centre - axis;
            stiffness += part.Elasticity * (part.Section.SecondMoment + (part.Section.Area * arm * arm));
        }

        return stiffness;
    }
}

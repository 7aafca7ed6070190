namespace Casewright.Engine.Checks.Mechanics;

/// <summary>One ply of a panel.</summary>
/// <param name="Thickness">Its thickness in m.</param>
/// <param name="Elasticity">Its modulus of elasticity along its own grain, in Pa.</param>
/// <param name="AlongFace">Whether its grain runs with the face grain.</param>
public readonly record struct Ply(double Thickness, double Elasticity, bool AlongFace);

/// <summary>Stiffness of a plywood from its plies: cross plies carry nothing (lamination theory, simplest form).</summary>
/// <param name="Plies">From face to face, at least one.</param>
public sealed record PlyLayup(IReadOnlyList<Ply> Plies)
{
    /// <summary>A veneer plywood of one species: sanded faces along, plies by turns.</summary>
    /// <param name="count">Number of plies, odd, at least 3.</param>
    /// <param name="core">Thickness of inner plies in m.</param>
    /// <param name="face">Thickness of the sanded faces in m.</param>
    /// <param name="elasticity">Of the veneer along its grain, in Pa.</param>
    public static PlyLayup Alternating(int count, double core, double face, double elasticity) =>
        new([.. Enumerable.Range(0, count).Select(i => new Ply(i == 0 || i == count - 1 ? face : core, elasticity, i % 2 == 0))]);

    /// <summary>Thickness in m.</summary>
    public double Thickness => Plies.Sum(p => p.Thickness);

    /// <summary>Bending modulus of elasticity on the full section, in Pa, along or across the face grain.</summary>
    public double Elasticity(bool alongFace)
    {
        var z = -Thickness / 2;
        double stiffness = 0;
        foreach (var ply in Plies)
        {
            var centre = z + (ply.Thickness / 2);
            if (ply.AlongFace == alongFace)
                stiffness += ply.Elasticity * ((Math.Pow(ply.Thickness, 3) / 12) + (ply.Thickness * centre * centre));
            z += ply.Thickness;
        }

        return stiffness / (Math.Pow(Thickness, 3) / 12);
    }

    /// <summary>
    /// Bending strength on the full section, in Pa, for plies of one strength and stiffness: along f·I∥/I; across f·I⊥/I·t/(t − 2t_face),
    /// because the outermost working ply lies one face in.
    /// </summary>
    public double Strength(bool alongFace, double veneerStrength)
    {
        var share = Elasticity(alongFace) / Plies[0].Elasticity;
        return alongFace ? veneerStrength * share : veneerStrength * share * Thickness / (Thickness - (2 * Plies[0].Thickness));
    }
}

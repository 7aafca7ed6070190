using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Findings;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Materials;

/// <summary>
/// Engineering figures of every material: the shop's own stiffness and density where it gave them, else planning figures of the kind,
/// each with its source.
/// </summary>
public static class MaterialTable
{
    private const double MegaPascal = 1e6;

    /// <summary>Figures of a material.</summary>
    public static MaterialFigures For(Material material)
    {
        ArgumentNullException.ThrowIfNull(material);
        var planned = Planned(material);
        var density = material.Density ?? planned.Density;
        if (material.Elasticity is not { } own)
            return planned with { Density = density };
        return planned with
        {
            ElasticityAlong = own * MegaPascal,
            ElasticityAcross = material.HasGrain ? Math.Min(planned.ElasticityAcross, own * MegaPascal) : own * MegaPascal,
            Density = density,
            Source = "stiffness stated for this material by the shop",
            Standing = Standing.CommonPractice,
        };
    }

    private static MaterialFigures Planned(Material material) => material.Kind switch
    {
        MaterialKind.BirchPlywood => Birch(material.Thickness.Metres),
        MaterialKind.HardwoodPlywood => Panel(
            5200, 7000, 25, 25, 620, 170, 1.2, 570, 1.2, "planning figure for hardwood faces on a softwood core; no published class", Standing.CommonPractice),
        MaterialKind.SoftwoodPlywood => Panel(
            5850, 2710, 15, 9, 600, 150, 1.2, 520, 1.2, "effective section of 3/4 in plywood, Peurifoy and Oberlender, Formwork for Concrete Structures", Standing.Published),
        MaterialKind.Mdf => Panel(
            2500, 2500, 18, 18, 1000, 150, 1.0, 750, 1.3, "modulus used by the European MDF association in its shelf examples", Standing.Published),
        MaterialKind.Particleboard => Panel(
            2400, 2400, 11, 11, 960, 120, 0.8, 680, 1.3, "planning figure, below the Wood Handbook's range 2.76 to 4.14 GPa (table 12-1)", Standing.CommonPractice),
        MaterialKind.Osb => Panel(
            4410, 2030, 14, 13, 1000, 120, 0.8, 620, 1.2, "Wood Handbook table 12-1, low end; across after table 12-3", Standing.Published),
        MaterialKind.Hardboard => Panel(
            3100, 3100, 18, 18, 1200, 150, 0.8, 950, 1.3, "Wood Handbook table 12-1, low end", Standing.Published),
        MaterialKind.Hardwood => Panel(
            10_000, 700, 40, 5, 650, 650, 2.3, 650, 1.3, "planning figure below the stiffness of common cabinet hardwoods", Standing.CommonPractice),
        MaterialKind.Softwood => Panel(
            9000, 500, 24, 3, 560, 560, 1.5, 480, 1.3, "planning figure for clear spruce and pine", Standing.CommonPractice),
        _ => throw new ArgumentOutOfRangeException(nameof(material), material.Kind, "There are no figures for this kind of material."),
    };

    private static MaterialFigures Panel(
        double along, double across, double bendingAlong, double bendingAcross, double panelShear, double planarShear, double rolling,
        double density, double factor, string source, Standing standing) => new()
        {
            ElasticityAlong = along * MegaPascal,
            ElasticityAcross = across * MegaPascal,
            BendingAlong = bendingAlong * MegaPascal,
            BendingAcross = bendingAcross * MegaPascal,
            PanelShearModulus = panelShear * MegaPascal,
            PlanarShearModulus = planarShear * MegaPascal,
            RollingShear = rolling * MegaPascal,
            Density = density,
            MaterialFactor = factor,
            Source = source,
            Standing = standing,
        };

    // Sanded birch plywood: 1.4 mm plies, 1.1 mm faces, veneer 17 500 N/mm² stiff and 70 N/mm² strong. The lay-up reproduces the
    // published table for every thickness; between two lay-ups the figures run straight, so that a thicker sheet is never less stiff.
    private static MaterialFigures Birch(double thickness)
    {
        var plies = ((thickness - 2.2e-3) / 1.4e-3) + 2;
        var lower = Math.Clamp(((int)Math.Floor((plies - 1) / 2) * 2) + 1, 3, 33);
        var share = Math.Clamp((plies - lower) / 2, 0, 1);
        var (thin, thick) = (BirchLayups[(lower - 3) / 2], BirchLayups[(lower - 1) / 2]);
        double Between(Func<BirchFigures, double> figure) => figure(thin) + (share * (figure(thick) - figure(thin)));
        return Panel(0, 0, 0, 0, 620, 170, 2.3, 680, 1.2, "lamination of 1.4 mm birch plies, the trade handbook's table", Standing.FromMemory) with
        {
            ElasticityAlong = Between(l => l.ElasticityAlong),
            ElasticityAcross = Between(l => l.ElasticityAcross),
            BendingAlong = Between(l => l.BendingAlong),
            BendingAcross = Between(l => l.BendingAcross),
        };
    }

    // 3, 5, 7 ... 35 plies.
    private static readonly BirchFigures[] BirchLayups = [.. Enumerable.Range(0, 17).Select(i => BirchFigures.Of(PlyLayup.Alternating((2 * i) + 3, 1.4e-3, 1.1e-3, 17_500 * MegaPascal)))];

    private readonly record struct BirchFigures(double ElasticityAlong, double ElasticityAcross, double BendingAlong, double BendingAcross)
    {
        public static BirchFigures Of(PlyLayup layup) => new(
            layup.Elasticity(alongFace: true),
            layup.Elasticity(alongFace: false),
            layup.Strength(alongFace: true, 70 * MegaPascal),
            layup.Strength(alongFace: false, 70 * MegaPascal));
    }
}

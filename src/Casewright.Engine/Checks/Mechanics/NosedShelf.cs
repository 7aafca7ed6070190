namespace Casewright.Engine.Checks.Mechanics;

/// <summary>A solid strip glued along the front edge of a shelf.</summary>
/// <param name="Width">Its size in the shelf's depth, in m.</param>
/// <param name="Height">Its height, in m.</param>
/// <param name="Elasticity">Modulus of elasticity along it, in Pa.</param>
/// <param name="ShearModulus">Shear modulus, in Pa.</param>
/// <param name="Offset">Between the mid-planes of panel and strip, in m; the sign does not matter.</param>
public readonly record struct EdgeStrip(double Width, double Height, double Elasticity, double ShearModulus, double Offset)
{
    /// <summary>A strip whose top is flush with a panel of the given thickness (m).</summary>
    public static EdgeStrip TopFlush(double width, double height, double elasticity, double shearModulus, double panelThickness) =>
        new(width, height, elasticity, shearModulus, (height - panelThickness) / 2);
}

/// <summary>A shelf panel as the strip model sees it, in SI units: m and Pa.</summary>
/// <param name="Span">Clear span, in m.</param>
/// <param name="Depth">Front to back, in m.</param>
/// <param name="Thickness">Thickness, in m.</param>
/// <param name="Elasticity">Modulus of elasticity along the span, in Pa.</param>
/// <param name="ShearModulus">Shear modulus in the plane of the panel, in Pa.</param>
public readonly record struct ShelfPanel(double Span, double Depth, double Thickness, double Elasticity, double ShearModulus);

/// <summary>
/// Sag of a simple shelf with one solid strip along its front. The strip holds the front edge only; the back hangs from the
/// panel's own bending and twisting, so the usual transformed section is unsafe here. Two unknowns, the sag of the front edge and
/// the slope across the depth, each a half sine along the span. Model of our own (judgement), within 6 % of solid finite
/// elements; <see cref="ModelAllowance"/> covers the difference.
/// </summary>
public static class NosedShelf
{
    /// <summary>Factor on the model's sags that covers its difference from solid finite elements.</summary>
    public const double ModelAllowance = 1.06;

    /// <summary>Sag in m at midspan of the front and back edges when the back edge is free. The area load is in Pa.</summary>
    public static (double Front, double Back) BackFree(in ShelfPanel panel, EdgeStrip? strip, double areaLoad)
    {
        var (bending, edge, torsion) = Stiffnesses(panel, strip);
        var (b, wave, amplitude) = (panel.Depth, Math.PI / panel.Span, 4 * areaLoad / Math.PI);
        var k11 = (bending * b) + edge;
        var k12 = bending * b * b / 2;
        var k22 = (bending * b * b * b / 3) + (torsion / (wave * wave));
        var f1 = amplitude * b / Math.Pow(wave, 4);
        var f2 = amplitude * b * b / 2 / Math.Pow(wave, 4);
        var determinant = (k11 * k22) - (k12 * k12);
        var front = ((f1 * k22) - (k12 * f2)) / determinant;
        var slope = ((k11 * f2) - (k12 * f1)) / determinant;
        return (front, front + (slope * b));
    }

    /// <summary>Sag in m at midspan of the front edge when the back edge lies on a continuous cleat. The area load is in Pa.</summary>
    public static double BackOnCleat(in ShelfPanel panel, EdgeStrip? strip, double areaLoad)
    {
        var (bending, edge, torsion) = Stiffnesses(panel, strip);
        var (b, wave, amplitude) = (panel.Depth, Math.PI / panel.Span, 4 * areaLoad / Math.PI);
        var stiffness = (bending * b * b * b / 3) + (edge * b * b) + (torsion / (wave * wave));
        return amplitude * b * b / 2 / Math.Pow(wave, 4) / stiffness * b;
    }

    private static (double Bending, double Edge, double Torsion) Stiffnesses(in ShelfPanel panel, EdgeStrip? strip)
    {
        var t = panel.Thickness;
        var bending = panel.Elasticity * t * t * t / 12;
        var torsion = panel.ShearModulus * panel.Depth * t * t * t / 3;
        if (strip is not { } s)
            return (bending, 0, torsion);
        var section = new RectangularSection(s.Width, s.Height);

        // A quarter of the panel's depth pulls along with the strip; the rest bows sideways out of the pull.
        var flange = panel.Elasticity * panel.Depth * t / 4;
        var axial = s.Elasticity * section.Area;
        var edge = (s.Elasticity * section.SecondMoment) + (flange * axial / (flange + axial) * s.Offset * s.Offset);
        return (bending, edge, torsion + (s.ShearModulus * section.TorsionConstant));
    }
}

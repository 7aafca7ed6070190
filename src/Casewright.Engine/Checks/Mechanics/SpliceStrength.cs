namespace Casewright.Engine.Checks.Mechanics;

/// <summary>The panel that a splice joins, as its strength model sees it. SI units: m and Pa; characteristic strengths.</summary>
/// <param name="Width">Width of the part, across the bending, in m.</param>
/// <param name="Thickness">Thickness, in m.</param>
/// <param name="Elasticity">Modulus of elasticity along the part, in Pa.</param>
/// <param name="BendingStrength">Bending strength along the part, in Pa.</param>
/// <param name="TensileStrength">Tensile strength along the part, in Pa.</param>
/// <param name="BondStrength">Least of glue shear, side-grain shear of the tenon and rolling shear of the panel, in Pa.</param>
public readonly record struct SplicedPanel(
    double Width, double Thickness, double Elasticity, double BendingStrength, double TensileStrength, double BondStrength)
{
    /// <summary>Bending strength of the unspliced panel for each metre of width, in N·m/m: f t²/6.</summary>
    public double PlainPerWidth => BendingStrength * Thickness * Thickness / 6;

    /// <summary>Bending strength of the unspliced panel, in N·m.</summary>
    public double Plain => PlainPerWidth * Width;
}

/// <summary>Loose tenons or a spline at mid-thickness. SI units: m and Pa.</summary>
/// <param name="Thickness">Of the tenon, in m.</param>
/// <param name="TotalWidth">Number of tenons times their width, or the width of the spline, in m.</param>
/// <param name="Embedment">Depth in each piece, in m.</param>
/// <param name="TensileStrength">Of the tenon along its grain (the grain crosses the joint), in Pa.</param>
/// <param name="BendingStrength">Of the tenon, in Pa.</param>
public readonly record struct TenonSet(double Thickness, double TotalWidth, double Embedment, double TensileStrength, double BendingStrength);

/// <summary>
/// Bending strength of end-to-end splices, flatwise, as characteristic moments in N·m. A model of our own fitted to elastic
/// finite elements, not to tests: every figure is an estimate and calls for a shop test piece.
/// </summary>
public static class SpliceStrength
{
    /// <summary>Deepest embedment that still counts, in m: tests show little gain from 20 to 30 mm (Derikvand and others 2013).</summary>
    public const double DeepestCounted = 0.030;

    /// <summary>Bond limit for each metre of tenon width, closed butt, in N·m/m: τ e t/(1 + 1.25 (1 − t_t/t)).</summary>
    public static double ClosedBond(in SplicedPanel panel, in TenonSet tenons) =>
        panel.BondStrength * Counted(tenons) * panel.Thickness / (1 + (1.25 * (1 - (tenons.Thickness / panel.Thickness))));

    /// <summary>Limit of the tenon itself for each metre of its width, closed butt, in N·m/m: t t_t/(2.5 (1 − t_t/t)/f_t + 6/f_m).</summary>
    public static double ClosedTenon(in SplicedPanel panel, in TenonSet tenons) => panel.Thickness * tenons.Thickness
        / ((2.5 * (1 - (tenons.Thickness / panel.Thickness)) / tenons.TensileStrength) + (6 / tenons.BendingStrength));

    /// <summary>Bond couple for each metre of tenon width when the butt stands open, in N·m/m: τ e t_t.</summary>
    public static double OpenBond(in SplicedPanel panel, in TenonSet tenons) => panel.BondStrength * Counted(tenons) * tenons.Thickness;

    /// <summary>Limit of the tenon for each metre of its width when the butt stands open, in N·m/m: f_m t_t²/6.</summary>
    public static double OpenTenon(in TenonSet tenons) => tenons.BendingStrength * tenons.Thickness * tenons.Thickness / 6;

    /// <summary>Moment of a tenon or spline joint in N·m, with the faces touching (closed) or a gap (open); never above the plain panel.</summary>
    public static double Tenons(in SplicedPanel panel, in TenonSet tenons, bool closed)
    {
        var perWidth = closed
            ? Math.Min(ClosedBond(panel, tenons), ClosedTenon(panel, tenons))
            : Math.Min(OpenBond(panel, tenons), OpenTenon(tenons));
        return Math.Min(panel.Plain, perWidth * tenons.TotalWidth);
    }

    /// <summary>Whether the walls beside the mortise hold the pull that the bond can pass on: τ e ≤ f_t (t − t_t)/2.</summary>
    public static bool WallsHold(in SplicedPanel panel, in TenonSet tenons) =>
        panel.BondStrength * Counted(tenons) <= panel.TensileStrength * (panel.Thickness - tenons.Thickness) / 2;

    /// <summary>Share of the bond's strength that the walls beside the mortise can pass on, at most 1: f_t (t − t_t)/2 ÷ τ e.</summary>
    public static double WallShare(in SplicedPanel panel, in TenonSet tenons) =>
        Math.Min(1, panel.TensileStrength * (panel.Thickness - tenons.Thickness) / 2 / (panel.BondStrength * Counted(tenons)));

    /// <summary>Direct pull of a tenon set in N: the lesser of the bond on both cheeks, 2 w e τ, and the tenon, w t_t f_t.</summary>
    public static double TenonTension(in SplicedPanel panel, in TenonSet tenons) => Math.Min(
        2 * tenons.TotalWidth * Counted(tenons) * panel.BondStrength, tenons.TotalWidth * tenons.Thickness * tenons.TensileStrength);

    /// <summary>
    /// Moment in N·m of tenons in the plane of the panel (carried on edge): each tenon pulls at its own distance from the compressed
    /// edge, ΣT·y, with the pull in proportion to that distance and the farthest at its limit.
    /// </summary>
    /// <param name="panel">The panel.</param>
    /// <param name="one">One tenon: its own width as total width.</param>
    /// <param name="distances">Distances of tenon centres from the compressed edge, in m, at least one positive.</param>
    public static double InPlane(in SplicedPanel panel, in TenonSet one, IReadOnlyList<double> distances)
    {
        ArgumentNullException.ThrowIfNull(distances);
        var farthest = distances.Max();
        return farthest <= 0 ? 0 : TenonTension(panel, one) * distances.Sum(y => y * y) / farthest;
    }

    /// <summary>Share of the plain panel's bending strength that a half-lap keeps: 0.25 by the shoulder's half thickness, 0.20 counted for peel.</summary>
    public const double HalfLapShare = 0.20;

    /// <summary>Glued length in m needed each side of a half-lap's middle for a moment per metre of width: 1.5 m/(t τ).</summary>
    public static double HalfLapBond(in SplicedPanel panel, double momentPerWidth) => 1.5 * momentPerWidth / panel.Thickness / panel.BondStrength;

    /// <summary>Shear stress on the glue plane of a scarf 1:s for each unit of axial stress: s/(1 + s²).</summary>
    public static double ScarfShear(double slope) => slope / (1 + (slope * slope));

    /// <summary>Share of the plain strength by the handbook's rule that wood is ten times stronger in tension than in shear: 0.1 (s + 1/s), at most 0.90.</summary>
    public static double ScarfShareByShear(double slope) => Math.Min(0.9, 0.1 * (slope + (1 / slope)));

    /// <summary>Share of the plain strength counted for a scarf 1:s, between the steps 1:5 0.50, 1:6 0.60, 1:8 0.75, 1:10 0.80, 1:12 0.85; 0 when steeper than 1:5.</summary>
    public static double ScarfShare(double slope) => slope switch
    {
        < 5 => 0,
        < 6 => 0.50,
        < 8 => 0.60,
        < 10 => 0.75,
        < 12 => 0.80,
        _ => 0.85,
    };

    /// <summary>Depth of the compressed zone in m from the compressed face, when the plate lies on the pulled face and the butt is closed.</summary>
    public static double PlateAxis(double thickness, double plate, double elasticityRatio)
    {
        // x²/2 = n t_p (t + t_p/2 − x)
        var n = elasticityRatio * plate;
        return -n + Math.Sqrt((n * n) + (2 * n * (thickness + (plate / 2))));
    }

    /// <summary>
    /// Share of the plain panel's bending strength with a glued back plate on the pulled face, butt closed, by the cracked section; at
    /// most 1 because the panel beside the plate then governs.
    /// </summary>
    public static double PlateOnPulledFace(double thickness, double plate, double elasticityRatio) =>
        Math.Min(1, PlateModulusRatio(thickness, plate, elasticityRatio));

    /// <summary>Section modulus at the face of the plate divided by the plain panel's, cracked section, not capped.</summary>
    public static double PlateModulusRatio(double thickness, double plate, double elasticityRatio)
    {
        var (x, moment) = Cracked(thickness, plate, elasticityRatio);
        return moment / (elasticityRatio * (thickness + plate - x)) / (thickness * thickness / 6);
    }

    /// <summary>Share of the plain panel's bending strength with the plate on the compressed face: the plate bends alone, (t_p/t)².</summary>
    public static double PlateOnCompressedFace(double thickness, double plate) => Math.Min(1, plate * plate / (thickness * thickness));

    /// <summary>Glued length in m of the plate on each side for a moment per metre of width (N·m/m): plate force / τ.</summary>
    public static double PlateBond(in SplicedPanel panel, double plate, double elasticityRatio, double momentPerWidth)
    {
        var (x, moment) = Cracked(panel.Thickness, plate, elasticityRatio);
        return momentPerWidth * elasticityRatio * plate * (panel.Thickness + (plate / 2) - x) / moment / panel.BondStrength;
    }

    private static double Counted(in TenonSet tenons) => Math.Min(tenons.Embedment, DeepestCounted);

    private static (double Axis, double SecondMoment) Cracked(double t, double plate, double ratio)
    {
        var x = PlateAxis(t, plate, ratio);
        var arm = t + (plate / 2) - x;
        return (x, (x * x * x / 3) + (ratio * ((plate * plate * plate / 12) + (plate * arm * arm))));
    }
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// Sag and moment of straight beams of one section. Loads in N/m or N, spans in m, stiffness EI in N·m², shear stiffness GA′ in N;
/// results in m and N·m. Standard beam theory; every formula is tested against numerical integration.
/// </summary>
public static class Beams
{
    /// <summary>Position of the largest sag of two equal loaded spans from the outer support, as a share of the span: (1 + √33)/16.</summary>
    public static readonly double TwoSpanSagPosition = (1 + Math.Sqrt(33)) / 16;

    /// <summary>Largest sag of two equal loaded spans, divided by wL⁴/EI.</summary>
    public static readonly double TwoSpanSagFactor = ProppedShape(TwoSpanSagPosition);

    /// <summary>Sag at midspan of a simple span under a uniform load: 5wL⁴/384EI.</summary>
    public static double SimpleSag(double load, double span, double stiffness) => 5 * load * Math.Pow(span, 4) / (384 * stiffness);

    /// <summary>What shear adds to <see cref="SimpleSag"/>: wL²/8GA′.</summary>
    public static double SimpleShearSag(double load, double span, double shearStiffness) => load * span * span / (8 * shearStiffness);

    /// <summary>Sag at midspan with both ends fixed: wL⁴/384EI.</summary>
    public static double FixedSag(double load, double span, double stiffness) => load * Math.Pow(span, 4) / (384 * stiffness);

    /// <summary>Largest sag of two equal spans, both loaded; also of one span fixed at one end.</summary>
    public static double TwoSpanSag(double load, double span, double stiffness) => TwoSpanSagFactor * load * Math.Pow(span, 4) / stiffness;

    /// <summary>Sag at the end of a cantilever under a uniform load: wL⁴/8EI.</summary>
    public static double CantileverSag(double load, double span, double stiffness) => load * Math.Pow(span, 4) / (8 * stiffness);

    /// <summary>Sag at midspan under a point load there: PL³/48EI.</summary>
    public static double PointSag(double force, double span, double stiffness) => force * Math.Pow(span, 3) / (48 * stiffness);

    /// <summary>Modulus of elasticity in Pa from a bending test on supports <paramref name="span"/> apart: PL³/(4bt³δ).</summary>
    public static double ElasticityFromTest(double force, double span, RectangularSection section, double sag) =>
        force * Math.Pow(span, 3) / (4 * section.Width * Math.Pow(section.Depth, 3) * sag);

    /// <summary>Moment at <paramref name="x"/> from one end of a simple span under a uniform load: wx(L − x)/2.</summary>
    public static double SimpleMoment(double load, double span, double x) => load * x * (span - x) / 2;

    /// <summary>Sag at midspan and at the ends of a shelf of length <paramref name="length"/> on two supports that stand in by <paramref name="inset"/>.</summary>
    public static (double Middle, double End) OverhangSag(double load, double length, double inset, double stiffness)
    {
        var span = length - (2 * inset);
        var middle = load * span * span * ((5 * span * span) - (24 * inset * inset)) / (384 * stiffness);
        var end = load * inset * ((3 * inset * inset * (inset + (2 * span))) - (span * span * span)) / (24 * stiffness);
        return (middle, end);
    }

    /// <summary>Inset of two supports, as a share of the length, at which middle and ends of a loaded shelf sag alike.</summary>
    public static double EvenSagInset()
    {
        var (low, high) = (0.2, 0.24);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            var (centre, end) = OverhangSag(1, 1, middle, 1);
            (low, high) = centre > end ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Largest span of a simple shelf that keeps to span/<paramref name="ratio"/> under an area load in Pa; E in Pa, thickness and result in m.</summary>
    public static double LongestSpan(double elasticity, double thickness, double areaLoad, double ratio) =>
        Math.Cbrt(384 * elasticity * Math.Pow(thickness, 3) / 12 / (5 * ratio * areaLoad));

    private static double ProppedShape(double x) => x * (1 - (3 * x * x) + (2 * x * x * x)) / 48;
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>How much a splice softens a panel. SI units: m.</summary>
public static class SpliceStiffness
{
    // Extra length over panel thickness by spline thickness over panel thickness, from plane finite elements of an 18 mm panel with
    // the spline 25 mm deep each side: 80, 59 and 32 mm. At 12 mm depth the middle figure was 73.
    private static readonly (double Thickness, double Length)[] Points = [(0.25, 80.0 / 18), (1.0 / 3.0, 59.2 / 18), (0.5, 32.0 / 18)];

    /// <summary>
    /// Extra length of plain panel that turns as much as a continuous spline joint does, EI/k in m: by straight lines between finite-element
    /// results for splines a quarter, a third and half as thick as the panel, held at the ends.
    /// </summary>
    public static double SplineLength(double thickness, double splineThickness)
    {
        var share = Math.Clamp(splineThickness / thickness, Points[0].Thickness, Points[^1].Thickness);
        var i = share <= Points[1].Thickness ? 1 : 2;
        var (from, to) = (Points[i - 1], Points[i]);
        return thickness * (from.Length + ((to.Length - from.Length) * (share - from.Thickness) / (to.Thickness - from.Thickness)));
    }

    /// <summary>The same for tenons that cover only part of the width: × b/(n w).</summary>
    public static double TenonLength(double thickness, double tenonThickness, double width, double tenonsWidth) =>
        SplineLength(thickness, tenonThickness) * width / tenonsWidth;

    /// <summary>
    /// Sag at midspan that a splice adds to a simple span under a uniform load, as a share of the plain sag: 19.2 (EI/k)/L ξ²(1 − ξ),
    /// ξ the distance from the nearer end over the span; 2.4 (EI/k)/L at midspan. By virtual work: the joint turns by M/k, and
    /// a unit load at midspan has the moment x/2 there.
    /// </summary>
    public static double AddedSag(double extraLength, double span, double position)
    {
        var x = Math.Min(position, span - position) / span;
        return 19.2 * extraLength / span * x * x * (1 - x);
    }
}

namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// Whether one rectangle fits into another when it may lean. All lengths in one unit, whichever. W. B. Carver, solution of problem E1225,
/// American Mathematical Monthly 64 (1957), 114–116, from memory; held against rotation in small steps by the tests.
/// </summary>
public static class RectangleInRectangle
{
    /// <summary>
    /// Whether p × q fits into a × b: level when p ≤ a and q ≤ b (long sides along each other); leaning when p > a, q ≤ b and
    /// b ≥ (2pqa + (p² − q²)·√(p² + q² − a²))/(p² + q²).
    /// </summary>
    public static bool Fits(double p, double q, double a, double b)
    {
        (p, q) = (Math.Max(p, q), Math.Min(p, q));
        (a, b) = (Math.Max(a, b), Math.Min(a, b));
        if (p <= a && q <= b)
            return true;
        if (q > b || p <= a)
            return false;
        var square = (p * p) + (q * q);
        return b >= ((2 * p * q * a) + (((p * p) - (q * q)) * Math.Sqrt(square - (a * a)))) / square;
    }

    /// <summary>Longest rectangle of width q that fits into a × b, level or leaning; 0 when it is too wide. To 1e-9 of the unit.</summary>
    public static double Longest(double q, double a, double b)
    {
        if (q > Math.Min(a, b))
            return 0;
        var (low, high) = (Math.Max(a, b), Math.Sqrt((a * a) + (b * b)));
        while (high - low > 1e-9)
        {
            var middle = (low + high) / 2;
            (low, high) = Fits(middle, q, a, b) ? (middle, high) : (low, middle);
        }

        return low;
    }
}

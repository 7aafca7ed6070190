namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// Taking a long thing round a right-angled turn from a passage of width a into one of width b, kept level. All lengths in one unit,
/// whichever. Exact for a rectangle in plan.
/// </summary>
public static class CorridorTurn
{
    /// <summary>Longest rod without thickness: (a^⅔ + b^⅔)^1.5.</summary>
    public static double LongestRod(double a, double b) => Math.Pow(Math.Cbrt(a * a) + Math.Cbrt(b * b), 1.5);

    /// <summary>
    /// Longest rectangle of plan thickness <paramref name="thickness"/> that turns with its long side leading into the corner:
    /// the least over u of (a cos u + b sin u − w)/(sin u cos u). 0 when it is thicker than a passage.
    /// </summary>
    public static double Longest(double a, double b, double thickness)
    {
        if (thickness >= Math.Min(a, b))
            return 0;

        return At(a, b, thickness, TightestAngle(a, b, thickness));
    }

    /// <summary>The angle in radians, from the wall of the second passage, at which the inner corner is tightest; for a thickness under both widths.</summary>
    public static double TightestAngle(double a, double b, double thickness)
    {
        // The function falls from infinity, has one valley, and rises to infinity again.
        var (low, high) = (1e-6, (Math.PI / 2) - 1e-6);
        for (var i = 0; i < 200; i++)
        {
            var (left, right) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = At(a, b, thickness, left) < At(a, b, thickness, right) ? (low, right) : (left, high);
        }

        return (low + high) / 2;
    }

    /// <summary>Whether a rectangle of plan <paramref name="length"/> × <paramref name="thickness"/> gets round: by turning, or pushed through without turning when it is short enough for both.</summary>
    public static bool Passes(double a, double b, double length, double thickness)
    {
        var (l, s) = length < thickness ? (thickness, length) : (length, thickness);

        // Slid sideways: it enters the first passage end on and leaves the second broadside, which needs no turn.
        return (s <= a && l <= b) || (l <= a && s <= b) || l <= Longest(a, b, s);
    }

    private static double At(double a, double b, double w, double u)
    {
        var (sin, cos) = Math.SinCos(u);
        return ((a * cos) + (b * sin) - w) / (sin * cos);
    }
}

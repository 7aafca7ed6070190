namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// A box of length l and thickness v tipped up by an angle in the plane of both: how much room it takes along the floor, l·cos φ + v·sin φ, and
/// in height, l·sin φ + v·cos φ. All lengths in one unit, angles in radians from lying (0) to standing (π/2).
/// </summary>
public static class Tipping
{
    /// <summary>Room along the floor.</summary>
    public static double Along(double length, double thickness, double angle) => (length * Math.Cos(angle)) + (thickness * Math.Sin(angle));

    /// <summary>Room in height.</summary>
    public static double Height(double length, double thickness, double angle) => (length * Math.Sin(angle)) + (thickness * Math.Cos(angle));

    /// <summary>
    /// The angle at which it is shortest along the floor under a headroom. Its height grows up to the diagonal upright, its length along the
    /// floor shrinks from the diagonal level on: so it is lying, tipped until it touches the headroom, or standing. Null when it fits in no way.
    /// </summary>
    public static double? Shortest(double length, double thickness, double headroom)
    {
        var angles = new List<double>();
        if (thickness <= headroom)
            angles.Add(0);
        if (length <= headroom)
            angles.Add(Math.PI / 2);
        var diagonal = Math.Sqrt((length * length) + (thickness * thickness));
        if (diagonal > headroom && thickness <= headroom)
            angles.Add(Math.Max(0, Math.Asin(headroom / diagonal) - Math.Atan2(thickness, length)));
        return angles.Count == 0 ? null : angles.MinBy(angle => Along(length, thickness, angle));
    }
}

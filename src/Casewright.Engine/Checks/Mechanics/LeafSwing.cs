namespace Casewright.Engine.Checks.Mechanics;

/// <summary>A rectangle on the floor plan, seen from the hinge of a door: u along the closed leaf towards its latch, v out into the room; any unit of length.</summary>
/// <param name="FromU">Least u.</param>
/// <param name="ToU">Greatest u.</param>
/// <param name="FromV">Least v; not negative.</param>
/// <param name="ToV">Greatest v.</param>
public readonly record struct PlanRectangle(double FromU, double ToU, double FromV, double ToV);

/// <summary>How far a door leaf turns before it meets something. Plane geometry; the leaf is as thin as a line, its handle a point.</summary>
public static class LeafSwing
{
    /// <summary>Angle in degrees, 0 to 180, to which a leaf of this length opens before it or its handle meets a rectangle.</summary>
    /// <param name="length">From the hinge to the free edge.</param>
    /// <param name="handleFromEdge">From the free edge to the handle.</param>
    /// <param name="handleOut">How far the handle stands out from the leaf, on the side that it opens towards.</param>
    /// <param name="obstacle">What stands there.</param>
    public static double Angle(double length, double handleFromEdge, double handleOut, PlanRectangle obstacle)
    {
        var (arm, lead) = (double.Hypot(length - handleFromEdge, handleOut), Math.Atan2(handleOut, length - handleFromEdge));
        var leaf = LeafMeets(length, obstacle);
        var handle = PointMeets(arm, lead, obstacle) is { } meets ? meets - lead : Math.PI;
        return double.RadiansToDegrees(Math.Clamp(Math.Min(leaf, handle), 0, Math.PI));
    }

    // The least angle at which a point of the rectangle lies within reach. In front of the hinge that is the corner nearest the closed leaf,
    // or where the edge enters the circle; behind it the corner farthest out.
    private static double LeafMeets(double reach, PlanRectangle r)
    {
        if (r.ToU > 0)
        {
            if (r.FromV >= reach)
                return Math.PI;
            if (double.Hypot(r.ToU, r.FromV) <= reach)
                return Math.Atan2(r.FromV, r.ToU);
            return Math.Sqrt((reach * reach) - (r.FromV * r.FromV)) >= r.FromU ? Math.Asin(r.FromV / reach) : Math.PI;
        }

        if (-r.ToU >= reach)
            return Math.PI;
        var highest = Math.Min(r.ToV, Math.Sqrt((reach * reach) - (r.ToU * r.ToU)));
        return highest >= r.FromV ? Math.Atan2(highest, r.ToU) : Math.PI;
    }

    // The least angle, from the closed leaf's on, at which a point on the circle lies in the rectangle: at once, or where the circle crosses
    // one of its sides. Null where it never does.
    private static double? PointMeets(double radius, double from, PlanRectangle r)
    {
        var (sin, cos) = Math.SinCos(from);
        if (radius * cos >= r.FromU && radius * cos <= r.ToU && radius * sin >= r.FromV && radius * sin <= r.ToV)
            return from;
        var crossings = new List<double>();
        foreach (var u in new[] { r.FromU, r.ToU })
        {
            if (Math.Abs(u) <= radius && Math.Sqrt((radius * radius) - (u * u)) is var v && v >= r.FromV && v <= r.ToV)
                crossings.Add(Math.Atan2(v, u));
        }

        foreach (var v in new[] { r.FromV, r.ToV }.Where(v => v <= radius))
        {
            var across = Math.Sqrt((radius * radius) - (v * v));
            crossings.AddRange(new[] { across, -across }.Where(u => u >= r.FromU && u <= r.ToU).Select(u => Math.Atan2(v, u)));
        }

        return crossings.Where(c => c >= from).Select(c => (double?)c).Min();
    }
}

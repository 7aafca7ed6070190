using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Site;

namespace Casewright.Engine.Access;

/// <summary>
/// Boxes through narrow places. Every way to hold the box is tried and the one with most room to spare is told; among ways that pass, one
/// that needs no tipping comes first. A place is taken as upright walls, so that a tipped box is judged by its outline from above: that errs
/// on the safe side. Metres.
/// </summary>
public static class PassageGeometry
{
    private static readonly int[][] s_orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];

    /// <summary>The best way through for a box of three sizes, play included.</summary>
    public static PassageFit Fit(Passage passage, double[] sizes)
    {
        ArgumentNullException.ThrowIfNull(passage);
        ArgumentNullException.ThrowIfNull(sizes);
        var ways = s_orders.SelectMany(o => Ways(passage, sizes[o[0]], sizes[o[1]], sizes[o[2]])).ToList();
        return ways.Where(w => w.Passes && w.Hold.Tip == 0).MaxBy(w => w.Spare) ?? ways.MaxBy(w => w.Spare)!;
    }

    /// <summary>Greatest first size of a box, of the other two as given, that passes; at most <paramref name="most"/>. To 0.1 mm.</summary>
    public static double Longest(Passage passage, double most, double second, double third)
    {
        var (low, high) = (0.0, most);
        if (Fit(passage, [most, second, third]).Passes)
            return most;
        while (high - low > 0.0001)
        {
            var middle = (low + high) / 2;
            (low, high) = Fit(passage, [middle, second, third]).Passes ? (middle, high) : (low, middle);
        }

        return low;
    }

    // The first size leads, the second is across it in plan, the third stands upright or lies in the plane of tipping.
    private static IEnumerable<PassageFit> Ways(Passage passage, double along, double across, double up) => passage.Kind switch
    {
        PassageKind.Doorway or PassageKind.Window => [Straight(passage, along, across, up, passage.Height.Metres)],
        PassageKind.LiftCar => InLift(passage, along, across, up),
        PassageKind.Stair => OnStairs(passage, along, across, up),
        _ => Turned(passage, along, across, up),
    };

    private static PassageFit Straight(Passage passage, double along, double across, double up, double headroom) => new(
        passage, new(up, along, across, 0, 0, 0), Math.Min(passage.Clear.Metres - across, headroom - up), null);

    /// <summary>Level, then tipped as far as the headroom lets it: then what is to spare is in the turn alone.</summary>
    private static IEnumerable<PassageFit> Turned(Passage passage, double along, double across, double up)
    {
        var (a, b, headroom) = (passage.Width.Metres, (passage.NextWidth ?? passage.Width).Metres, passage.Height.Metres);
        yield return Turn(passage, a, b, new(up, along, across, 0, 0, 0), headroom - up);
        if (Tipping.Shortest(along, up, headroom) is { } angle and > 0 and < Math.PI / 2)
        {
            var hold = new Hold(Tipping.Height(along, up, angle), Tipping.Along(along, up, angle), across, double.RadiansToDegrees(angle), along, up);
            yield return Turn(passage, a, b, hold, double.PositiveInfinity);
        }
    }

    private static PassageFit Turn(Passage passage, double a, double b, Hold hold, double above)
    {
        var (longer, shorter) = (Math.Max(hold.Along, hold.Across), Math.Min(hold.Along, hold.Across));
        var turning = CorridorTurn.Longest(a, b, shorter);
        var sideways = Math.Max(Math.Min(a - shorter, b - longer), Math.Min(a - longer, b - shorter));
        var round = turning > 0 ? turning - longer : Math.Min(a, b) - shorter;
        return new(passage, hold, Math.Min(Math.Max(round, sideways), above), turning);
    }

    /// <summary>
    /// Along the pitch under the headroom square to it; on the landing a turn from the flight into the landing, where the box may be held
    /// another way.
    /// </summary>
    private static IEnumerable<PassageFit> OnStairs(Passage passage, double along, double across, double up)
    {
        var square = passage.Height.Metres * Math.Cos(double.DegreesToRadians(passage.Pitch ?? 0));
        if (passage.NextWidth is null)
            return [Straight(passage, along, across, up, square)];
        double[] sizes = [along, across, up];
        var flight = s_orders.Select(o => Straight(passage, sizes[o[0]], sizes[o[1]], sizes[o[2]], square)).MaxBy(w => w.Spare)!;
        return Turned(passage, along, across, up).Select(turn => turn.Spare < flight.Spare ? turn : flight with { Turning = turn.Turning });
    }

    /// <summary>Through the door of the lift, then inside: along the car, leaning in it or across its floor.</summary>
    private static IEnumerable<PassageFit> InLift(Passage passage, double along, double across, double up)
    {
        var (width, depth, height) = (passage.Width.Metres, (passage.NextWidth ?? passage.Width).Metres, passage.Height.Metres);
        var door = Math.Min((passage.DoorWidth ?? passage.Width).Metres - across, (passage.DoorHeight ?? passage.Height).Metres - up);
        yield return new(passage, new(up, along, across, 0, 0, 0), Math.Min(door, Inside(along, across, up, depth, width, height)), null);
        foreach (var (reach, side) in new[] { (depth, width), (width, depth) })
        {
            if (Tipping.Shortest(along, up, height) is { } angle and > 0 and < Math.PI / 2)
            {
                var spare = Math.Min(RectangleInRectangle.Longest(up, reach, height) - along, side - across);
                var hold = new Hold(Tipping.Height(along, up, angle), Tipping.Along(along, up, angle), across, double.RadiansToDegrees(angle), along, up);
                yield return new(passage, hold, Math.Min(door, spare), null);
            }
        }
    }

    private static double Inside(double along, double across, double up, double depth, double width, double height) =>
        Math.Min(height - up, Math.Max(
            Math.Min(depth - along, width - across),
            Math.Max(Math.Min(width - along, depth - across), RectangleInRectangle.Longest(across, depth, width) - along)));
}

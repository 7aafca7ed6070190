using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>
/// The angle between two walls, measured in the room: in degrees, or by the three sides of a triangle (the 3-4-5 of the trade):
/// two legs marked along the walls and the distance across between their ends.
/// </summary>
public sealed record CornerReading
{
    /// <summary>The angle in degrees, 45 to 315; more than 180 is an outer corner. Null when the triangle gives it.</summary>
    public double? Degrees { get; init; }

    /// <summary>Leg along this wall; positive.</summary>
    public Length? AlongWall { get; init; }

    /// <summary>Leg along the other wall; positive.</summary>
    public Length? AlongOther { get; init; }

    /// <summary>Across, from end to end of the legs; positive.</summary>
    public Length? Across { get; init; }

    /// <summary>
    /// The angle in degrees, by the law of cosines where a triangle was measured; null when nothing was measured or the three sides make no triangle.
    /// </summary>
    public double? Angle
    {
        get
        {
            if (Degrees is not null || AlongWall is not { } a || AlongOther is not { } b || Across is not { } c)
                return Degrees;
            if (c >= a + b || c <= (a - b).Abs())
                return null;
            var cosine = ((a.Metres * a.Metres) + (b.Metres * b.Metres) - (c.Metres * c.Metres)) / (2 * a.Metres * b.Metres);
            return double.RadiansToDegrees(Math.Acos(cosine));
        }
    }

    /// <summary>
    /// How far the other wall comes in over a distance out from this wall: distance ÷ tan(angle), negative where it falls away.
    /// To the nearest 0.01 mm, finer than any corner is measured. Null without a usable angle.
    /// </summary>
    public Length? ComesIn(Length distance)
    {
        if (Angle is not { } angle)
            return null;
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(angle));
        return Math.Abs(sin) < 0.1 ? null : Length.FromNanometres((long)Math.Round(distance.Nanometres * cos / sin / 10_000) * 10_000);
    }
}

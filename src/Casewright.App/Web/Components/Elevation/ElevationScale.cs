using System.Globalization;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>How a wall is fitted into the space on the screen: millimetres of the room to one pixel, and the margins for dimensions.</summary>
/// <param name="U">Millimetres of the room in one pixel; positive.</param>
/// <param name="Left">Margin in pixels.</param>
/// <param name="Right">Margin in pixels.</param>
/// <param name="Top">Margin in pixels.</param>
/// <param name="Bottom">Margin in pixels.</param>
public readonly record struct ElevationScale(double U, double Left, double Right, double Top, double Bottom)
{
    private const double LeastRoom = 120;

    /// <summary>Whether the screen is too narrow for words beside the wall.</summary>
    public bool Narrow => Right < 60;

    /// <summary>The scale that shows the whole wall.</summary>
    /// <param name="wallWidth">Width of the wall, mm.</param>
    /// <param name="wallHeight">Height of the ceiling, mm.</param>
    /// <param name="pixelsWide">Width of the drawing on the screen.</param>
    /// <param name="pixelsHigh">Height of the drawing on the screen.</param>
    public static ElevationScale Fit(double wallWidth, double wallHeight, double pixelsWide, double pixelsHigh)
    {
        var scale = pixelsWide < 560 ? new ElevationScale(1, 74, 22, 22, 84) : new ElevationScale(1, 96, 116, 24, 90);
        var forWidth = wallWidth / Math.Max(LeastRoom, pixelsWide - scale.Left - scale.Right);
        var forHeight = wallHeight / Math.Max(LeastRoom, pixelsHigh - scale.Top - scale.Bottom);
        return scale with { U = Math.Max(forWidth, forHeight) };
    }

    /// <summary>The view box of a drawing of the wall, floor at <paramref name="wallHeight"/>.</summary>
    public string ViewBox(double wallWidth, double wallHeight) =>
        string.Create(CultureInfo.InvariantCulture, $"{-Left * U:0.##} {-Top * U:0.##} {wallWidth + ((Left + Right) * U):0.##} {wallHeight + ((Top + Bottom) * U):0.##}");

    /// <summary>Where a place of the drawing is on the screen, in pixels from the left and upper edge of its frame.</summary>
    public (double X, double Y) OnScreen(double x, double y, double wallWidth, double wallHeight, double pixelsWide, double pixelsHigh)
    {
        var (wide, high) = ((wallWidth / U) + Left + Right, (wallHeight / U) + Top + Bottom);
        var shrink = Math.Min(1, Math.Min(pixelsWide / wide, pixelsHigh / high));
        return ((((x / U) + Left) * shrink) + ((pixelsWide - (wide * shrink)) / 2), (((y / U) + Top) * shrink) + ((pixelsHigh - (high * shrink)) / 2));
    }
}

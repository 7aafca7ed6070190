using Casewright.Model.Measure;

namespace Casewright.Engine.Surveying;

/// <summary>Where the front of one wall's run cuts the other wall of their corner.</summary>
internal static class CornerCut
{
    /// <summary>
    /// Where a front plane at <paramref name="depth"/> from one wall of a corner cuts the other wall, and a line at <paramref name="at"/>
    /// out from it, both from the corner: with an error e from square, depth/cos e and depth/cos e − at·tan e.
    /// </summary>
    /// <param name="depth">From one wall to its front plane.</param>
    /// <param name="at">From the other wall to its front line.</param>
    /// <param name="angle">Angle of the corner in degrees, more than 0 and less than 180.</param>
    public static (Length AtWall, Length AtFront) Of(Length depth, Length at, double angle)
    {
        var error = double.DegreesToRadians(angle - 90);
        var wall = Hundredth(depth.Nanometres / Math.Cos(error));
        return (wall, wall - Hundredth(at.Nanometres * Math.Tan(error)));
    }

    // To the nearest 0.01 mm, finer than any corner is measured, so that the last digit is the same on every machine.
    private static Length Hundredth(double nanometres) => Length.FromNanometres((long)Math.Round(nanometres / 10_000) * 10_000);
}

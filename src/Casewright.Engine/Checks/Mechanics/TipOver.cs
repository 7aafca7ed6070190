namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Tipping of a case about its front lower edge. Forces in one unit, lengths in one unit, whichever.</summary>
public static class TipOver
{
    /// <summary>Level pull at height <paramref name="pullHeight"/> that starts tipping: W d/2y.</summary>
    public static double PullThatTips(double weight, double depth, double pullHeight) => weight * depth / 2 / pullHeight;

    /// <summary>Force in an anchor at height <paramref name="anchorHeight"/> under a pull: (P y − W d/2)/h, not below 0.</summary>
    public static double AnchorForce(double pull, double pullHeight, double weight, double depth, double anchorHeight) =>
        Math.Max(0, ((pull * pullHeight) - (weight * depth / 2)) / anchorHeight);

    /// <summary>Level pull of a library ladder on its rail: mass × g × reach / height (moments about its foot).</summary>
    public static double LadderPull(double weight, double reach, double height) => weight * reach / height;
}

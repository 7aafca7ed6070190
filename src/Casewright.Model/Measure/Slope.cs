namespace Casewright.Model.Measure;

/// <summary>
/// A straight slope, as a builder states it: so much rise on so much level run. Lengths along and across it are worked out in whole
/// nanometres, to the nearest, so that they are the same on every machine.
/// </summary>
/// <param name="Rise">How far it rises over <paramref name="Run"/>; below zero where it falls.</param>
/// <param name="Run">The level distance; more than zero.</param>
public readonly record struct Slope(Length Rise, Length Run)
{
    /// <summary>Angle to the level in degrees, without sign; 0 to 90.</summary>
    public double Degrees => double.RadiansToDegrees(Math.Atan2(Math.Abs((double)Rise.Nanometres), Run.Nanometres));

    /// <summary>Whether it falls in the direction in which it is counted.</summary>
    public bool Falls => Rise < Length.Zero;

    /// <summary>Rise over a level distance: d·tan θ, with the sign of the slope.</summary>
    public Length Over(Length level) => Share(level, Rise.Nanometres, Run.Nanometres);

    /// <summary>
    /// Length along the slope over a level distance: d/cos θ. It is also what a panel that lies on the slope measures plumb through its
    /// thickness.
    /// </summary>
    public Length Along(Length level) => Share(level, Hypotenuse, Run.Nanometres);

    /// <summary>How far a plumb cut leans through a thickness that lies square to the slope: t·tan θ, without sign.</summary>
    public Length Lean(Length thickness) => Over(thickness).Abs();

    /// <summary>Level distance of a length along the slope: l·cos θ. It is also a plumb distance measured square to the slope.</summary>
    public Length Level(Length along) => Share(along, Run.Nanometres, Hypotenuse);

    /// <summary>Rise of a length along the slope: l·sin θ, with the sign of the slope.</summary>
    public Length Up(Length along) => Share(along, Rise.Nanometres, Hypotenuse);

    /// <summary>Level distance over which the slope rises or falls by a height: h/tan θ, without sign.</summary>
    /// <exception cref="DivideByZeroException">The slope is level.</exception>
    public Length LevelFor(Length height) => Share(height, Run.Nanometres, Math.Abs(Rise.Nanometres));

    private Int128 Hypotenuse
    {
        get
        {
            var square = ((Int128)Rise.Nanometres * Rise.Nanometres) + ((Int128)Run.Nanometres * Run.Nanometres);
            var root = (Int128)Math.Sqrt((double)square);
            while (root * root > square)
                root--;
            while ((root + 1) * (root + 1) <= square)
                root++;
            return root;
        }
    }

    private static Length Share(Length of, Int128 numerator, Int128 denominator)
    {
        var product = of.Nanometres * numerator;
        var half = product < 0 ? -denominator / 2 : denominator / 2;
        return Length.FromNanometres(checked((long)((product + half) / denominator)));
    }
}

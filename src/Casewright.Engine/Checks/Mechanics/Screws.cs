namespace Casewright.Engine.Checks.Mechanics;

/// <summary>
/// Fasteners in wood by the North American wood design specification. The published equations are in inches and pounds and are kept so:
/// lengths in in, forces in lbf, stresses in psi, specific gravity oven-dry.
/// </summary>
public static class Screws
{
    /// <summary>Newtons in a pound-force.</summary>
    public const double NewtonsPerPound = 4.4482216152605;

    /// <summary>Withdrawal of a wood screw from side grain, lbf per inch of thread: 2850 G² D.</summary>
    public static double WoodScrewWithdrawal(double gravity, double diameter) => 2850 * gravity * gravity * diameter;

    /// <summary>Withdrawal of a lag screw from side grain, lbf per inch of thread: 1800 G^1.5 D^0.75.</summary>
    public static double LagScrewWithdrawal(double gravity, double diameter) => 1800 * Math.Pow(gravity, 1.5) * Math.Pow(diameter, 0.75);

    /// <summary>Withdrawal of a smooth nail from side grain, lbf per inch: 1380 G^2.5 D.</summary>
    public static double NailWithdrawal(double gravity, double diameter) => 1380 * Math.Pow(gravity, 2.5) * diameter;

    /// <summary>Dowel bearing strength in psi for small fasteners: 16 600 G^1.84, rounded to 50 psi.</summary>
    public static double BearingStrength(double gravity) => Math.Round(16600 * Math.Pow(gravity, 1.84) / 50, MidpointRounding.ToEven) * 50;

    /// <summary>Bending yield strength in psi of common nails and screws by diameter (in).</summary>
    public static double YieldStrength(double diameter) => diameter switch
    {
        <= 0.142 => 100_000,
        <= 0.177 => 90_000,
        <= 0.236 => 80_000,
        _ => 70_000,
    };

    /// <summary>
    /// Withdrawal in lbf of a glued dowel from side grain: 0.834 D L^0.89 (0.95 S₁ + S₂), shear strengths of member and dowel in psi
    /// (Eckelman; from memory). It falls short of tests in weak species.
    /// </summary>
    public static double GluedDowelWithdrawal(double diameter, double depth, double memberShear, double dowelShear) =>
        0.834 * diameter * Math.Pow(depth, 0.89) * ((0.95 * memberShear) + dowelShear);
}

/// <summary>How a nailed or screwed joint in single shear gives way.</summary>
public enum YieldMode
{
    /// <summary>The main member is crushed.</summary>
    MainCrushed,

    /// <summary>The side member is crushed.</summary>
    SideCrushed,

    /// <summary>Both are crushed, the fastener turns.</summary>
    Turned,

    /// <summary>The fastener yields in the main member.</summary>
    YieldsInMain,

    /// <summary>The fastener yields in the side member.</summary>
    YieldsInSide,

    /// <summary>The fastener yields in both.</summary>
    YieldsInBoth,
}

/// <summary>Lateral strength of one nail or screw in single shear, by the six yield modes of the wood design specification 12.3.1.</summary>
/// <param name="Diameter">Of the shank or root, in.</param>
/// <param name="SideLength">Bearing length in the side member, in.</param>
/// <param name="MainLength">Bearing length in the main member, in.</param>
/// <param name="SideBearing">Dowel bearing strength of the side member, psi.</param>
/// <param name="MainBearing">Dowel bearing strength of the main member, psi.</param>
/// <param name="Yield">Bending yield strength of the fastener, psi.</param>
public readonly record struct SingleShear(double Diameter, double SideLength, double MainLength, double SideBearing, double MainBearing, double Yield)
{
    /// <summary>Reference lateral design value in lbf, and the mode that governs.</summary>
    public (double Force, YieldMode Mode) Weakest()
    {
        var reduction = Diameter <= 0.17 ? 2.2 : (10 * Diameter) + 0.5;
        var re = MainBearing / SideBearing;
        var rt = MainLength / SideLength;
        var k1 = (Math.Sqrt(re + (2 * re * re * (1 + rt + (rt * rt))) + (rt * rt * re * re * re)) - (re * (1 + rt))) / (1 + re);
        var k2 = -1 + Math.Sqrt((2 * (1 + re)) + (2 * Yield * (1 + (2 * re)) * Diameter * Diameter / (3 * MainBearing * MainLength * MainLength)));
        var k3 = -1 + Math.Sqrt((2 * (1 + re) / re) + (2 * Yield * (2 + re) * Diameter * Diameter / (3 * MainBearing * SideLength * SideLength)));
        ReadOnlySpan<(double Force, YieldMode Mode)> modes =
        [
            (Diameter * MainLength * MainBearing / reduction, YieldMode.MainCrushed),
            (Diameter * SideLength * SideBearing / reduction, YieldMode.SideCrushed),
            (k1 * Diameter * SideLength * SideBearing / reduction, YieldMode.Turned),
            (k2 * Diameter * MainLength * MainBearing / ((1 + (2 * re)) * reduction), YieldMode.YieldsInMain),
            (k3 * Diameter * SideLength * MainBearing / ((2 + re) * reduction), YieldMode.YieldsInSide),
            (Diameter * Diameter / reduction * Math.Sqrt(2 * MainBearing * Yield / (3 * (1 + re))), YieldMode.YieldsInBoth),
        ];
        var weakest = modes[0];
        foreach (var mode in modes)
            weakest = mode.Force < weakest.Force ? mode : weakest;
        return weakest;
    }
}

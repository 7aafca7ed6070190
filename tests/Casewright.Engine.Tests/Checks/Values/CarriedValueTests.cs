namespace Casewright.Engine.Tests.Checks.Values;

/// <summary>
/// Published figures that makers act on, carried here with their sources so that they are checked everywhere. Tolerances are half of
/// the last digit printed, or as stated.
/// </summary>
public class CarriedValueTests
{
    public static TheoryData<string, double, double, string> Figures => new()
    {
        // Longest adjustable shelf, L/144, table of whole inches rounded down.
        { "D-AWS-0.95-0.75-40", 40, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-AWS-0.95-0.75-50", 37, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-AWS-0.95-1-40", 53, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-AWS-0.95-1-50", 49, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-AWS-1.8-0.75-40", 49, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-AWS-1.82-1-40", 66, 1, "Architectural Woodwork Standards 2009, p. 279" },
        { "D-EX2", 3.588, 0.002, "European MDF association, shelf equation for 20 kg on 800 × 300 × 18 mm" },
        { "D-EX3-SS", 4.963, 0.003, "5wL⁴/384EI by hand: 5·0.72·900⁴/(384·8500·145800)" },
        { "D-EX4-FIX", 0.9926, 0.0005, "wL⁴/384EI, a fifth of the simple span" },
        { "D-2SPAN-COEF", 0.0054161, 1e-6, "propped cantilever, any structures handbook, from memory" },
        { "D-3SPAN-END", 0.0068842, 1e-6, "three equal spans, any structures handbook, from memory" },
        { "D-CREEP-EC5", 8.933, 0.005, "EN 1995-1-1 2.2.3 with k_def 0.8: 4.963·1.8" },
        { "F-LAG-0.25-0.5", 225, 0.6, "NDS table 12.2A" },
        { "F-LAG-0.375-0.42", 235, 0.6, "NDS table 12.2A" },
        { "F-LAG-0.5-0.36", 231, 0.6, "NDS table 12.2A" },
        { "F-WS-SPRUCE", 109, 1, "handbook page on 2850 G² D" },
        { "F-WS-10-0.5", 135, 0.6, "NDS table 12.2B, from memory" },
        { "F-YL-8d", 97, 0.6, "NDS table 12N, from memory" },
        { "F-YL-16d", 141, 0.6, "NDS table 12N, from memory" },
        { "M-BIRCH-18-EPAR", 10048, 10, "trade handbook of birch plywood, from memory" },
        { "M-BIRCH-18-FMPERP", 34.1, 0.2, "trade handbook of birch plywood, from memory" },
        { "E-RWL1", 23, 0.001, "NIOSH 94-110: the load constant" },
        { "E-VM175", 0.70, 0.005, "NIOSH 94-110 multiplier table" },
        { "E-DM100", 0.87, 0.006, "NIOSH 94-110 multiplier table" },
        { "E-TEAM2", 26.6, 0.1, "British safety authority, team lifting" },
        { "W-EMC-70-50", 9.2, 0.15, "Wood Handbook table 4-2" },
        { "W-EMC-140-30", 5.0, 0.15, "Wood Handbook table 4-2" },
        { "W-C-beech-T", 0.00431, 1e-5, "Wood Handbook table 13-5" },
        { "J-SCARF-ETA-8", 0.8125, 1e-4, "Wood Handbook chapter 10: tension ten times shear" },
        { "J-DEMAND50", 72.9, 0.05, "wL²/8 by hand: 0.72·900²/8" },
        { "J-CARRY", 30.43, 0.02, "wL²/8 by hand: 680·9.80665·0.3·0.018·2.6²/8" },
        { "G-TILT", 95.35198, 1e-4, "√(94² + 16²)" },
        { "G-CORNER-EQ", 77.82338, 1e-4, "2√2·36 − 2·12" },
        { "G-LADDER", 110.1997, 1e-3, "(36^⅔ + 42^⅔)^1.5" },
        { "L-TIP", 24, 1e-9, "moments by hand: (50·60 − 180·6)/80" },
    };

    [Theory]
    [MemberData(nameof(Figures))]
    public void A_published_figure_comes_out_of_our_formulas(string id, double expected, double tolerance, string source)
    {
        var ours = OurValues.All.Single(v => v.Id == id).Ours();
        Assert.True(Math.Abs(ours - expected) <= tolerance, FormattableString.Invariant($"{source}: {ours} against {expected}"));
    }
}

using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// A lower bound from any values of the pieces, in whole numbers so that no rounding can spoil it: every copy costs at
/// least its cheapest option at these values, and no sheet holds more value than its price says. Farley's scaling makes
/// values that promise too much honest; sheets of limited number may promise more, at their number times the excess.
/// </summary>
internal static class LagrangeBound
{
    /// <summary>The bound in scaled cost.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="costs">Scaled cost of every kind of sheet, 0 or more.</param>
    /// <param name="extraScale">Scaled cost per step of the options; 0 when they cost nothing.</param>
    /// <param name="values">Scaled value of every kind of piece.</param>
    /// <param name="sheetValues">Upper bound on the value of any layout, by kind of sheet.</param>
    public static Int128 Of(ReducedProblem problem, long[] costs, long extraScale, long[] values, long[] sheetValues)
    {
        var (numerator, denominator) = Scaling(problem, costs, sheetValues);
        var scaled = values.Select(v => v * numerator / denominator).ToArray();
        Int128 total = 0;
        foreach (var demand in problem.Demands.Where(d => d.Group < 0))
            total += Least(demand, scaled, -1, extraScale);
        for (var g = 0; g < problem.SightLines.Length; g++)
            total += LeastOfGroup(problem, g, scaled, extraScale);
        for (var s = 0; s < costs.Length; s++)
        {
            if (problem.Sheets[s].Available == int.MaxValue)
                continue;
            var most = ((sheetValues[s] * numerator) + denominator - 1) / denominator;
            var excess = most - costs[s];
            if (excess > 0)
                total -= excess * problem.Sheets[s].Available;
        }

        return total;
    }

    /// <summary>The values as the bound takes them: no sheet without limit holds more than its cost.</summary>
    public static long[] Honest(ReducedProblem problem, long[] costs, long[] values, long[] sheetValues)
    {
        var (numerator, denominator) = Scaling(problem, costs, sheetValues);
        return [.. values.Select(v => (long)(v * numerator / denominator))];
    }

    // Values are multiplied by numerator / denominator and rounded down, which keeps every sheet's value within bounds.
    private static (Int128 Numerator, Int128 Denominator) Scaling(ReducedProblem problem, long[] costs, long[] sheetValues)
    {
        Int128 numerator = 1, denominator = 1;
        for (var s = 0; s < costs.Length; s++)
        {
            Int128 cost = costs[s];
            if (problem.Sheets[s].Available == int.MaxValue && sheetValues[s] * numerator > cost * denominator)
                (numerator, denominator) = (cost, sheetValues[s]);
        }

        return (numerator, denominator);
    }

    private static Int128 LeastOfGroup(ReducedProblem problem, int group, Int128[] values, long scale)
    {
        Int128? least = null;
        for (var line = 0; line < problem.SightLines[group]; line++)
        {
            Int128 sum = 0;
            foreach (var demand in problem.Demands.Where(d => d.Group == group))
                sum += Least(demand, values, line, scale);
            if (least is null || sum < least)
                least = sum;
        }

        return least ?? 0;
    }

    private static Int128 Least(ReducedDemand demand, Int128[] values, int line, long scale)
    {
        Int128? least = null;
        foreach (var option in demand.Options)
        {
            if (line >= 0 && option.SightLine >= 0 && option.SightLine != line)
                continue;
            Int128 cost = (Int128)option.ExtraCost * scale;
            foreach (var kind in option.Kinds)
                cost += values[kind];
            if (least is null || cost < least)
                least = cost;
        }

        return (least ?? 0) * demand.Count;
    }
}

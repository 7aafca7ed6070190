using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Bound;

/// <summary>
/// Fewest sheets of one size by products of dual feasible functions: no sheet, however cut, holds pieces whose values add
/// up to more than 1, and every copy takes at least the value of its cheapest option. Holds for free packing, so for every
/// number of stages.
/// </summary>
internal static class DualFeasibleBound
{
    // Values carry rounding of about 1e-13 each; a bound is rounded up only when it exceeds a whole number by more.
    private const double Slack = 1e-9;

    /// <summary>The bound; 0 when sheets differ in size.</summary>
    public static int Sheets(ReducedProblem problem, WorkBudget budget)
    {
        var sheet = problem.Sheets[0];
        if (Array.Exists(problem.Sheets, s => s.SizeX != sheet.SizeX || s.SizeY != sheet.SizeY))
            return problem.Demands.Length > 0 ? 1 : 0;
        var sizesX = problem.Kinds.Select(k => k.SizeX).ToArray();
        var sizesY = problem.Kinds.Select(k => k.SizeY).ToArray();
        var turns = Array.Exists(problem.Kinds, k => k.MayTurn);
        var n = problem.Kinds.Length;
        long[] allX = turns ? [.. sizesX, .. sizesY] : sizesX, allY = turns ? [.. sizesY, .. sizesX] : sizesY;
        var onX = DualFeasibleFunctions.Of([.. allX.Select(s => Math.Min(s, sheet.SizeX))], sheet.SizeX);
        var onY = DualFeasibleFunctions.Of([.. allY.Select(s => Math.Min(s, sheet.SizeY))], sheet.SizeY);
        var demand = problem.OptionsFixed ? problem.PiecesOf([.. problem.Demands.Select(d => new[] { d.Count })]) : null;
        var values = new double[n];
        var best = 0.0;
        foreach (var f in onX)
        {
            foreach (var g in onY)
            {
                for (var k = 0; k < n; k++)
                {
                    var kind = problem.Kinds[k];
                    var flat = kind.SizeX <= sheet.SizeX && kind.SizeY <= sheet.SizeY ? f.Values[k] * g.Values[k] : double.MaxValue;
                    values[k] = kind.MayTurn && kind.SizeY <= sheet.SizeX && kind.SizeX <= sheet.SizeY ? Math.Min(flat, f.Values[n + k] * g.Values[n + k]) : flat;
                }

                best = Math.Max(best, demand is null ? Total(problem, values) : Total(demand, values));
            }

            budget.Spend(onY.Count * n / 200);
        }

        return (int)Math.Ceiling(best - Slack);
    }

    private static double Total(int[] demand, double[] values)
    {
        var sum = 0.0;
        for (var k = 0; k < demand.Length; k++)
        {
            if (demand[k] > 0)
                sum += demand[k] * values[k];
        }

        return sum;
    }

    private static double Total(ReducedProblem problem, double[] values) =>
        problem.Demands.Sum(d => d.Count * d.Options.Min(o => o.Kinds.Sum(k => values[k])));
}

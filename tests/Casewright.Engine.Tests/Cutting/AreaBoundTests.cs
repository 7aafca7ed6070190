using Casewright.Engine.Cutting;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>The bound from area, which stands before any search, with sheets of several sizes.</summary>
public sealed class AreaBoundTests
{
    /// <summary>
    /// Nine squares of 5 are 225. A sheet 20 × 10 at 18 is the cheaper for its area, 0.09: no plan costs less than 20.25. The best is one of
    /// each size, 8 + 4 squares, for 28.
    /// </summary>
    [Fact]
    public void The_cheapest_area_bounds_the_cost()
    {
        var solution = Solve([new("short", 10, 10, 10), new("long", 20, 10, 18)], new("squares", 9, [new("whole", [new(5, 5, MayTurn: false)])]));
        Assert.InRange(solution.LowerBound, 20.25m, 28m);
        Assert.InRange(solution.Cost, 28m, decimal.MaxValue);
    }

    /// <summary>
    /// Four bars 15 × 10 fit the long sheet only, 20 × 10 at 50 (0.25), or are joined of 8 × 10 and 7 × 10 out of short sheets, 10 × 10 at 10
    /// (0.10), for 20 each. Whole: at least 150 · 0.25 = 37.5; joined: at least 150 · 0.10 + 20 = 35. Four joined ones cost 4 · 35 = 140 or more.
    /// </summary>
    [Fact]
    public void A_piece_that_only_dear_sheets_take_is_worth_their_area()
    {
        CuttingOption[] options = [new("whole", [new(15, 10, MayTurn: false)]), new("joined", [new(8, 10, MayTurn: false), new(7, 10, MayTurn: false)], 20)];
        var solution = Solve([new("short", 10, 10, 10), new("long", 20, 10, 50)], new("bars", 4, [.. options]));
        Assert.InRange(solution.LowerBound, 140m, solution.Cost);
    }

    private static CuttingSolution Solve(SheetType[] sheets, CuttingDemand demand)
    {
        var problem = new CuttingProblem([.. sheets], [demand], new CuttingRules(Stages: 3), WorkLimit: 1);
        var outcome = SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken);
        Assert.NotNull(outcome.Solution);
        return outcome.Solution;
    }
}

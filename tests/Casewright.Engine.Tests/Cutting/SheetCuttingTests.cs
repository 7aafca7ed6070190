using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;
using Casewright.Model.Collections;
using CsCheck;
using static Casewright.Engine.Tests.Cutting.CuttingProblems;

namespace Casewright.Engine.Tests.Cutting;

public class SheetCuttingTests
{
    [Fact]
    public void Tiny_problems_agree_with_enumeration() => Tiny.Sample(AgreesWithEnumeration, iter: 40, seed: "0000000000100", threads: 1);

    [Fact]
    public void Tiny_problems_with_splices_agree_with_enumeration() =>
        TinySpliced.Sample(AgreesWithEnumeration, iter: 30, seed: "0000000000200", threads: 1);

    private static void AgreesWithEnumeration(CuttingProblem problem)
    {
        var least = CuttingOracle.LeastCost(problem);
        var outcome = Outcome(problem);
        if (least is null)
        {
            Assert.Null(outcome.Solution);
            Assert.NotEmpty(outcome.Obstacles);
            return;
        }

        Assert.NotNull(outcome.Solution);
        Assert.Equal(least, outcome.Solution.Cost);
        Assert.True(outcome.Solution.LowerBound <= least, $"bound {outcome.Solution.LowerBound} above the least cost {least}");
        Assert.Empty(CuttingVerifier.FaultsOf(problem, outcome.Solution));
    }

    [Fact]
    public void Kerf_and_trim_are_taken_from_the_sheet()
    {
        // By hand: 2440 - 2 * 10 = 2420 usable; three pieces of 804 and two kerfs of 4 make exactly 2420, and 805 do not.
        var rules = new CuttingRules(4, 10);
        Assert.Equal(1, Solve(Of(rules, [new("sheet", 2440, 1220, 1)], (804, 300, 3, false))).SheetsUsed);
        Assert.Equal(1, Solve(Of(rules, [new("sheet", 2440, 320, 1)], (804, 300, 3, false))).SheetsUsed);
        Assert.Equal(2, Solve(Of(rules, [new("sheet", 2440, 320, 1)], (805, 300, 3, false))).SheetsUsed);
    }

    [Fact]
    public void A_sheet_filled_to_the_edge_needs_no_last_kerf()
    {
        // By hand: four quarters of a sheet and one kerf each way.
        var solution = Solve(Of(new CuttingRules(3), [new("sheet", 203, 103, 5)], (100, 50, 4, false)));
        Assert.Equal(1, solution.SheetsUsed);
        Assert.Equal(5, solution.Cost);
        Assert.True(solution.Proven);
        Assert.Empty(solution.Sheets[0].Offcuts);
    }

    [Fact]
    public void Sheets_on_hand_go_before_bought_ones()
    {
        var solution = Solve(Of(new CuttingRules(), [new("new", 100, 50, 40), new("offcut", 60, 50, 0, 1)], (60, 50, 1, false), (90, 50, 1, false)));
        Assert.Equal(40, solution.Cost);
        Assert.Equal(2, solution.SheetsUsed);
        Assert.True(solution.Proven);
    }

    [Fact]
    public void Two_sizes_at_a_price_trade_off()
    {
        // By hand: long sheets hold two parts for 15, short ones one part for 10; three parts cost 25.
        var solution = Solve(Of(new CuttingRules(), [new("short", 100, 50, 10), new("long", 200, 50, 15)], (100, 50, 3, false)));
        Assert.Equal(25, solution.Cost);
        Assert.True(solution.Proven);
        Assert.Equal(2, solution.SheetsLowerBound);
    }

    [Theory]
    [InlineData(null, 1)]
    [InlineData(60L, 2)]
    public void The_longest_rip_keeps_long_narrow_pieces_apart(long? longestRip, int sheets)
    {
        // By hand: two pieces of 100 by 25 from a sheet of 100 by 50 want one rip of 100. A saw that rips 60 cannot part them,
        // nor trim either: the part is cut whole only from a strip already 25 wide.
        SheetType[] stock = [new("sheet", 100, 50, 3), new("strip", 100, 25, 2)];
        var solution = Solve(Of(new CuttingRules(LongestRip: longestRip), stock, (100, 25, 2, false)));
        Assert.Equal(sheets, solution.SheetsUsed);
    }

    [Fact]
    public void Bars_of_six_metres_joined()
    {
        // A published puzzle, checked by hand in the reference: 24 parts of 4 m and 24 of 4.75 m, at most one joint each, from bars of 6 m:
        // 35 bars with joints and no waste, 48 without. Lengths in quarter metres.
        CuttingDemand[] joined = [Joined("4", 16, 24), Joined("4.75", 19, 24)];
        var solution = Solve(new CuttingProblem([new SheetType("bar", 24, 1, 1)], joined.ToValueList(), new CuttingRules(Stages: 2), 3_000_000));
        Assert.Equal(35, solution.SheetsUsed);
        Assert.True(solution.Proven);
        var whole = Solve(Of(new CuttingRules(Stages: 2), [new("bar", 24, 1, 1)], (16, 1, 24, false), (19, 1, 24, false)));
        Assert.Equal(48, whole.SheetsUsed);
        Assert.True(whole.Proven);
    }

    private static CuttingDemand Joined(string id, long length, int count)
    {
        var options = new List<CuttingOption> { Whole(length, 1) };
        for (var first = (length + 1) / 2; first < length; first++)
            options.Add(Spliced(first, length - first, 1));
        return new CuttingDemand(id, count, options.ToValueList());
    }

    [Fact]
    public void A_shared_sight_line_is_kept()
    {
        // By hand: apart, each part would be joined where it fills sheets; together only the line at 60 serves both.
        CuttingDemand a = new("a", 2, [Spliced(60, 40, 20, line: 60), Spliced(50, 50, 20, line: 50)], "wall");
        CuttingDemand b = new("b", 2, [Spliced(60, 30, 20, line: 60), Spliced(45, 45, 20, line: 45)], "wall");
        var problem = new CuttingProblem([new SheetType("sheet", 100, 20, 7)], [a, b], new CuttingRules(), 300_000);
        var solution = Solve(problem);
        Assert.All(solution.Choices, c => Assert.Equal(60, problem.Demands[c.Demand].Options[c.Option].SightLine));
        Assert.Equal(28, solution.Cost);
        Assert.True(solution.Proven);
    }

    [Fact]
    public void What_fits_no_sheet_is_named_with_its_sizes()
    {
        var outcome = Outcome(Of(new CuttingRules(3, 5), [new("ply", 2440, 1220, 1)], (2435, 300, 1, false)));
        var obstacle = Assert.Single(outcome.Obstacles);
        Assert.Equal(ObstacleKind.FitsNoSheet, obstacle.Kind);
        Assert.Equal("part 0", obstacle.Subject);
        Assert.Contains("2435 by 300", obstacle.Reason, StringComparison.Ordinal);
        Assert.Contains("ply (2440 by 1220)", obstacle.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_narrow_pieces_are_refused()
    {
        var outcome = Outcome(Of(new CuttingRules(MinimumStrip: 20), [new("ply", 2440, 1220, 1)], (500, 15, 1, false)));
        Assert.Equal(ObstacleKind.TooNarrow, Assert.Single(outcome.Obstacles).Kind);
    }

    [Fact]
    public void Demands_without_a_common_sight_line_are_refused()
    {
        CuttingDemand a = new("a", 1, [Spliced(6, 4, 2, line: 6)], "wall");
        CuttingDemand b = new("b", 1, [Spliced(5, 5, 2, line: 5)], "wall");
        var outcome = Outcome(new CuttingProblem([new SheetType("sheet", 10, 10, 7)], [a, b], new CuttingRules(), 10_000));
        Assert.Equal(ObstacleKind.NoCommonSightLine, Assert.Single(outcome.Obstacles).Kind);
    }

    [Fact]
    public void Stock_that_runs_out_is_named()
    {
        var outcome = Outcome(Of(new CuttingRules(), [new("ply", 100, 50, 1, 2)], (100, 50, 3, false)));
        Assert.Null(outcome.Solution);
        Assert.Equal(ObstacleKind.StockRunsOut, Assert.Single(outcome.Obstacles).Kind);
    }

    [Fact]
    public void Nothing_to_cut_needs_no_sheet()
    {
        var solution = Solve(Of(new CuttingRules(), [new("ply", 100, 50, 1)], (100, 50, 0, false)));
        Assert.Equal(0, solution.SheetsUsed);
        Assert.True(solution.Proven);
    }

    [Fact]
    public void The_same_problem_gives_the_same_answer()
    {
        var problem = Mixed();
        Assert.Equal(Solve(problem), Solve(problem));
    }

    [Fact]
    public void A_cancelled_search_stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => SheetCutting.Solve(Mixed() with { WorkLimit = 1_000_000_000 }, null, source.Token));
    }

    [Fact]
    public void Progress_never_gets_worse()
    {
        var log = new ProgressLog();
        var solution = SheetCutting.Solve(Mixed(), log, TestContext.Current.CancellationToken).Solution!;
        Assert.NotEmpty(log.Reports);
        Assert.Equal(solution.Cost, log.Reports[^1].Incumbent);
        Assert.Equal(solution.LowerBound, log.Reports[^1].LowerBound);
        foreach (var (before, after) in log.Reports.Zip(log.Reports.Skip(1)))
        {
            Assert.True(after.LowerBound >= before.LowerBound);
            Assert.True(before.Incumbent is null || after.Incumbent <= before.Incumbent);
        }
    }

    [Fact]
    public void Faults_of_the_caller_name_the_member()
    {
        var wrong = Mixed() with { Rules = new CuttingRules(-1) };
        Assert.Contains("Rules.Kerf", Assert.Throws<ArgumentException>(() => Outcome(wrong)).Message, StringComparison.Ordinal);
    }

    private static CuttingProblem Mixed() => Of(
        new CuttingRules(4, 10), [new("ply", 2440, 1220, 60), new("long", 3050, 1220, 85), new("offcut", 1100, 700, 0, 1)],
        (2000, 300, 5, false), (764, 284, 17, false), (764, 90, 6, true), (1850, 560, 3, false), (540, 380, 9, true), (1210, 96, 4, true));

    private static CuttingOutcome Outcome(CuttingProblem problem) => SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken);

    private static CuttingSolution Solve(CuttingProblem problem)
    {
        var solution = Outcome(problem).Solution;
        Assert.NotNull(solution);
        Assert.Empty(CuttingVerifier.FaultsOf(problem, solution));
        return solution;
    }

    private sealed class ProgressLog : ICuttingProgress
    {
        public List<CuttingProgress> Reports { get; } = [];

        public void Report(CuttingProgress progress) => Reports.Add(progress);
    }
}

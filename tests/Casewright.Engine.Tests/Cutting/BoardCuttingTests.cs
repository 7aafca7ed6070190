using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Model.Collections;
using CsCheck;
using Google.OrTools.Sat;

namespace Casewright.Engine.Tests.Cutting;

public class BoardCuttingTests
{
    [Fact]
    public void Bars_of_six_metres_joined()
    {
        // A published puzzle, checked by hand in the reference: 35 bars with at most one joint a part, 48 without.
        var solution = Solve(new BoardProblem([Bar(24, 1)], [Joined("4", 16, 24), Joined("4.75", 19, 24)]));
        Assert.Equal(35, solution.BoardsUsed);
        Assert.True(solution.Proven);
        var whole = Solve(new BoardProblem([Bar(24, 1)], [Part("4", 16, 24), Part("4.75", 19, 24)]));
        Assert.Equal(48, whole.BoardsUsed);
        Assert.True(whole.Proven);
    }

    [Fact]
    public void Kerf_end_trim_and_defects_are_cut_out()
    {
        // By hand: 2400 less 10 at each end is 10 to 2390; a knot at 1000 to 1040 leaves 990 and 1350; with a kerf of 4,
        // 990 holds one part of 600 and 1350 holds two (1204), so two boards serve six parts and no fewer can.
        var board = new BoardType("oak", 2400, 12, null, [new BoardDefect(1000, 1040)]);
        var solution = Solve(new BoardProblem([board], [Part("rail", 600, 6)], Kerf: 4, EndTrim: 10));
        Assert.Equal(2, solution.BoardsUsed);
        Assert.True(solution.Proven);
        Assert.All(solution.Boards.SelectMany(b => b.Pieces), p => Assert.True(p.X >= 10 && p.X + p.Length <= 2390 && (p.X + p.Length <= 1000 || p.X >= 1040)));
    }

    [Fact]
    public void A_defect_narrower_than_the_kerf_still_costs_a_kerf()
    {
        // By hand: the cut before a knot of 1 takes 4, so the second stretch starts at 504 and ends at 1000: 496.
        var board = new BoardType("oak", 1000, 1, null, [new BoardDefect(500, 501)]);
        Assert.Equal(1, Solve(new BoardProblem([board], [Part("a", 500, 1), Part("b", 496, 1)], Kerf: 4)).BoardsUsed);
        Assert.Equal(2, Solve(new BoardProblem([board], [Part("a", 500, 1), Part("b", 497, 1)], Kerf: 4)).BoardsUsed);
    }

    [Fact]
    public void Parts_longer_than_every_clear_stretch_are_refused()
    {
        var board = new BoardType("oak", 1000, 1, null, [new BoardDefect(500, 510)]);
        var outcome = BoardCutting.Solve(new BoardProblem([board], [Part("stile", 600, 1)]), null, TestContext.Current.CancellationToken);
        Assert.Equal("stile", Assert.Single(outcome.Obstacles).Subject);
    }

    [Fact]
    public void Random_bars_agree_with_an_integer_program() =>
        Gen.Select(Gen.Long[40, 60], Gen.Int[3, 9], Gen.Int[2, 6], Gen.Select(Gen.Long[5, 38], Gen.Int[1, 4]).Array[1, 5], Gen.Long[0, 2])
            .Sample(
                (second, price, onHand, parts, kerf) =>
                {
                    BoardType[] boards = [Bar(40, 6), new("second", second, price, onHand, [])];
                    var demands = parts.Select((p, i) => Part(i.ToString(CultureInfo.InvariantCulture), p.Item1, p.Item2)).ToValueList();
                    var solution = Solve(new BoardProblem(boards.ToValueList(), demands, kerf, WorkLimit: 200_000));
                    Assert.Equal(LeastCost(boards, parts, kerf), solution.Cost);
                    Assert.True(solution.LowerBound <= solution.Cost);
                },
                iter: 20, seed: "0000000000300", threads: 1);

    [Theory]
    [InlineData("u120_00")]
    [InlineData("t60_03")]
    [InlineData("u250_07")]
    [InlineData("N1W1B1R0")]
    [InlineData("HARD0")]
    public void Published_optima_are_proven(string instance)
    {
        var folder = ReferenceFolder.Find("cutting1d");
        Assert.SkipWhen(folder is null, "The reference folder is absent.");
        var row = File.ReadLines(Path.Combine(folder, "instances.csv")).Select(l => l.Split(',')).First(c => string.Equals(c[1], instance, StringComparison.Ordinal));
        var demands = File.ReadLines(Path.Combine(folder, "items.csv")).Select(l => l.Split(',')).Where(c => string.Equals(c[0], instance, StringComparison.Ordinal))
            .Select(c => Part(c[1], long.Parse(c[1], CultureInfo.InvariantCulture), int.Parse(c[2], CultureInfo.InvariantCulture))).ToValueList();
        var solution = Solve(new BoardProblem([Bar(long.Parse(row[2], CultureInfo.InvariantCulture), 1)], demands, WorkLimit: 20_000_000));
        // Optima of BPPLIB (Delorme, Iori and Martello 2018), as listed in the reference.
        Assert.Equal(int.Parse(row[4], CultureInfo.InvariantCulture), solution.BoardsUsed);
        Assert.True(solution.Proven);
    }

    // Assignment of parts to single boards, written apart from the engine.
    private static decimal LeastCost(BoardType[] boards, (long Length, int Count)[] parts, long kerf)
    {
        var model = new CpModel();
        var most = parts.Sum(p => p.Count);
        var covered = parts.Select(_ => new List<IntVar>()).ToArray();
        var cost = new List<LinearExpr>();
        foreach (var board in boards)
        {
            BoolVar? before = null;
            for (var n = 0; n < Math.Min(most, board.Available ?? most); n++)
            {
                var used = model.NewBoolVar("");
                var counts = parts.Select(p => model.NewIntVar(0, p.Count, "")).ToArray();
                model.Add(LinearExpr.WeightedSum(counts, parts.Select(p => p.Length + kerf)) <= (board.Length + kerf) * (LinearExpr)used);
                for (var p = 0; p < parts.Length; p++)
                    covered[p].Add(counts[p]);
                if (before is not null)
                    model.AddImplication(used, before);
                before = used;
                cost.Add((long)board.Cost * (LinearExpr)used);
            }
        }

        for (var p = 0; p < parts.Length; p++)
            model.Add(LinearExpr.Sum(covered[p]) == parts[p].Count);
        model.Minimize(LinearExpr.Sum(cost));
        var solver = new CpSolver { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (decimal)solver.ObjectiveValue;
    }

    private static BoardType Bar(long length, decimal cost) => new("bar", length, cost, null, []);

    private static CuttingDemand Part(string id, long length, int count) => new(id, count, [CuttingProblems.Whole(length, 1)]);

    private static CuttingDemand Joined(string id, long length, int count)
    {
        var options = new List<CuttingOption> { CuttingProblems.Whole(length, 1) };
        for (var first = (length + 1) / 2; first < length; first++)
            options.Add(CuttingProblems.Spliced(first, length - first, 1));
        return new CuttingDemand(id, count, options.ToValueList());
    }

    private static BoardSolution Solve(BoardProblem problem)
    {
        var solution = BoardCutting.Solve(problem, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        CheckPlaces(problem, solution);
        return solution;
    }

    // By positions alone: every piece of every chosen option once, a kerf between neighbours, inside the trimmed board.
    private static void CheckPlaces(BoardProblem problem, BoardSolution solution)
    {
        var wanted = solution.Choices.SelectMany(c => problem.Demands[c.Demand].Options[c.Option].Pieces.Select((_, p) => (c.Demand, c.Copy, c.Option, p))).ToHashSet();
        Assert.Equal(problem.Demands.Sum(d => d.Count), solution.Choices.Count);
        foreach (var board in solution.Boards)
        {
            var at = problem.EndTrim;
            foreach (var piece in board.Pieces.OrderBy(p => p.X))
            {
                Assert.True(wanted.Remove((piece.Demand, piece.Copy, piece.Option, piece.Piece)));
                Assert.Equal(problem.Demands[piece.Demand].Options[piece.Option].Pieces[piece.Piece].Length, piece.Length);
                Assert.True(piece.X >= at);
                at = piece.X + piece.Length + problem.Kerf;
            }

            Assert.True(at - problem.Kerf <= problem.Boards[board.BoardType].Length - problem.EndTrim);
        }

        Assert.Empty(wanted);
    }
}

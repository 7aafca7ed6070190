using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>Small instances whose optimum is known from outside the engine.</summary>
public class SmallInstancesTests
{
    /// <summary>Random instances of seven pieces that mostly need two or three sheets, solved by a general solver as an integer program.</summary>
    [Theory]
    [InlineData(2, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    [InlineData(3, true)]
    public void The_cost_is_that_of_an_integer_program(int stages, bool mayTurn)
    {
        for (var seed = 0; seed < 8; seed++)
        {
            var problem = Instance(new(seed), stages, mayTurn);
            var solution = Solve(problem);
            var least = GuillotineProgram.LeastCost(problem);
            Assert.True(least == solution.Cost, string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {solution.Cost} by the engine, {least} by the program"));
            Assert.True(solution.LowerBound <= least);
        }
    }

    /// <summary>
    /// Of all layouts of least cost, the one with the fewest fence settings: every way to part six pieces of a small job (two depths,
    /// three lengths) into strips and sheets is listed, and its settings counted as a person at the saw would. Layouts of least cost are
    /// chosen among those that the search came upon, so the fewest is not promised; here it is reached in at least five jobs of six, and
    /// never missed by more than one.
    /// </summary>
    [Fact]
    public void The_fence_settings_are_mostly_the_fewest_of_all_layouts_of_that_cost()
    {
        const int jobs = 30;
        var reached = 0;
        for (var seed = 0; seed < jobs; seed++)
        {
            var sizes = Shelves(new(seed));
            var problem = CuttingProblems.Of(
                new CuttingRules(0, 0, 2, FirstCut.Along), [new("sheet", 16, 10, 10)], [.. sizes.GroupBy(s => s).Select(s => (s.Key.Length, s.Key.Width, s.Count(), false))]);
            var solution = Solve(problem);
            var settings = solution.Sheets.SelectMany(s => s.Cuts).Where(c => c.Stage > 0).Select(c => (c.Kind, c.Setting)).Distinct().Count();
            var (sheets, fewest) = SettingsOracle.Fewest(16, 10, sizes);
            Assert.Equal(sheets * 10, solution.Cost);
            Assert.True(
                settings - fewest is 0 or 1,
                string.Create(CultureInfo.InvariantCulture, $"seed {seed}: {settings} settings by the engine, {fewest} at the least; {string.Join(' ', sizes)}"));
            reached += settings == fewest ? 1 : 0;
        }

        Assert.True(reached >= jobs * 5 / 6, string.Create(CultureInfo.InvariantCulture, $"the fewest in {reached} of {jobs}"));
    }

    private static (long Length, long Width)[] Shelves(Random random)
    {
        var (deep, shallow) = ((long)random.Next(4, 6), (long)random.Next(2, 4));
        var (side, shelf, rail) = ((long)random.Next(9, 15), (long)random.Next(5, 9), (long)random.Next(3, 6));
        return [(side, deep), (side, deep), (shelf, deep), (shelf, shallow), (shelf, shallow), (rail, shallow)];
    }

    private static CuttingProblem Instance(Random random, int stages, bool mayTurn)
    {
        SheetType[] sheets = [new("new", 20, 12, 10), new("offcut", random.Next(10, 18), random.Next(6, 12), 4, 1)];
        return CuttingProblems.Of(
            new CuttingRules(random.Next(0, 2), 0, stages, FirstCut.Along), sheets,
            [.. Enumerable.Range(0, 7).Select(_ => ((long)random.Next(3, 14), (long)random.Next(2, 9), 1, mayTurn))]);
    }

    private static CuttingSolution Solve(CuttingProblem problem)
    {
        var solution = SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        Assert.Empty(CuttingVerifier.FaultsOf(problem, solution));
        return solution;
    }
}

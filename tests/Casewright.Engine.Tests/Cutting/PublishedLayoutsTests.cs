using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;
using Casewright.Model.Collections;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>Instances of the literature whose best known number of sheets is proven, so that ours must be equal.</summary>
public class PublishedLayoutsTests
{
    // Best known and bound agree in best-known.csv of the reference (three stages, first cut horizontal, and free packing).
    [Theory]
    [InlineData("berkey1987", "Class_01.2bp_20_1", false, 8)]
    [InlineData("berkey1987", "Class_01.2bp_20_2", false, 5)]
    [InlineData("berkey1987", "Class_01.2bp_40_1", false, 10)]
    [InlineData("berkey1987", "Class_01.2bp_40_4", false, 14)]
    public void Proven_numbers_of_sheets_are_reached(string set, string instance, bool turn, int sheets)
    {
        var folder = ReferenceFolder.Find("cutting2d");
        Assert.SkipWhen(folder is null, "The reference folder is absent.");
        var problem = Read(folder, set, instance, turn);
        var solution = SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        Assert.Empty(CuttingVerifier.FaultsOf(problem, solution));
        Assert.Equal(sheets, solution.SheetsUsed);
        Assert.True(solution.Proven);
    }

    private static CuttingProblem Read(string folder, string set, string instance, bool turn)
    {
        var sheet = Rows(folder, set + "_bins.csv", instance).Single();
        var demands = Rows(folder, set + "_items.csv", instance).Select(c => new CuttingDemand(c[1], 1, [CuttingProblems.Whole(Number(c[2]), Number(c[3]), turn)]));
        return new CuttingProblem([new SheetType("sheet", Number(sheet[2]), Number(sheet[3]), 1)], demands.ToValueList(), new CuttingRules(Stages: 3, FirstCut: FirstCut.Along), 2_000_000);
    }

    private static IEnumerable<string[]> Rows(string folder, string file, string instance) =>
        File.ReadLines(Path.Combine(folder, file)).Select(l => l.Split(',')).Where(c => string.Equals(c[0], instance, StringComparison.Ordinal));

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}

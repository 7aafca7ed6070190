using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Verification;
using Casewright.Model.Collections;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>Splices decided together with the sheets, against splicing first by the full-sheet rule and cutting afterwards.</summary>
public class DecidingTogetherTests
{
    private const long Sheet = 2440;
    private const long Usable = Sheet - 20;

    [Fact]
    public void Is_never_worse_on_twenty_generated_jobs_and_mostly_better()
    {
        var better = 0;
        for (var job = 1; job <= 20; job++)
        {
            var together = Job(job);
            var apart = together with { Demands = together.Demands.Select(d => d with { Options = [FullSheetRule(d)] }).ToValueList() };
            var (joint, first) = (Solve(together), Solve(apart));
            Assert.True(joint.Cost <= first.Cost, string.Create(CultureInfo.InvariantCulture, $"job {job}: {joint.Cost} together, {first.Cost} apart"));
            Assert.True(joint.LowerBound <= joint.Cost);
            better += joint.Cost < first.Cost ? 1 : 0;
            TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"job {job}: together {joint.SheetsUsed} sheets, cost {joint.Cost}, bound {joint.LowerBound}; apart {first.SheetsUsed} sheets, cost {first.Cost}"));
        }

        Assert.True(better >= 5, string.Create(CultureInfo.InvariantCulture, $"better on {better} jobs only"));
    }

    // Uprights over the sheet, and shelves that fit it but leave much of its length; made from the number of the job alone.
    private static CuttingProblem Job(int job) => new(
        [new SheetType("ply", Sheet, 1220, 60)],
        [
            new CuttingDemand("upright", 4 + (job * 7 % 6), Joints(2600 + (job * 37 % 400), 300)),
            new CuttingDemand("shelf", 8 + (job * 5 % 9), Joints(1500 + (job * 131 % 500), 300)),
            new CuttingDemand("window seat", 2 + (job % 4), Joints(1700 + (job * 71 % 500), 400)),
        ],
        new CuttingRules(4, 10),
        600_000);

    // Whole where that fits, and a joint every 100 mm, neither piece below 400 mm.
    private static ValueList<CuttingOption> Joints(long length, long width)
    {
        var options = new List<CuttingOption>();
        if (length <= Usable)
            options.Add(CuttingProblems.Whole(length, width));
        else
            options.Add(CuttingProblems.Spliced(Usable, length - Usable, width, 6));
        for (var at = (length + 1) / 2; at <= Math.Min(Usable, length - 400); at += 100)
            options.Add(CuttingProblems.Spliced(at, length - at, width, 6));
        return options.ToValueList();
    }

    // Whole where that fits, else the longest piece that the trimmed sheet gives, and the rest.
    private static CuttingOption FullSheetRule(CuttingDemand demand) => demand.Options[0];

    private static CuttingSolution Solve(CuttingProblem problem)
    {
        var solution = SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        Assert.Empty(CuttingVerifier.FaultsOf(problem, solution));
        return solution;
    }
}

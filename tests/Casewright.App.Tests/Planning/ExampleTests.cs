using Casewright.Engine;
using Casewright.Model.Files;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.App.Tests.Planning;

/// <summary>Every example is planned in full, proven anew, and printed.</summary>
public sealed class ExampleTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(e => Path.GetFileNameWithoutExtension(e))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void It_is_planned_without_a_stop_and_proven_anew(string example)
    {
        var result = Planned(example);

        Assert.True(result.End == PlanningEnd.Planned, string.Join(Environment.NewLine, result.Problems.Take(5)));
        Assert.DoesNotContain(result.Plan!.Findings, f => f.Severity == Severity.Stop);
        Assert.True(result.Plan.Cutting.Bounds.LowerBound <= result.Plan.Cutting.Bounds.Cost);
        Assert.True(result.Plan.Cutting.Bounds.SheetsLowerBound <= result.Plan.Cutting.Bounds.Sheets);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Its_packet_has_no_text_outside_the_page_or_over_another_on_either_paper(string example)
    {
        foreach (var size in Enum.GetValues<PaperSize>())
        {
            var packet = Packet.Of(Plan(example), new PaperSettings(size, new DateOnly(2026, 1, 15)));
            foreach (var page in packet.Pages)
                Assert.True(LayoutCheck.Faults(page.Scene) is [], $"{size}, page {page.Number} ({page.Document} {page.Key}): {string.Join("; ", LayoutCheck.Faults(page.Scene).Take(3))}");
        }
    }

    [Fact]
    public void The_same_job_gives_the_same_plan_to_the_last_digit()
    {
        var job = JobFile.Read(File.ReadAllText(Repository.Examples.First())).Value!;

        Assert.Equal(Written(job), Written(job));
    }

    private static Plan Plan(string example) => Planned(example).Plan ?? throw new InvalidOperationException($"{example} has no plan.");

    private static string Written(Casewright.Model.Jobs.Job job) => PlanFile.Write(Planner.Plan(job, cancellation: TestContext.Current.CancellationToken).Plan!);

    private static PlanningResult Planned(string example) => PlannedExamples.Of(example);
}

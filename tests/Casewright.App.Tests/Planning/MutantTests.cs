using Casewright.Engine;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Tests.Files;

namespace Casewright.App.Tests.Planning;

/// <summary>Job files spoilt at random give a plan or clear errors, never a crash and never a plan that fails its own proof.</summary>
public sealed class MutantTests
{
    private const int Mutants = 10_000;
    private const int PlannedInFull = 60;

    [Fact]
    public void Ten_thousand_spoilt_files_are_read_and_laid_out_or_refused_and_a_sample_is_planned_in_full()
    {
        string[] sources = [StarterJob.Text(UnitSystem.Millimetres), StarterJob.Text(UnitSystem.Inches)];
        var jobs = new List<Job>();
        for (var seed = 0; seed < Mutants; seed++)
        {
            var read = JobFile.Read(JobMutator.Mutate(sources[seed % sources.Length], new Random(seed)));
            Assert.All(read.Problems, p => Assert.NotEmpty(p.Message));
            if (!read.Succeeded)
                continue;
            var laid = LayoutStage.Lay(read.Value);
            Assert.All(laid.Problems, p => Assert.True(p.Path.Length > 0 && p.Message.Length > 0, $"seed {seed}: {p}"));
            if (laid.Succeeded && laid.Value.Parts.Count <= 150)
                jobs.Add(read.Value);
        }

        Assert.True(jobs.Count > PlannedInFull, $"Only {jobs.Count} spoilt files could still be laid out: the sample is too small to mean anything.");
        for (var i = 0; i < PlannedInFull; i++)
        {
            var job = jobs[i * jobs.Count / PlannedInFull];
            var result = Planner.Plan(job, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
            Assert.True(result.End != PlanningEnd.NotVerified, $"mutant {i}: {string.Join("; ", result.Problems.Take(2))}");
            Assert.All(result.Problems, p => Assert.NotEmpty(p.Message));
        }
    }
}

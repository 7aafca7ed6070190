using Casewright.Model.Files;
using Casewright.Model.Measure;

namespace Casewright.Model.Tests.Files;

public sealed class StarterJobTests
{
    [Theory]
    [InlineData(UnitSystem.Inches)]
    [InlineData(UnitSystem.Millimetres)]
    public void The_starter_reads_without_a_problem_in_its_unit(UnitSystem units)
    {
        var outcome = JobFile.Read(StarterJob.Text(units));
        Assert.Empty(outcome.Problems.Select(p => p.ToString()));
        Assert.Equal(units, outcome.Value!.Units);
    }

    [Theory]
    [InlineData(UnitSystem.Inches)]
    [InlineData(UnitSystem.Millimetres)]
    public void The_starter_written_and_read_again_is_the_same_job(UnitSystem units)
    {
        var job = JobFile.Read(StarterJob.Text(units)).Value!;
        var text = JobFile.Write(job);
        Assert.Equal(job, JobFile.Read(text).Value);
        Assert.Equal(text, JobFile.Write(JobFile.Read(text).Value!));
    }
}

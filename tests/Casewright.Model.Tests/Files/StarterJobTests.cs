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

    [Theory]
    [InlineData(UnitSystem.Inches)]
    [InlineData(UnitSystem.Millimetres)]
    public void The_lines_of_the_starter_that_are_offered_for_answering_read_when_their_slashes_are_taken_away(UnitSystem units)
    {
        var lines = StarterJob.Text(units).Split('\n');
        var offered = 0;
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].TrimStart().StartsWith("// \"", StringComparison.Ordinal) || !lines[i].Contains("\": ", StringComparison.Ordinal))
                continue;
            if (!lines[i].TrimEnd().EndsWith(',') && !lines[i].TrimEnd().EndsWith(']'))
                continue;
            lines[i] = lines[i].Replace("// ", "", StringComparison.Ordinal);
            offered++;
        }

        var outcome = JobFile.Read(string.Join('\n', lines));
        Assert.Empty(outcome.Problems.Select(p => p.ToString()));
        Assert.True(offered >= 12, $"only {offered} lines are offered");
        Assert.NotNull(outcome.Value!.StartOn);
        Assert.NotNull(outcome.Value.Site.Route);
    }
}

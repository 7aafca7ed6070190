using System.Text;
using Casewright.Model.Files;
using Casewright.Model.Plans;

namespace Casewright.Model.Tests.Files;

public sealed class JobFuzzTests
{
    [Fact]
    public void Ten_thousand_spoilt_job_files_each_give_a_job_or_clear_problems()
    {
        var (jobs, refused) = (0, 0);
        for (var seed = 0; seed < 10_000; seed++)
        {
            var random = new Random(seed);
            var text = JobMutator.Mutate(JobSamples.Texts[seed % JobSamples.Texts.Count], random);
            var outcome = JobFile.Read(text);
            if (outcome.Succeeded)
            {
                jobs++;
                Assert.Equal(outcome.Value, JobFile.Read(JobFile.Write(outcome.Value)).Value);
            }
            else
            {
                refused++;
                Assert.All(outcome.Problems, p => AssertClear(p, text));
            }
        }

        // Both happen often, or the mutations test nothing.
        Assert.True(jobs > 500, $"only {jobs} were still jobs");
        Assert.True(refused > 5_000, $"only {refused} were refused");
    }

    [Fact]
    public void Bytes_at_random_give_problems()
    {
        for (var seed = 0; seed < 2_000; seed++)
        {
            var random = new Random(seed);
            var bytes = Encoding.UTF8.GetBytes(JobSamples.Texts[seed % JobSamples.Texts.Count]);
            for (var times = random.Next(1, 20); times > 0; times--)
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            var outcome = JobFile.Read(bytes);
            Assert.True(outcome.Succeeded || outcome.Problems.Count > 0);
        }
    }

    private static void AssertClear(Problem problem, string text)
    {
        Assert.NotEmpty(problem.Message);
        Assert.NotEmpty(problem.Accepted);
        Assert.True(problem.ToString().Length < 2_000, "A problem is told in a few lines.");
        Assert.DoesNotContain(problem.ToString(), c => c == '\n');
        if (problem.Line is { } line)
            Assert.InRange(line, 1, text.Count(c => c == '\n') + 1);
    }
}

using System.Collections;
using System.Reflection;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using CsCheck;

namespace Casewright.Model.Tests.Files;

public sealed class JobFileLawTests
{
    [Fact]
    public void Every_job_written_and_read_is_an_equal_job_and_is_written_alike_again() => Gen.Int.Sample(
        seed =>
        {
            var job = RandomJob.Make(seed);
            var text = JobFile.Write(job);
            var read = JobFile.Read(text);
            Assert.Empty(read.Problems.Select(p => p.ToString()));
            Assert.Equal(job, read.Value);
            Assert.Equal(text, JobFile.Write(read.Value!));
        },
        iter: 600);

    /// <summary>
    /// The law above says little about members that never vary. This holds that in the random jobs every member of every record takes
    /// at least two values, so that a member missing from the file is a broken law.
    /// </summary>
    [Fact]
    public void Every_member_of_every_record_of_a_job_varies_in_the_random_jobs()
    {
        var seen = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        for (var seed = 0; seed < 200; seed++)
            Collect(RandomJob.Make(seed), seen);
        Assert.Empty(seen.Where(s => s.Value.Count < 2).Select(s => s.Key));
        Assert.True(seen.Count > 150, "Records of a job were missed.");
    }

    private static void Collect(object record, Dictionary<string, HashSet<string>> seen)
    {
        foreach (var property in record.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite))
        {
            var value = property.GetValue(record);
            var name = $"{record.GetType().Name}.{property.Name}";
            if (!seen.TryGetValue(name, out var values))
                seen[name] = values = new(StringComparer.Ordinal);
            values.Add(value?.ToString() ?? "null");
            if (value is IEnumerable items and not string)
            {
                foreach (var item in items)
                    CollectRecord(item, seen);
            }
            else if (value is not null)
            {
                CollectRecord(value, seen);
            }
        }
    }

    private static void CollectRecord(object value, Dictionary<string, HashSet<string>> seen)
    {
        if (value.GetType().Assembly == typeof(Job).Assembly && value.GetType().IsClass)
            Collect(value, seen);
    }
}

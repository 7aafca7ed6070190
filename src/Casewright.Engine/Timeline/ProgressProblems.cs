using System.Globalization;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline;

/// <summary>What is wrong with the records of work done, each at its place in the job file.</summary>
internal static class ProgressProblems
{
    private const int MostNamed = 3;

    public static IEnumerable<Problem> Of(WorkList list, ShopProgress? progress)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (i, record) in (progress?.Records ?? []).Index())
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"progress.tasks[{i}]");
            if (!seen.Add(record.Task))
                yield return new(path + ".task", "A task is recorded twice.", record.Task, "one record for each task");
            if (!list.Has(record.Task))
                yield return new(path + ".task", "The timetable has no such task, so nothing can be made of the record.", record.Task, Accepted(list, record.Task));
            if (record.Finish < record.Start || record.Start > progress!.Now)
                yield return new(path, $"The times of '{record.Task}' do not follow one another.", $"{record.Start:yyyy-MM-dd HH:mm} to {record.Finish:yyyy-MM-dd HH:mm}", "a finish after the start, and both not after now");
        }
    }

    /// <summary>Tasks of the same kind of work, which is what stands before the stroke; else where to find the ids.</summary>
    private static string Accepted(WorkList list, string task)
    {
        var kind = task[..(task.IndexOf('/', StringComparison.Ordinal) + 1)];
        var alike = list.Tasks.Select(t => t.Id).Where(id => kind.Length > 0 && id.StartsWith(kind, StringComparison.Ordinal)).ToList();
        var named = string.Join(", ", alike.Take(MostNamed));
        return alike.Count == 0 ? "a task of the timetable, or no record"
            : alike.Count > MostNamed ? string.Create(CultureInfo.InvariantCulture, $"{named} or another of the {alike.Count} of its kind in the timetable, or no record")
            : $"{named}, or no record";
    }
}

using System.Globalization;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Model.Collections;

namespace Casewright.Bench.Scheduling;

/// <summary>
/// Reads single-mode project scheduling instances in the ".sm" form of PSPLIB (Kolisch and Sprecher, EJOR 1997): jobs with a duration,
/// finish-to-start precedences and four renewable resources.
/// </summary>
public static class ProjectFile
{
    /// <summary>Reads one instance as a scheduling problem on an uninterrupted axis.</summary>
    /// <exception cref="FormatException">The text is not of that form.</exception>
    public static SchedulingProblem Read(string text)
    {
        var lines = text.Split('\n').Select(l => l.Trim()).ToArray();
        var successors = Rows(lines, "PRECEDENCE RELATIONS").ToDictionary(r => r[0], r => r[3..]);
        var demands = Rows(lines, "REQUESTS/DURATIONS").ToDictionary(r => r[0], r => r[2..]);
        var capacities = Rows(lines, "RESOURCEAVAILABILITIES").First();
        var jobs = successors.Keys.Order().ToArray();
        return new()
        {
            Axis = WorkAxis.Continuous(Math.Max(1, demands.Values.Sum(d => d[0]))),
            Tasks = jobs.Select(j => new SchedulingTask { Id = j.ToString(CultureInfo.InvariantCulture), Duration = demands[j][0] }).ToValueList(),
            Resources = capacities.Select((c, r) => new SchedulingResource($"R{r + 1}", c)).ToValueList(),
            Holds = jobs.SelectMany(j => demands[j].Skip(1).Select((amount, r) => new ResourceHold(j - 1, j - 1, amount, [r]))).Where(h => h.Amount > 0).ToValueList(),
            Links = jobs.SelectMany(j => successors[j].Select(s => new TaskLink(j - 1, s - 1))).ToValueList(),
        };
    }

    private static IEnumerable<int[]> Rows(string[] lines, string heading)
    {
        var at = Array.FindIndex(lines, l => l.StartsWith(heading, StringComparison.Ordinal));
        if (at < 0)
            throw new FormatException($"There is no section '{heading}'.");
        return lines.Skip(at + 1)
            .TakeWhile(l => !l.StartsWith('*'))
            .Where(l => l.Length > 0 && char.IsAsciiDigit(l[0]))
            .Select(l => l.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(x => int.Parse(x, CultureInfo.InvariantCulture)).ToArray());
    }
}

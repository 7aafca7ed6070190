using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Bench.Jobs;

/// <summary>Brings the first run of a job to a number of bays, its wall and its limited stock with it; other runs go.</summary>
internal static class BayScale
{
    public static Job Of(Job job, int bays)
    {
        var run = job.Runs[0];
        var wall = job.Walls.First(w => w.Id == run.Wall);
        var had = run.Division?.Bays ?? throw new ArgumentException($"{job.Name} states no number of bays in its first run");
        var all = job.Runs.Sum(r => r.Division?.Bays ?? 0);
        return job with
        {
            Walls = [wall with { Width = Scaled(wall.Width, bays, had) }],
            Runs = [run with { Division = run.Division with { Bays = bays }, Width = run.Width is { } width ? Scaled(width, bays, had) : null }],
            Stock = job.Stock with { Sheets = [.. job.Stock.Sheets.Select(s => s with { Limit = s.Limit * bays / all })] },
        };
    }

    private static Length Scaled(Length length, int bays, int had) => Length.FromNanometres(length.Nanometres / had * bays);
}

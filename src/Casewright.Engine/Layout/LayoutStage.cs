using System.Globalization;
using Casewright.Engine.Layout.Counters;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Slopes;
using Casewright.Engine.Surveying;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Layout;

/// <summary>
/// Site and design become cases and parts: every part with its size, place, machining, faces and the derivation of each dimension.
/// Pure and exact; the same job gives the same parts. docs/conventions.md states the coordinates, ids and rules.
/// </summary>
public static class LayoutStage
{
    /// <summary>Lays out all runs of a job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>The casework, or every problem found, each at its path in the job file.</returns>
    public static Outcome<Casework> Lay(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var problems = new ProblemList(job.Units);
        SurveyProblems.Check(job, problems);
        SlopeProblems.Check(job, problems);
        if (problems.All.Count > 0)
            return Outcome<Casework>.Failed(problems.All);
        var layouts = new List<RunLayout>();
        var column = 1;
        for (var i = 0; i < job.Runs.Count; i++)
        {
            if (new RunReader(job, i, problems).Read() is not { } run)
                continue;
            if (RunLayout.Lay(run, column, out var columns, problems) is { } layout)
                layouts.Add(layout);
            column += columns;
        }

        CheckOverlaps(job, problems);
        FeaturesInTheWay.CheckDoors(job, layouts.SelectMany(l => l.Cases), problems);
        FreeFloor.Check(job, layouts.SelectMany(l => l.Cases), problems);
        return problems.All.Count > 0 ? Outcome<Casework>.Failed(problems.All) : Outcome<Casework>.Of(Join(job, layouts));
    }

    private static Casework Join(Job job, List<RunLayout> layouts) => new(
        layouts.SelectMany(l => l.Cases).ToValueList(),
        CutOuts.In([.. SkirtingCuts.In(Bridges.WithFixings([.. layouts.SelectMany(l => l.Parts)], job), job)], job).ToValueList(),
        layouts.SelectMany(l => l.Findings).ToValueList());

    /// <summary>Two runs cannot stand in the same place.</summary>
    private static void CheckOverlaps(Job job, ProblemList problems)
    {
        var spans = new List<(string Wall, Length From, Length To, int Index)>();
        for (var i = 0; i < job.Runs.Count; i++)
        {
            var run = job.Runs[i];
            if (job.Walls.FirstOrDefault(w => w.Id == run.Wall) is { } wall)
                spans.Add((run.Wall, run.Offset, run.Width is { } width ? run.Offset + width : wall.Width, i));
        }

        foreach (var group in spans.GroupBy(s => s.Wall, StringComparer.Ordinal))
        {
            var ordered = group.OrderBy(s => s.From).ThenBy(s => s.Index).ToArray();
            for (var i = 1; i < ordered.Length; i++)
            {
                var before = ordered.Take(i).Where(o => o.To > ordered[i].From && SharesHeight(job, o.Index, ordered[i].Index)).OrderByDescending(o => o.To).FirstOrDefault();
                if (before != default)
                    problems.Add(string.Create(CultureInfo.InvariantCulture, $"runs[{ordered[i].Index}].offset"), $"This run begins inside run {job.Runs[before.Index].Name}.", ordered[i].From, $"{problems.Say(before.To)} or more, or above its top");
            }
        }
    }

    /// <summary>A hung run may stand over a low one.</summary>
    private static bool SharesHeight(Job job, int first, int second)
    {
        var (a, b) = (Heights(job, job.Runs[first]), Heights(job, job.Runs[second]));
        return a.Low < b.High && b.Low < a.High;
    }

    private static (Length Low, Length High) Heights(Job job, Run run) =>
        (run.Base.Kind == BaseKind.Hung ? run.Base.Height - (run.Bridge?.Cleat ?? Length.Zero) : Length.Zero,
            run.Head.Height ?? job.Walls.First(w => w.Id == run.Wall).Height - (run.Head.Gap ?? Length.Zero));
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>A stretch of a run's base between its ends and knee spaces, as a run of its own.</summary>
/// <param name="Run">Its figures.</param>
/// <param name="Sections">Its sections.</param>
internal sealed record BaseStretch(RunFigures Run, IReadOnlyList<BaseSection> Sections);

/// <summary>Divides the base of a run where knee spaces interrupt it; beside one it ends as at a finished end.</summary>
internal static class BaseStretches
{
    /// <summary>The stretches from left to right; problems go to the list.</summary>
    public static IReadOnlyList<BaseStretch> Of(RunFigures run, IReadOnlyList<CaseFigures> cases, ProblemList problems)
    {
        var stretches = new List<BaseStretch>();
        foreach (var group in Groups([.. cases.Where(c => c.Tier.Index == 0)]))
        {
            var stretch = Stretch(run, group);
            stretches.Add(new(stretch, new BaseSections(stretch, Renumbered(stretch, group), problems).Divide()));
        }

        return stretches;
    }

    /// <summary>Their parts; sections are numbered through the run.</summary>
    public static IEnumerable<Part> Parts(IReadOnlyList<BaseStretch> stretches)
    {
        var before = 0;
        for (var i = 0; i < stretches.Count; i++)
        {
            var suffix = i == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{i + 1}");
            foreach (var part in LadderBase.Of(stretches[i].Run, stretches[i].Sections, before, suffix))
                yield return part;
            before += stretches[i].Sections.Count;
        }
    }

    private static IEnumerable<List<CaseFigures>> Groups(List<CaseFigures> lowest)
    {
        var group = new List<CaseFigures>();
        foreach (var box in lowest)
        {
            if (!box.IsKnee)
            {
                group.Add(box);
                continue;
            }

            if (group.Count > 0)
                yield return group;
            group = [];
        }

        if (group.Count > 0)
            yield return group;
    }

    private static RunFigures Stretch(RunFigures run, List<CaseFigures> group)
    {
        var free = new EndFigures(EndKind.Finished, Length.Zero, run.Left.FillerMaterial, null, null);
        var (first, last) = (group[0], group[^1]);
        var x = first.IsFirst ? run.X : first.X;
        return run with
        {
            X = x,
            Width = (last.IsLast ? run.XEnd : last.XEnd) - x,
            Left = first.IsFirst ? run.Left : free,
            Right = last.IsLast ? run.Right : free,
        };
    }

    /// <summary>The cases as columns of the stretch, so that its first and last are first and last.</summary>
    private static List<CaseFigures> Renumbered(RunFigures stretch, List<CaseFigures> group) =>
        [.. group.Select((box, i) => box with { Run = stretch, Columns = group.Count, Column = box.Column with { Index = i } })];
}

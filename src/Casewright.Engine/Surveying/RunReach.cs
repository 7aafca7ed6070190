using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Engine.Surveying;

/// <summary>How far a run comes out into the room, by its design alone.</summary>
internal static class RunReach
{
    /// <summary>From the wall to the foremost face of a run: its depth, and overlaid fronts or a blind panel on it.</summary>
    public static Length Of(Job job, Run run, bool blind)
    {
        var gaps = run.FrontGaps ?? FrontGaps.For(job.Units);
        var proud = Interiors(run).SelectMany(i => i.Fronts)
            .Where(f => f.Fit == FrontFit.Overlay)
            .Select(f => gaps.Buffer + Thickness(job, f.Material))
            .Append(blind ? Thickness(job, run.Material) : Length.Zero)
            .Max();
        return Deepest(run) + proud;
    }

    /// <summary>Depth of the deepest tier of a run, with what its counter stands out.</summary>
    public static Length Deepest(Run run) => run.Tiers
        .Select(t => (t.Depth ?? run.Depth) + (t.Counter?.Overhang ?? Length.Zero))
        .Append(run.Tiers.All(t => t.Depth is not null) ? Length.Zero : run.Depth)
        .Max();

    /// <summary>Whether a run has doors or drawers.</summary>
    public static bool HasFronts(Run run) => Interiors(run).Any(i => i.Fronts.Count > 0);

    private static IEnumerable<Interior> Interiors(Run run) =>
        run.Tiers.Select(t => t.Interior).Concat(run.Columns.SelectMany(c => c.Interiors));

    private static Length Thickness(Job job, string material) =>
        job.Stock.Materials.FirstOrDefault(m => m.Id == material)?.Thickness ?? Length.Zero;
}

using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Joints of uprights at one height along a run.</summary>
public sealed class SightLineCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-sight-line",
        "Whether the joints of the uprights in a run lie at one height, so that the eye reads one line.",
        "",
        "Common practice",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var uprights = SplicedPart.All(context).Where(s => s.Part.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel);
        foreach (var run in uprights.GroupBy(s => s.Part.Run, StringComparer.Ordinal))
        {
            var mostInOne = run.GroupBy(s => s.Part.Id, StringComparer.Ordinal).Max(g => g.Count());
            var heights = run.Select(s => s.Height).Distinct().Order().ToList();
            var say = context.Say;
            if (heights.Count <= mostInOne)
                yield return Rule(context, Severity.Pass, run.Key, $"The joints of the uprights lie at {string.Join(" and ", heights.Select(say.Size))} above the floor.");
            else if (context.Job.Shop.Splicing.OneSightLine)
                yield return Rule(context, Severity.Caution, run.Key, $"The joints of the uprights lie at {heights.Count} different heights: {string.Join(", ", heights.Select(say.Size))}.", $"Bring the joints to one height: {say.Size(Usual(run).RoundTo(say.Step))}, where most of them lie, or tied to a fixed shelf, the door head or a window stool.");
            else
                yield return Rule(context, Severity.Pass, run.Key, $"The joints lie at {heights.Count} heights, which this shop allows.");
        }
    }

    // The height that most joints have; the lowest of several.
    private static Length Usual(IEnumerable<SplicedPart> joints) =>
        joints.GroupBy(s => s.Height).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).First().Key;
}

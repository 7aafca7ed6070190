using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Joints of uprights lie at the heights they are said to lie at; along a run, tier by tier, they keep one line (or one set of lines
/// where an upright has several) when the shop wants it; and one is at the height that the run wishes.
/// </summary>
internal sealed class SightLines : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var joints = evidence.Joints().ToList();
        return joints.SelectMany(joint => Stated(joint.Splice, joint.Part))
            .Concat(evidence.Job.Shop.Splicing.OneSightLine ? OneLine(evidence, joints) : [])
            .Concat(Wished(evidence, joints));
    }

    private static IEnumerable<Problem> Stated(Splice splice, Part part)
    {
        if (splice.SightLine is not { } stated)
            return [];

        var height = Height(splice, part);
        return height == stated
            ? []
            : [new Problem($"splices[{splice.Id}].sightLine", "The joint does not lie at its sight line.", $"{stated}", height is { } real ? $"{real}" : "no sight line in a level part")];
    }

    private static IEnumerable<Problem> OneLine(Evidence evidence, List<(Splice Splice, Part Part)> joints)
    {
        var uprights = joints.Where(joint => IsUpright(joint.Part) && Height(joint.Splice, joint.Part) is not null).ToList();
        foreach (var (splice, _) in uprights.Where(joint => joint.Splice.SightLine is null))
            yield return new($"splices[{splice.Id}].sightLine", "The joint of an upright keeps no sight line.", "nothing", "the height of the run's line");

        foreach (var group in uprights.GroupBy(joint => (joint.Part.Run, Tier: evidence.Case(joint.Part.Case)?.Tier ?? 0)))
        {
            var lines = group.GroupBy(joint => joint.Part.Id, StringComparer.Ordinal).MaxBy(part => part.Count())!
                .Select(joint => Height(joint.Splice, joint.Part)).ToHashSet();
            foreach (var (splice, part) in group.Where(joint => !lines.Contains(Height(joint.Splice, joint.Part))))
                yield return new($"splices[{splice.Id}].position", "The joint leaves the sight line of its run.", $"{Height(splice, part)}", string.Join(" or ", lines));
        }
    }

    private static IEnumerable<Problem> Wished(Evidence evidence, List<(Splice Splice, Part Part)> joints) =>
        from upright in joints.Where(joint => IsUpright(joint.Part)).GroupBy(joint => joint.Part.Id, StringComparer.Ordinal)
        let part = upright.First().Part
        let wish = evidence.Run(part.Run)?.Splices.Height
        where wish is not null && upright.All(joint => Height(joint.Splice, joint.Part) != wish)
        select new Problem($"parts[{part.Id}].splices", "The upright is not joined at the height that its run wishes.", string.Join(", ", upright.Select(joint => Height(joint.Splice, joint.Part))), $"{wish}");

    private static bool IsUpright(Part part) => part.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel;

    /// <summary>Height of a joint above the highest floor point; null in parts that do not stand.</summary>
    private static Length? Height(Splice splice, Part part) => part.Place.AlongLength switch
    {
        Axis.Up => part.Place.Origin.Y + splice.Position,
        Axis.Down => part.Place.Origin.Y - splice.Position,
        _ => null,
    };
}

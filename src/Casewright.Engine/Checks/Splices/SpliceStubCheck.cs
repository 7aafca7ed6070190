using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Short pieces of spliced parts.</summary>
public sealed class SpliceStubCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-stub",
        "Length of the shortest piece of each spliced part.",
        "piece ≥ the shop's shortest piece, and ≥ part ÷ 8",
        "Common practice: 300 mm (12 in), an eighth of the part",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var group in SplicedPart.All(context).Where(s => s.Carries).GroupBy(s => s.Part.Id, StringComparer.Ordinal))
            yield return One(context, group.First().Part, [.. group.Select(s => s.Splice.Position).Order()]);
    }

    private Finding One(CheckContext context, Part part, IReadOnlyList<Length> joints)
    {
        var rules = context.Job.Shop.Splicing;
        var limit = Length.Max(rules.ShortestPiece, part.Length / rules.ShortestShare);
        var edges = joints.Prepend(Length.Zero).Append(part.Length).ToList();
        var shortest = edges.Skip(1).Zip(edges, (to, from) => to - from).Min();
        var say = context.Say;
        return Report(
            context,
            shortest < limit ? Severity.Caution : Severity.Pass,
            part.Id,
            $"The shortest piece of {part.Name} is {say.Size(shortest)}; {say.Size(limit)} is the least.",
            new((double)shortest.Millimetres, (double)limit.Millimetres, "mm", []),
            $"Move the joint so that no piece is under {say.AtLeast(limit.Metres)}: short stubs wander in the clamps.");
    }
}

using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Panel thick enough for its tenons, with wood left on both sides.</summary>
public sealed class TenonWallCheck : Check
{
    // A third of the thickness, with the tolerance of a sanded panel taken off.
    private const double LeastWallShare = 0.3;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "tenon-walls",
        "Wood left beside the mortises, on the thinner side.",
        "wall ≥ 0.3 t; t ≥ the thinnest panel for tenons",
        "Common practice: tenons a third of the thickness, in panels of 15 mm and more",
        Standing.CommonPractice)
    {
        Limits = [new("thinnest panel for tenons", l => (double)l.ThinnestForTenon.Millimetres, 15, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var (splice, part) in SplicedPart.All(context).Where(s => s.Splice.Tenons.Count > 0))
            yield return One(context, splice, part);
    }

    private Finding One(CheckContext context, Splice splice, Part part)
    {
        var wall = splice.Tenons.Min(t => Length.Min(t.Depth, part.Thickness - t.Depth) - (t.Thickness / 2)).Metres;
        var limit = LeastWallShare * part.Thickness.Metres;
        var say = context.Say;
        var thin = part.Thickness < context.Limits.ThinnestForTenon;
        return Report(
            context,
            wall < limit || thin ? Severity.Stop : Severity.Pass,
            splice.Id,
            thin ? $"{part.Name} is {say.Size(part.Thickness)} thick, too thin for loose tenons." : $"{say.Fine(wall)} of wood is left beside the tenons of {part.Name}; {say.Fine(limit)} is the least.",
            new(wall * 1000, limit * 1000, "mm", []),
            thin
                ? $"Use a scarf or a half-lap, or a panel {say.AtLeast(context.Limits.ThinnestForTenon.Metres)} thick or more."
                : $"Use tenons {say.AtMost((1 - (2 * LeastWallShare)) * part.Thickness.Metres)} thick or less at mid-thickness, a scarf or a half-lap.");
    }
}

using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Tenons and connectors far enough from the edges.</summary>
public sealed class TenonPlaceCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "tenon-to-edge",
        "Distance of tenon and connector centres from the edges of the part; narrow parts keep a quarter of their width.",
        "centre to edge ≥ limit, or ≥ width ÷ 4 where that is less",
        "Common practice: tenons 40 mm, connectors 60 mm",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("tenon to edge", l => (double)l.TenonToEdge.Millimetres, 40, "mm", "common practice, no source", Standing.CommonPractice),
            new("connector to edge", l => (double)l.ConnectorToEdge.Millimetres, 60, "mm", "common practice, no source", Standing.CommonPractice),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var (splice, part) in SplicedPart.All(context))
        {
            if (splice.Tenons.Count > 0)
                yield return One(context, splice, part, "tenon", [.. splice.Tenons.Select(t => t.Offset)], context.Limits.TenonToEdge);
            if (splice.Connectors.Count > 0)
                yield return One(context, splice, part, "draw connector", [.. splice.Connectors.Select(c => c.Offset)], context.Limits.ConnectorToEdge);
        }
    }

    private Finding One(CheckContext context, Splice splice, Part part, string thing, IReadOnlyList<Length> offsets, Length usual)
    {
        var limit = Length.Min(usual, part.Width / 4);
        var nearest = offsets.Min(o => Length.Min(o, part.Width - o));
        var say = context.Say;
        return Report(
            context,
            nearest < limit ? Severity.Caution : Severity.Pass,
            splice.Id,
            $"The outermost {thing} in {part.Name} is {say.Size(nearest)} from the edge; {say.Size(limit)} is kept.",
            new((double)nearest.Millimetres, (double)limit.Millimetres, "mm", []),
            $"Move the {thing} in to {say.AtLeast(limit.Metres)} from the edge, clear of dados, rabbets and rip lines.");
    }
}

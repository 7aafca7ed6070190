using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Wood left in an upright behind a dado, or between two dados that face each other.</summary>
public sealed class PartitionWebCheck : Check
{
    // A sanded panel may be 1/64 in under its nominal thickness (PS 1-19); a web short by no more is no reason to stop.
    private const double PanelTolerance = 0.0254 / 64;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "dado-web",
        "Wood left behind each dado of an upright, and between dados on both faces of a partition.",
        "t − a − a′ ≥ t/3",
        "Common practice: at least a third of the thickness",
        Standing.CommonPractice)
    {
        Limits = [new("least web as a share of the thickness", l => l.LeastWeb, 1.0 / 3.0, "", "a third, common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var part in context.PartsWith(PartRole.Side, PartRole.Partition))
        {
            var dados = part.Machining.OfType<Dado>().ToList();
            if (dados.Count > 0)
                yield return One(context, part, dados);
        }
    }

    /// <summary>Thinnest web of an upright.</summary>
    public static Length Web(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var dados = part.Machining.OfType<Dado>().ToList();
        var deepest = Length.Zero;
        foreach (var dado in dados)
        {
            var facing = dados.Where(d => d.Face != dado.Face && Meet(d, dado)).Select(d => d.Depth).DefaultIfEmpty(Length.Zero).Max();
            deepest = Length.Max(deepest, dado.Depth + facing);
        }

        return part.Thickness - deepest;
    }

    private static bool Meet(Dado a, Dado b) =>
        a.X < b.X + b.Width && b.X < a.X + a.Width && a.FromY < b.ToY && b.FromY < a.ToY;

    private Finding One(CheckContext context, Part part, List<Dado> dados)
    {
        var (web, limit) = (Web(part).Metres, part.Thickness.Metres * context.Limits.LeastWeb);
        var both = dados.Select(d => d.Face).Distinct().Count() == 2;
        var say = context.Say;
        var deepest = (part.Thickness.Metres - limit) / (both ? 2 : 1);
        return Report(
            context,
            web >= limit - 1e-9 ? Severity.Pass : web >= limit - PanelTolerance ? Severity.Caution : Severity.Stop,
            part.Id,
            $"{say.Fine(web)} of {part.Name} is left {(both ? "between its dados" : "behind its dados")}; {say.Fine(limit)} is the least.",
            new(web * 1000, limit * 1000, "mm", [new("thickness", Say.Number(part.Thickness.Metres * 1000, 2), "mm")]),
            $"Make the dados at most {say.AtMost(deepest)} deep, or stagger the shelves.");
    }
}

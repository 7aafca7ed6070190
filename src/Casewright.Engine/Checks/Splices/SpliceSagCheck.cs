using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Splices;

/// <summary>Sag of a shelf softened by a tenon or spline joint in its span.</summary>
public sealed class SpliceSagCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "splice-sag",
        "Sag of a shelf with a tenon or spline joint in its span.",
        "δ (1 + 19.2 (EI/k)/L ξ²(1 − ξ)); EI/k from finite elements, × b/(n w) for tenons",
        "Joint as a turning spring, stiffness from finite elements of our own reference; span/360 is common practice",
        Standing.Judgement)
    {
        Limits = [new("span over sag", l => l.SagRatio, 360, "", "common practice for fine built-ins, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var spliced in SplicedPart.All(context).Where(s => ShelfReader.Roles.Contains(s.Part.Role)))
        {
            if (spliced.InSpan(context) is not var (span, x) || Softening(spliced) is not { } soft)
                continue;
            if (spliced.Part.LoadPerMetre is not null)
                yield return One(context, spliced, span, x, soft);
            else if (spliced.Part.Role is PartRole.FixedShelf or PartRole.AdjustableShelf)
                yield return NotChecked(context, spliced.Splice.Id, "nobody has said what this shelf will carry.", ShelfLoads.LoadAdvice);
        }
    }

    private static double? Softening(SplicedPart spliced)
    {
        var (t, b) = (spliced.Part.Thickness.Metres, spliced.Part.Width.Metres);
        if (spliced.Splice.Method == SpliceMethod.Spline)
            return SpliceStiffness.SplineLength(t, t / 3);
        return SpliceEstimate.Tenons(spliced.Splice) is { } set ? SpliceStiffness.TenonLength(t, set.Thickness, b, set.TotalWidth) : null;
    }

    private Finding One(CheckContext context, SplicedPart spliced, int span, double x, double soft)
    {
        var shelf = ShelfReader.Read(context, spliced.Part, spliced.Part.LoadPerMetre!.Value);
        var length = shelf.Spans[span];
        var sag = shelf.Sag * (1 + SpliceStiffness.AddedSag(soft, length, x));
        var limit = length / context.Limits.SagRatio;
        var say = context.Say;
        var severity = sag <= limit ? Severity.Pass : spliced.Part.Role == PartRole.FixedShelf ? Severity.Stop : Severity.Caution;
        return Report(
            context,
            severity,
            spliced.Splice.Id,
            $"{spliced.Part.Name} sags {say.Fine(sag)} with its joint, {say.Fine(shelf.Sag)} without; {say.Fine(limit)} is allowed.",
            new(sag * 1000, limit * 1000, "mm", ShelfInputs.Of(shelf).Add(new("extra panel length that turns as the joint does", Say.Number(soft * 1000), "mm"))),
            severity == Severity.Pass ? "" : Advice(context, spliced, shelf, sag / limit));
    }

    private static string Advice(CheckContext context, SplicedPart spliced, Shelf shelf, double over)
    {
        var ratio = context.Limits.SagRatio;
        var ways = new List<string>();
        if (ShelfSagCheck.Passes(shelf, ratio))
            ways.Add("join it with a 1:8 scarf or a glued plate, which do not turn");
        var most = ((shelf.TotalLoad / over) - shelf.OwnWeight) / Shelf.Gravity;
        if (most >= 1)
            ways.Add($"keep the load to {context.Say.LoadAtMost(most)}");
        ways.Add("put the joint over an upright");
        return Say.Sentence(ways);
    }
}

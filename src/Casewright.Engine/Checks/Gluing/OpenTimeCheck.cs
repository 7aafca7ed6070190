using Casewright.Engine.Checks.Splices;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Checks.Gluing;

/// <summary>Time to spread one joint against the glue's open time.</summary>
public sealed class OpenTimeCheck : Check
{
    // Minutes to wet the two ends, and one tenon with its two mortises (judgement).
    private const double EndsMinutes = 1.0;
    private const double TenonMinutes = 0.5;

    // Square metres of a lap, scarf or plate that are spread in a minute (judgement).
    private const double AreaPerMinute = 0.05;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "glue-open-time",
        "Minutes to spread glue on the largest joint of each method, against the glue's open time.",
        "1 min + 0.5 min per tenon, or area ÷ 0.05 m²/min",
        "Spreading rates are our judgement; open time by the glue's label",
        Standing.Judgement);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var glued = SplicedPart.All(context).Where(s => s.Carries);
        foreach (var method in glued.GroupBy(s => s.Splice.Method).OrderBy(g => g.Key))
            yield return One(context, method.MaxBy(s => Minutes(s.Splice, s.Part))!);
    }

    /// <summary>Minutes to spread one joint.</summary>
    public static double Minutes(Splice splice, Part part)
    {
        ArgumentNullException.ThrowIfNull(splice);
        ArgumentNullException.ThrowIfNull(part);
        return splice.Method switch
        {
            SpliceMethod.HalfLap or SpliceMethod.Scarf => splice.Consumes.Metres * part.Width.Metres / AreaPerMinute,
            SpliceMethod.BackedButt => 16 * part.Thickness.Metres * part.Width.Metres / AreaPerMinute,
            SpliceMethod.Spline => EndsMinutes + (part.Width.Metres * 0.05 / AreaPerMinute),
            _ => EndsMinutes + (TenonMinutes * splice.Tenons.Count),
        };
    }

    private Finding One(CheckContext context, SplicedPart spliced)
    {
        var (minutes, open) = (Minutes(spliced.Splice, spliced.Part), context.Job.Shop.Glue.OpenMinutes);
        return Report(
            context,
            minutes > open ? Severity.Caution : Severity.Pass,
            spliced.Splice.Id,
            $"Spreading the joint in {spliced.Part.Name} takes about {Say.Number(minutes)} minutes; the glue stays open {Say.Number(open)}.",
            new(minutes, open, "min", []),
            $"Spread with two people, or use a glue that stays open {Say.Number(Math.Ceiling(minutes))} minutes or more; dry air shortens the open time.");
    }
}

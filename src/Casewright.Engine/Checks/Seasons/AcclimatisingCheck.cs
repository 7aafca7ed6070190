using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Seasons;

/// <summary>Days that stock lies in the dry room before it is cut.</summary>
public sealed class AcclimatisingCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "acclimatising",
        "Days that panels and solid stock lie in heated, plaster-dry air before they are cut.",
        "days ≥ the shop's least",
        "Common practice: several days; fresh stock opens mitres and splice lines later",
        Standing.CommonPractice)
    {
        Limits = [new("days", l => l.AcclimatisingDays, 3, "days", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (context.Job.Site.AcclimatisingDays is not { } days)
        {
            yield return NotChecked(context, "job", "the job does not say how long the stock will lie before it is cut.", "Plan the days between delivery and cutting.");
            yield break;
        }

        var limit = context.Limits.AcclimatisingDays;
        yield return Report(
            context,
            days < limit ? Severity.Caution : Severity.Pass,
            "job",
            $"Stock lies {Say.Count(days, "day", "days")} before it is cut; {Say.Count(limit, "is", "are")} wanted.",
            new(days, limit, "days", []),
            $"Have it delivered {Say.Count(limit - days, "day", "days")} earlier, stickered flat in heated air.");
    }
}

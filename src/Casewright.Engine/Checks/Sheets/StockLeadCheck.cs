using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Sheets that arrive after they are needed.</summary>
public sealed class StockLeadCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "stock-lead-time",
        "Working days until each bought kind of sheet arrives, against the days until it is needed.",
        "lead days ≤ working days from the job's date to the date needed",
        "Arithmetic, Monday to Friday, holidays not counted",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var id in (context.Plan?.Sheets ?? []).Where(s => s is { Bought: true, Sawn: false }).Select(s => s.Stock).Distinct(StringComparer.Ordinal))
        {
            if (context.Job.Stock.Sheets.FirstOrDefault(s => s.Id == id) is not { } sheet)
                continue;
            yield return context.Job is { Date: { } today, StockNeededBy: { } needed }
                ? One(context, id, sheet.LeadDays, today, needed)
                : NotChecked(context, id, "the job gives no date, or no date by which stock is needed.", "Give both dates.");
        }
    }

    /// <summary>Days from Monday to Friday after the first date, up to and with the second.</summary>
    public static int WorkingDays(DateOnly from, DateOnly to)
    {
        var count = 0;
        for (var day = from.AddDays(1); day <= to; day = day.AddDays(1))
            count += day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? 0 : 1;
        return count;
    }

    private Finding One(CheckContext context, string id, int lead, DateOnly today, DateOnly needed)
    {
        var days = WorkingDays(today, needed);
        return Report(
            context,
            lead > days ? Severity.Stop : Severity.Pass,
            id,
            $"Sheet {id} takes {Say.Count(lead, "working day", "working days")} to arrive; {Say.Count(days, "is", "are")} left.",
            new(lead, days, "working days", []),
            $"Ordered on {today:yyyy-MM-dd} it is there on {Arrival(today, lead):yyyy-MM-dd}: move the date to that day, or choose a scheme that does without it.");
    }

    private static DateOnly Arrival(DateOnly from, int lead)
    {
        var day = from;
        while (WorkingDays(from, day) < lead)
            day = day.AddDays(1);
        return day;
    }
}

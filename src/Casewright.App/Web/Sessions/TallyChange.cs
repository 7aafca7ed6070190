using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Plans;

namespace Casewright.App.Web.Sessions;

/// <summary>What a change did to what the job comes to.</summary>
/// <param name="Words">One short phrase for each figure that moved, such as "+1 sheet".</param>
public sealed record TallyChange(ValueList<string> Words)
{
    /// <summary>The difference of two plans; null when no figure of the foot line moved.</summary>
    public static TallyChange? Between(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var (was, now) = (Tally.Of(before), Tally.Of(after));
        string?[] words =
        [
            Count(now.Sheets - was.Sheets, "sheet", "sheets"),
            Count(now.Splices - was.Splices, "splice", "splices"),
            Minutes(after.Schedule?.WorkMinutes - before.Schedule?.WorkMinutes),
            Days(after.Schedule?.Finish.Date - before.Schedule?.Finish.Date),
            Price(before, after),
            Count(now.Stops - was.Stops, "stop", "stops"),
            Count(now.Cautions - was.Cautions, "caution", "cautions"),
        ];
        var moved = words.OfType<string>().ToValueList();
        return moved.Count == 0 ? null : new(moved);
    }

    private static string? Price(Plan before, Plan after)
    {
        if (before.Job.Currency != after.Job.Currency)
            return null;
        var by = (after.Estimate?.Gross ?? after.Cutting.Bounds.Cost) - (before.Estimate?.Gross ?? before.Cutting.Bounds.Cost);
        return before.Estimate is null == after.Estimate is null && decimal.Round(by) != 0 ? $"{Sign(by)}{Shown.Money(Math.Abs(by), after.Job.Currency)}" : null;
    }

    private static string? Minutes(int? by)
    {
        if (by is not { } minutes || minutes == 0)
            return null;
        var size = Math.Abs(minutes);
        return size < 120
            ? string.Create(CultureInfo.InvariantCulture, $"{Sign(minutes)}{size} min work")
            : string.Create(CultureInfo.InvariantCulture, $"{Sign(minutes)}{size / 60m:0.#} h work");
    }

    private static string? Days(TimeSpan? by) => by is { } span && span != TimeSpan.Zero ? Count((int)span.TotalDays, "day", "days") : null;

    private static string? Count(int by, string one, string many) =>
        by == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{Sign(by)}{Math.Abs(by)} {(Math.Abs(by) == 1 ? one : many)}");

    private static string Sign(decimal by) => by > 0 ? "+" : "−";
}

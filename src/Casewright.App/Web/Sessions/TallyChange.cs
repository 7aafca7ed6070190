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
        var words = new List<string>();
        Add(words, Tally.Of(after).Sheets - Tally.Of(before).Sheets, "sheet", "sheets");
        Add(words, Tally.Of(after).Splices - Tally.Of(before).Splices, "splice", "splices");
        Add(words, Tally.Of(after).Stops - Tally.Of(before).Stops, "stop", "stops");
        var cost = after.Cutting.Bounds.Cost - before.Cutting.Bounds.Cost;
        if (cost != 0)
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{(cost > 0 ? "+" : "−")}{Math.Abs(cost):0} {after.Job.Currency}"));
        return words.Count == 0 ? null : new(words.ToValueList());
    }

    private static void Add(List<string> words, int by, string one, string many)
    {
        if (by != 0)
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{(by > 0 ? "+" : "−")}{Math.Abs(by)} {(Math.Abs(by) == 1 ? one : many)}"));
    }
}

using System.Globalization;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Pricing;

namespace Casewright.Engine.Pricing;

/// <summary>What a maker should look at before a price goes out.</summary>
internal static class PriceFindings
{
    public static Finding NotStated(string what, string quantity) => new()
    {
        Check = "price-stated",
        Severity = Severity.NotChecked,
        Subject = what,
        Message = $"There is no price for {what}: {quantity} are left out of the price.",
        Source = "missing input",
        Standing = Standing.Arithmetic,
        Advice = $"State the price of {what}.",
    };

    public static IEnumerable<Finding> Of(Job job, Estimate estimate)
    {
        var rates = job.Shop.Prices.Rates;
        if (estimate.Hours.Any(h => h.Hours > 0 && (rates.FirstOrDefault(r => r.Phase == h.Phase)?.Rate ?? job.Shop.HourlyRate) == 0))
            yield return Note("hourly-rate", Severity.Caution, "Hours of work are priced at nothing.", 0, "of the currency an hour", "State what an hour costs: wages twice to two and a half times over, and profit.");
        var margin = estimate.MarginShare;
        if (margin < 0)
            yield return Note("margin", Severity.Stop, string.Create(CultureInfo.InvariantCulture, $"The price is {-margin:P1} below what the job costs."), (double)margin, "of the price", "Raise mark-up or contingency.");
        if (job.Shop.Prices.Tax is null)
            yield return Note("tax-stated", Severity.NotChecked, "No tax is stated: the price is without it.", null, "", "State the tax, or 0 where none is due.");
    }

    private static Finding Note(string check, Severity severity, string message, double? value, string unit, string advice) => new()
    {
        Check = check,
        Severity = severity,
        Subject = "price",
        Message = message,
        Value = value,
        Limit = value is null ? null : 0,
        Unit = unit,
        Source = "the estimate",
        Standing = Standing.Arithmetic,
        Advice = advice,
    };
}

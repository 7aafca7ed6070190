using System.Globalization;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.Engine.Pricing;

/// <summary>Price rules that make no sense, each with its place in the job file.</summary>
internal static class PriceProblems
{
    public static IEnumerable<Problem> Of(Job job)
    {
        var prices = job.Shop.Prices;
        if (job.Shop.HourlyRate < 0)
            yield return Negative("shop.hourlyRate", "An hour of work", job.Shop.HourlyRate);
        if (prices.MarkUp <= -1)
            yield return new("shop.prices.markUp", "A mark-up of minus one or less gives the material away.", Text(prices.MarkUp), "a share above -1, usually 0.20 to 0.35");
        foreach (var (path, value) in new[] { ("overhead", prices.Overhead), ("consumables", prices.Consumables), ("contingency", prices.Contingency), ("tax", prices.Tax ?? 0), ("roundUpTo", prices.RoundUpTo), ("glueLitre", prices.GlueLitre ?? 0), ("deliveryLoad", prices.DeliveryLoad), ("siteDay", prices.SiteDay) })
        {
            if (value < 0)
                yield return Negative("shop.prices." + path, "This figure", value);
        }

        foreach (var hardware in prices.Hardware.Where(h => h.Each < 0))
            yield return Negative("shop.prices.hardware", "A piece of hardware", hardware.Each);
        foreach (var rate in prices.Rates.Where(r => r.Rate < 0))
            yield return Negative("shop.prices.rates", "An hour of work", rate.Rate);
        foreach (var coat in (job.Shop.Finish?.Coats ?? []).Where(c => c.Coverage <= 0))
            yield return new("shop.finish.coats", $"A litre of {coat.Name} covers nothing.", Text(coat.Coverage), "square metres above 0");
        var shares = prices.Payments.Sum(p => p.Share);
        if (prices.Payments.Count == 0 || shares != 1 || prices.Payments.Any(p => p.Share < 0))
            yield return new("shop.prices.payments", "The stages of payment must add up to the price.", Text(shares), "shares of 0 or more that add up to 1");
    }

    private static Problem Negative(string path, string what, decimal value) => new(path, $"{what} cannot cost less than nothing.", Text(value), "0 or more");

    private static string Text(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using Casewright.Engine.Pricing;
using Casewright.Engine.Tests.Timeline;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Pricing;
using Casewright.Model.Timeline;
using CsCheck;

namespace Casewright.Engine.Tests.Pricing;

/// <summary>Prices worked by hand. Standard times as in the glue-up tables; hours are those of the timetable's tasks.</summary>
public class PricingStageTests
{
    private static readonly PriceRules Rules = new() { Overhead = 0.10m, RoundUpTo = 10, Tax = 0.19m, GlueLitre = 12 };

    // Three sheets at 80: 240. Glue of two splices, 2 x 20 ml at 12 a litre: 0.48. Consumables 4 % of 240: 9.60. Bought: 250.08.
    // Unloading 3 x 6 = 18 minutes; a sheet of 18 mm birch weighs 36.4 kg, so two people: 18 / 1.7 = 10.6, 11 minutes each, 22 in all:
    // 0.37 h at 60: 22.20. Splicing: setting up 25, 2 x 10, 2 x 7, 2 x 4, and flushing 2 x 5 + setting 3 + 4 crosscuts x 1.2 = 17.8, so 18:
    // 85 minutes, 1.42 h at 60: 85.20. Labour 107.40, overhead 10 % of it: 10.74. Cost 368.22.
    // Mark-up 25 % of 250.08: 62.52. Contingency 5 % of 368.22: 18.41. Together 449.15, up to 450; tax 19 %: 85.50; 535.50.
    // Payments: 45 % is 240.975, so 240.98; 40 % is 214.20; the rest 80.32.
    [Fact]
    public void A_price_worked_by_hand()
    {
        var estimate = Make(Priced(Rules));
        Assert.Equal([("panel (p1)", 3m, 240m), ("glue", 0.04m, 0.48m), ("abrasives, screws, tape", 0.04m, 9.60m), ("unloading and sawing", 0.37m, 22.20m), ("splicing", 1.42m, 85.20m)], estimate.Lines.Select(l => (l.Name, l.Quantity, l.Amount)));
        Assert.Equal((10.74m, 368.22m, 62.52m, 18.41m), (estimate.Overhead, estimate.Cost, estimate.MarkUp, estimate.Contingency));
        Assert.Equal((0.85m, 450m, 85.50m, 535.50m), (estimate.Rounding, estimate.Net, estimate.Tax, estimate.Gross));
        Assert.Equal([240.98m, 214.20m, 80.32m], estimate.Payments.Select(p => p.Amount));

        // 81.78 above the cost: 18.17 % of the price.
        Assert.Equal(0.1817m, Math.Round(estimate.MarginShare, 4));
        Assert.Empty(estimate.Findings);
    }

    // Arithmetic: what is 25 % on the cost is 20 % of the price.
    [Fact]
    public void A_mark_up_of_a_quarter_is_a_margin_of_a_fifth()
    {
        var estimate = new Estimate
        {
            Currency = "EUR",
            Lines = [new(CostGroup.Material, "panel", 1, "sheet", 80, 80, "")],
            Hours = [],
            Overhead = 0,
            MarkUp = 20,
            Contingency = 0,
            Rounding = 0,
            Net = 100,
            Tax = 0,
            Gross = 100,
            Payments = [],
        };
        Assert.Equal((0.25m, 0.20m), (estimate.MarkUpShare, estimate.MarginShare));
    }

    [Fact]
    public void A_stage_may_have_its_own_rate()
    {
        var estimate = Make(Priced(Rules with { Rates = [new(WorkPhase.Splicing, 75)] }));
        Assert.Equal(106.50m, estimate.Lines.Single(l => l.Name == "splicing").Amount); // 1.42 x 75
        Assert.Equal(22.20m, estimate.Lines.Single(l => l.Name == "unloading and sawing").Amount);
    }

    [Fact]
    public void Sheets_on_hand_cost_nothing()
    {
        var job = Priced(Rules);
        var (casework, cutting) = Plan();
        var rack = cutting with { Sheets = cutting.Sheets.Select(s => s with { Bought = false, Cost = 0 }).ToValueList() };
        var outcome = PricingStage.Price(job, casework, rack);
        Assert.True(outcome.Succeeded);
        Assert.Equal(0, outcome.Value.Of(CostGroup.Material));
    }

    [Fact]
    public void What_nobody_priced_is_named_and_left_out()
    {
        var findings = Make(Priced(new() { Tax = null })).Findings;
        Assert.Equal(["price-stated", "tax-stated"], findings.Select(f => f.Check));
        Assert.Contains("0.04 litres", findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Free_hours_are_pointed_out()
    {
        var job = Priced(Rules);
        var finding = Assert.Single(Make(job with { Shop = job.Shop with { HourlyRate = 0 } }).Findings);
        Assert.Equal(("hourly-rate", Severity.Caution), (finding.Check, finding.Severity));
    }

    // Mark-up -50 % of 250.08 is -125.04; contingency 18.41: 368.22 - 106.63 = 261.59, up to 270: 98.22 below cost, 36.4 % of the price.
    [Fact]
    public void A_price_below_cost_is_a_stop()
    {
        var estimate = Make(Priced(Rules with { MarkUp = -0.5m }));
        Assert.Equal(270m, estimate.Net);
        var finding = Assert.Single(estimate.Findings);
        Assert.Equal(("margin", Severity.Stop), (finding.Check, finding.Severity));
        Assert.Contains("36.4", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_that_make_no_sense_are_refused_with_their_place()
    {
        var job = Priced(Rules with { Contingency = -0.1m, Payments = [new("now", 0.5m)] });
        var problems = PricingStage.Price(job, Plan().Casework, Plan().Cutting).Problems;
        Assert.Equal([("shop.prices.contingency", "-0.1"), ("shop.prices.payments", "0.5")], problems.Select(p => (p.Path, p.Found)));
    }

    [Fact]
    public void Payments_always_add_up_to_the_price() => Gen.Select(Gen.Decimal[0, 2], Gen.Decimal[0, 1], Gen.Int[1, 99], Gen.Decimal[0, 500]).Sample((markUp, tax, first, rate) =>
    {
        var job = Priced(Rules with { MarkUp = markUp, Tax = tax, RoundUpTo = 0, Payments = [new("first", first / 100m), new("last", 1 - (first / 100m))] });
        var estimate = Make(job with { Shop = job.Shop with { HourlyRate = rate } });
        Assert.Equal(estimate.Gross, estimate.Payments.Sum(p => p.Amount));
        Assert.Equal(estimate.Net, estimate.Cost + estimate.MarkUp + estimate.Contingency + estimate.Rounding);
        Assert.Equal(estimate.Gross, MoneyText.Round(estimate.Gross, "EUR"));
    });

    // Forms of the Unicode locale data, with spaces that do not break; ISO 4217 for the places: none for the yen, three for the Kuwaiti dinar.
    [Theory]
    [InlineData("EUR", "de-DE", "1.234,50\u00a0€")]
    [InlineData("USD", "en-US", "$1,234.50")]
    [InlineData("CHF", "en-US", "CHF\u00a01,234.50")]
    [InlineData("JPY", "en-US", "JPY\u00a01,235")]
    [InlineData("KWD", "en-GB", "KWD\u00a01,234.500")]
    public void Money_is_written_by_currency_and_culture(string currency, string culture, string text) =>
        Assert.Equal(text, MoneyText.Write(MoneyText.Round(1234.5m, currency), currency, CultureInfo.GetCultureInfo(culture)));

    // What an English paper says, by the same sources; the euro as in Ireland.
    [Theory]
    [InlineData("USD", "$10,833.75")]
    [InlineData("GBP", "£10,833.75")]
    [InlineData("EUR", "€10,833.75")]
    [InlineData("JPY", "JPY\u00a010,834")]
    [InlineData("CAD", "CAD\u00a010,833.75")]
    public void Money_on_paper_is_in_the_english_of_its_currency(string currency, string text) =>
        Assert.Equal(text, MoneyText.Write(MoneyText.Round(10833.75m, currency), currency, MoneyText.English(currency)));

    private static Job Priced(PriceRules rules)
    {
        var job = SampleShop.Job(1, SampleShop.Stations(3200));
        return job with { Currency = "EUR", Shop = job.Shop with { HourlyRate = 60, Prices = rules } };
    }

    private static (Model.Parts.Casework Casework, CutPlan Cutting) Plan()
    {
        var (casework, cutting) = SampleShop.Splices(2, 2500);
        var sheets = Enumerable.Range(1, 3).Select(i => new SheetLayout
        {
            Id = "S" + i,
            Stock = "p1",
            Material = "panel",
            Length = SampleShop.Mm(2440),
            Width = SampleShop.Mm(1220),
            Trim = Length.Zero,
            Kerf = Length.Zero,
            Cost = 80,
            Bought = true,
            Cuts = [],
        });
        return (casework, cutting with { Sheets = sheets.ToValueList() });
    }

    private static Estimate Make(Job job)
    {
        var outcome = PricingStage.Price(job, Plan().Casework, Plan().Cutting);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }
}

using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Pricing;

/// <summary>
/// Prices a planned job in decimal arithmetic: what is bought, hours by stage and rate, overhead, mark-up, contingency, rounding, tax and
/// stages of payment. Every line is rounded to the smallest coin, and sums are those of the rounded lines, so that a client can add them up.
/// </summary>
public static class PricingStage
{
    /// <summary>Prices a job.</summary>
    /// <returns>The estimate, or what is wrong with the price rules.</returns>
    public static Outcome<Estimate> Price(Job job, Casework casework, CutPlan cutting)
    {
        var problems = PriceProblems.Of(job).ToList();
        if (problems.Count > 0)
            return Outcome<Estimate>.Failed(problems);
        var prices = job.Shop.Prices;
        var hours = LabourTime.Of(job, casework, cutting);
        var missing = new List<Finding>();
        var lines = Material(job, cutting).ToList();
        lines.AddRange(Hardware(job, casework, cutting, missing));
        lines.AddRange(Consumables(job, casework, cutting, lines.Where(l => l.Group == CostGroup.Material).Sum(l => l.Amount), missing));
        lines.AddRange(Finish(job, casework));
        var bought = lines.Sum(l => l.Amount);
        var labour = Labour(job, hours).ToList();
        lines.AddRange(labour);
        lines.AddRange(Delivery(job, casework, cutting));
        var overhead = Coin(job, labour.Sum(l => l.Amount) * prices.Overhead);
        var markUp = Coin(job, bought * prices.MarkUp);
        var cost = lines.Sum(l => l.Amount) + overhead;
        var contingency = Coin(job, cost * prices.Contingency);
        var exact = cost + markUp + contingency;
        var net = prices.RoundUpTo > 0 ? Math.Ceiling(exact / prices.RoundUpTo) * prices.RoundUpTo : exact;
        var tax = Coin(job, net * (prices.Tax ?? 0));
        var estimate = new Estimate
        {
            Currency = job.Currency,
            Lines = lines.ToValueList(),
            Hours = hours,
            Overhead = overhead,
            MarkUp = markUp,
            Contingency = contingency,
            Rounding = net - exact,
            Net = net,
            Tax = tax,
            Gross = net + tax,
            Payments = Payments(job, net + tax).ToValueList(),
        };
        return Outcome<Estimate>.Of(estimate with { Findings = missing.Concat(PriceFindings.Of(job, estimate)).ToValueList() });
    }

    private static IEnumerable<EstimateLine> Material(Job job, CutPlan cutting)
    {
        var sheets = cutting.Sheets.Where(s => s.Bought).Select(s => (s.Stock, s.Material, s.Cost));
        var boards = cutting.Boards.Where(b => b.Bought).Select(b => (b.Stock, b.Material, b.Cost));
        foreach (var group in sheets.Select(s => (Piece: s, Unit: "sheet")).Concat(boards.Select(b => (Piece: b, Unit: "board"))).GroupBy(x => (x.Piece.Stock, x.Piece.Cost, x.Unit)))
        {
            var name = job.Stock.Material(group.First().Piece.Material).Name;
            yield return Line(job, CostGroup.Material, $"{name} ({group.Key.Stock})", group.Count(), group.Key.Unit, group.Key.Cost, "whole sheets and boards, as bought");
        }
    }

    private static IEnumerable<EstimateLine> Hardware(Job job, Casework casework, CutPlan cutting, List<Finding> missing)
    {
        foreach (var kind in Enum.GetValues<HardwareKind>())
        {
            var (count, why) = Quantities.Hardware(kind, job, casework, cutting);
            if (count == 0)
                continue;
            if (job.Shop.Prices.Hardware.FirstOrDefault(h => h.Kind == kind) is { } price)
                yield return Line(job, CostGroup.Hardware, Name(kind), count, "piece", price.Each, why);
            else
                missing.Add(PriceFindings.NotStated(Name(kind), string.Create(CultureInfo.InvariantCulture, $"{count} pieces")));
        }
    }

    private static IEnumerable<EstimateLine> Consumables(Job job, Casework casework, CutPlan cutting, decimal material, List<Finding> missing)
    {
        var glue = Quantities.GlueLitres(casework, cutting);
        if (glue > 0 && job.Shop.Prices.GlueLitre is { } litre)
            yield return Line(job, CostGroup.Consumables, "glue", glue, "litre", litre, "20 ml a splice, 10 ml an end of a housed panel, 15 ml a metre of nosing");
        else if (glue > 0)
            missing.Add(PriceFindings.NotStated("glue", string.Create(CultureInfo.InvariantCulture, $"{glue:0.0##} litres")));
        if (job.Shop.Prices.Consumables > 0 && material > 0)
            yield return Line(job, CostGroup.Consumables, "abrasives, screws, tape", job.Shop.Prices.Consumables, "of material", material, "share of bought material");
    }

    private static IEnumerable<EstimateLine> Finish(Job job, Casework casework)
    {
        var area = Quantities.FinishArea(casework);
        foreach (var coat in job.Shop.Finish?.Coats ?? [])
        {
            var why = string.Create(CultureInfo.InvariantCulture, $"{area:0.00} m² of faces that show, {coat.Coverage:0.##} m² a litre");
            yield return Line(job, CostGroup.Finish, coat.Name, Math.Round(area / coat.Coverage, 3, MidpointRounding.AwayFromZero), "litre", coat.LitrePrice, why);
        }
    }

    private static IEnumerable<EstimateLine> Labour(Job job, ValueList<PhaseHours> hours)
    {
        foreach (var phase in hours)
        {
            var rate = job.Shop.Prices.Rates.FirstOrDefault(r => r.Phase == phase.Phase)?.Rate ?? job.Shop.HourlyRate;
            yield return Line(job, CostGroup.Labour, Name(phase.Phase), Math.Round(phase.Hours, 2, MidpointRounding.AwayFromZero), "hour", rate, "tasks of the timetable, every pair of hands counted");
        }
    }

    private static IEnumerable<EstimateLine> Delivery(Job job, Casework casework, CutPlan cutting)
    {
        var prices = job.Shop.Prices;
        if (prices is { DeliveryLoad: 0, SiteDay: 0 })
            yield break;
        var (loads, days) = LabourTime.OnSite(job, casework, cutting);
        if (prices.DeliveryLoad > 0)
            yield return Line(job, CostGroup.Delivery, "loads to the site", loads, "load", prices.DeliveryLoad, "cases delivered together");
        if (prices.SiteDay > 0)
            yield return Line(job, CostGroup.Delivery, "days on site", days, "day", prices.SiteDay, "hours on site by the working day");
    }

    private static IEnumerable<Payment> Payments(Job job, decimal gross)
    {
        var left = gross;
        var stages = job.Shop.Prices.Payments;
        for (var i = 0; i < stages.Count; i++)
        {
            var amount = i + 1 == stages.Count ? left : Coin(job, gross * stages[i].Share);
            left -= amount;
            yield return new(stages[i].Name, stages[i].Share, amount);
        }
    }

    private static EstimateLine Line(Job job, CostGroup group, string name, decimal quantity, string unit, decimal each, string why) =>
        new(group, name, quantity, unit, each, Coin(job, quantity * each), why);

    private static decimal Coin(Job job, decimal amount) => MoneyText.Round(amount, job.Currency);

    private static string Name(HardwareKind kind) => kind switch
    {
        HardwareKind.ShelfPin => "shelf pins",
        HardwareKind.LooseTenon => "loose tenons",
        HardwareKind.DrawConnector => "draw connectors",
        HardwareKind.WallFixing => "wall fixings",
        HardwareKind.JoiningScrew => "joining screws",
        HardwareKind.Hinge => "concealed hinges with plates",
        HardwareKind.SlidePair => "pairs of drawer slides",
        HardwareKind.Pull => "pulls",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    private static string Name(WorkPhase phase) => phase switch
    {
        WorkPhase.Breakdown => "unloading and sawing",
        WorkPhase.Splicing => "splicing",
        WorkPhase.Joinery => "dados, grooves and rabbets",
        WorkPhase.Drilling => "pin rows",
        WorkPhase.Edges => "nosings and face frames",
        WorkPhase.Assembly => "assembly",
        WorkPhase.Sanding => "sanding",
        WorkPhase.Finishing => "finishing",
        WorkPhase.Delivery => "loading and carrying in",
        WorkPhase.Install => "work on site",
        _ => throw new ArgumentOutOfRangeException(nameof(phase)),
    };
}

using System.Globalization;
using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>A line of the buying list.</summary>
/// <param name="Kind">Sheet, board or hardware.</param>
/// <param name="Stock">Id of the stock; empty for hardware.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Length">Length of one; null for hardware.</param>
/// <param name="Width">Width of one; null for hardware.</param>
/// <param name="Thickness">Thickness as sold; null for hardware.</param>
/// <param name="Buy">How many to buy.</param>
/// <param name="OnHand">How many to take from the rack.</param>
/// <param name="Price">Price of one; null when the job does not say.</param>
/// <param name="Cost">What it comes to; null when the job does not say.</param>
/// <param name="LeadDays">Working days from order to delivery; null when the job does not say.</param>
public sealed record BuyingLine(
    string Kind, string Stock, string Name, Length? Length, Length? Width, Length? Thickness, int Buy, int OnHand, decimal? Price, decimal? Cost, int? LeadDays)
{
    /// <summary>Last day to order it by the timetable; null without one.</summary>
    public DateOnly? OrderBy { get; init; }
}

/// <summary>What to buy and what to take from the rack.</summary>
public static class BuyingList
{
    private const string Supply = "Fixings, glue, finish";

    private static readonly Lettering Quantity = Lettering.Figure.Sized(16);

    /// <summary>The lines: sheets, boards, hardware of the splices, then what else the price counts: pins, fixings, glue, finish.</summary>
    public static ValueList<BuyingLine> Lines(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var orders = (plan.Schedule?.Orders ?? []).ToDictionary(o => o.Stock, o => o.OrderBy, StringComparer.Ordinal);
        return Sheets(plan).Concat(Boards(plan)).Concat(Hardware(plan)).Concat(FrontHardware(plan)).Concat(Supplies(plan))
            .Select(l => l.Buy > 0 && orders.TryGetValue(l.Stock, out var day) ? l with { OrderBy = day } : l)
            .ToValueList();
    }

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        var figures = new Figures(plan.Job.Units);
        var flow = Drafting.Flow(
            DocumentKind.BuyingList, settings, landscape: true, new("Buying list", "exact numbers: add spare as the stock deserves; measure the thickness when it comes"),
            "What to buy and what to take from the rack.", figures.FootNote);
        var lines = Lines(plan);
        Table.Draw(flow, Columns(plan), [.. Rows(lines, figures, plan.Job.Currency)]);
        flow.Gap(4);
        flow.Paragraph($"To buy: {Words.Money(lines.Sum(line => line.Cost ?? 0), plan.Job.Currency)}, prices as the job states them; what has no price is not in it.", Lettering.BodyStrong);
        if (plan.Cutting.Sheets.Count(s => s is { Sawn: true, LeftOver: null }) is > 0 and var sawn)
            flow.Paragraph($"{Words.Count(sawn, "sheet is", "sheets are")} cut already and not in this list; what they left over is used first.");
        if (lines.Any(line => line.OrderBy is not null))
            flow.Paragraph("Order by: the last day on which the timetable holds with the lead times stated. Ask the dealer for them again.");
        return flow.Finish();
    }

    private static Column[] Columns(Plan plan) =>
    [
        new("Got", Fixed: 8),
        new("Buy", Fixed: 13, Anchor: Anchor.End, Lettering: Quantity),
        new("From the rack", Fixed: 16, Anchor: Anchor.End, Lettering: Quantity),
        new("What", 1.6, Lettering: Lettering.Body.Sized(12)),
        new("Size", 1.2, Lettering: Lettering.Figure.Sized(13)),
        new("Stock", 0.7),
        new("Each " + plan.Job.Currency, Fixed: 24, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Comes to", Fixed: 26, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Days", Fixed: 10, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Order by", Fixed: 22, Lettering: Lettering.Figure),
    ];

    private static IEnumerable<Row> Rows(ValueList<BuyingLine> lines, Figures figures, string currency)
    {
        foreach (var kind in lines.GroupBy(line => line.Kind, StringComparer.Ordinal))
        {
            yield return Row.Heading(kind.Key);
            foreach (var line in kind)
                yield return RowOf(line, figures, currency);
        }
    }

    private static Row RowOf(BuyingLine line, Figures figures, string currency)
    {
        Length[] sizes = [.. new[] { line.Length, line.Width, line.Thickness }.OfType<Length>()];
        return Row.Of(
            Cell.TickBox,
            new(Number(line.Buy)),
            new(Number(line.OnHand)),
            new(line.Name),
            new(figures.Size(sizes), Second: figures.OtherSize(sizes)),
            new(line.Stock),
            new(line.Price is { } each ? Words.Amount(each, currency) : ""),
            new(line.Cost is { } cost ? Words.Amount(cost, currency) : ""),
            new(line.Buy > 0 && line.LeadDays is { } days ? Number(days) : ""),
            new(line.OrderBy is { } day ? day.ToString("ddd d MMM", CultureInfo.InvariantCulture) : ""));
    }

    private static string Number(int number) => number == 0 ? "–" : number.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<BuyingLine> Sheets(Plan plan)
    {
        foreach (var stock in plan.Job.Stock.Sheets)
        {
            var used = plan.Cutting.Sheets.Where(sheet => sheet.Stock == stock.Id && sheet is { Sawn: false, LeftOver: null }).ToList();
            if (used.Count == 0)
                continue;
            var material = plan.Job.Stock.Material(stock.Material);
            var buy = used.Count(sheet => sheet.Bought);
            yield return new("Sheets", stock.Id, material.Name, stock.Length, stock.Width, material.Nominal, buy, used.Count - buy, stock.Price, used.Sum(sheet => sheet.Cost), stock.LeadDays);
        }
    }

    private static IEnumerable<BuyingLine> Boards(Plan plan)
    {
        foreach (var stock in plan.Job.Stock.Boards)
        {
            var used = plan.Cutting.Boards.Where(board => board.Stock == stock.Id && board is { Sawn: false, LeftOver: null }).ToList();
            if (used.Count == 0)
                continue;
            var material = plan.Job.Stock.Material(stock.Material);
            var buy = used.Count(board => board.Bought);
            yield return new("Boards", stock.Id, material.Name, stock.Length, material.BoardWidth, material.Nominal, buy, used.Count - buy, stock.Price, used.Sum(board => board.Cost), stock.LeadDays);
        }
    }

    /// <summary>What the price counts beside stock and splices. Litres are rounded up to whole ones, as they are sold.</summary>
    private static IEnumerable<BuyingLine> Supplies(Plan plan)
    {
        string[] listed = ["loose tenons", "draw connectors", "concealed hinges with plates", "pairs of drawer slides", "pulls"];
        foreach (var line in (plan.Estimate?.Lines ?? []).Where(l => l.Group is CostGroup.Hardware or CostGroup.Finish && !listed.Contains(l.Name, StringComparer.Ordinal)))
            yield return new(Supply, "", line.Unit == "litre" ? $"{line.Name}, litres" : line.Name, null, null, null, (int)Math.Ceiling(line.Quantity), 0, line.Each, Cost(plan, (int)Math.Ceiling(line.Quantity), line.Each), null);
        foreach (var line in (plan.Estimate?.Lines ?? []).Where(l => l.Group == CostGroup.Consumables && l.Unit == "litre"))
            yield return new(Supply, "", line.Name + ", litres", null, null, null, (int)Math.Ceiling(line.Quantity), 0, line.Each, Cost(plan, (int)Math.Ceiling(line.Quantity), line.Each), null);
    }

    private static IEnumerable<BuyingLine> Hardware(Plan plan)
    {
        var tenons = plan.Cutting.Splices.SelectMany(splice => splice.Tenons)
            .GroupBy(tenon => (tenon.Thickness, tenon.Width, tenon.Length))
            .OrderBy(group => group.Key.Thickness).ThenBy(group => group.Key.Width).ThenBy(group => group.Key.Length);
        foreach (var group in tenons)
            yield return new("Hardware of the splices", "", "loose tenon", group.Key.Length, group.Key.Width, group.Key.Thickness, group.Count(), 0, Each(plan, HardwareKind.LooseTenon), Cost(plan, group.Count(), Each(plan, HardwareKind.LooseTenon)), null);
        var connectors = plan.Cutting.Splices.Sum(splice => splice.Connectors.Count);
        if (connectors > 0)
            yield return new("Hardware of the splices", "", "draw connector", null, null, null, connectors, 0, Each(plan, HardwareKind.DrawConnector), Cost(plan, connectors, Each(plan, HardwareKind.DrawConnector)), null);
    }

    private static decimal? Each(Plan plan, HardwareKind kind) => plan.Job.Shop.Prices.Hardware.FirstOrDefault(h => h.Kind == kind)?.Each;

    /// <summary>What so many come to, as they are paid for.</summary>
    private static decimal? Cost(Plan plan, int buy, decimal? each) => each is { } price ? MoneyText.Round(buy * price, plan.Job.Currency) : null;

    private static IEnumerable<BuyingLine> FrontHardware(Plan plan)
    {
        var count = FrontHardwareCount.Of(plan.Parts);
        if (count.Hinges > 0)
            yield return Of("concealed hinge with plate", null, count.Hinges, HardwareKind.Hinge);
        foreach (var (length, pairs) in count.Slides)
            yield return Of("pair of drawer slides", length, pairs, HardwareKind.SlidePair);
        if (count.Pulls > 0)
            yield return Of("pull", null, count.Pulls, HardwareKind.Pull);

        BuyingLine Of(string name, Length? length, int buy, HardwareKind kind) =>
            new("Hardware of doors and drawers", "", name, length, null, null, buy, 0, Each(plan, kind), Cost(plan, buy, Each(plan, kind)), null);
    }
}

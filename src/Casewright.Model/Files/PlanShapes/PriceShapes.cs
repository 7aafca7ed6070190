using Casewright.Model.Files.Shapes;
using Casewright.Model.Pricing;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>The price in a plan file.</summary>
internal static class PriceShapes
{
    public static ViewShape<Estimate> Price { get; } = new ViewShape<Estimate>("price", "What the job costs and what is asked for it, in the job's currency.")
        .Text("currency", e => e.Currency, "Currency, ISO 4217.")
        .Many("lines", e => e.Lines, Line, "Lines, by group.")
        .Many("hours", e => e.Hours, Hours, "Hands-on hours by stage of the work.")
        .Decimal("overhead", e => e.Overhead, "Overhead on labour.")
        .Decimal("cost", e => e.Cost, "All lines and the overhead.")
        .Decimal("markUp", e => e.MarkUp, "Mark-up on what is bought.")
        .Decimal("contingency", e => e.Contingency, "For what goes wrong.")
        .Decimal("rounding", e => e.Rounding, "What rounding up added.")
        .Decimal("net", e => e.Net, "Price before tax.")
        .Decimal("tax", e => e.Tax, "Tax; 0 when none is stated.")
        .Decimal("gross", e => e.Gross, "Price with tax.")
        .Decimal("markUpShare", e => Math.Round(e.MarkUpShare, 6), "What is asked above the cost, as a share of the cost.")
        .Decimal("marginShare", e => Math.Round(e.MarginShare, 6), "What is asked above the cost, as a share of the price.")
        .Many("payments", e => e.Payments, Payment, "Payments; they add up to the price with tax.");

    private static ViewShape<EstimateLine> Line => new ViewShape<EstimateLine>("priceLine", "A line of the price.")
        .Choice("group", l => l.Group, "Its group.")
        .Text("name", l => l.Name, "What it is.")
        .Decimal("quantity", l => l.Quantity, "How much.")
        .Text("unit", l => l.Unit, "Unit of the quantity.")
        .Decimal("each", l => l.Each, "Price of one unit.")
        .Decimal("amount", l => l.Amount, "Quantity times price, rounded to the smallest coin.")
        .Text("why", l => l.Why, "How the quantity was computed.");

    private static ViewShape<PhaseHours> Hours => new ViewShape<PhaseHours>("phaseHours", "Hours of one stage of the work.")
        .Choice("phase", h => h.Phase, "The stage.")
        .Decimal("hours", h => Math.Round(h.Hours, 4), "Hands-on hours, every pair of hands counted.");

    private static ViewShape<Payment> Payment => new ViewShape<Payment>("payment", "A payment.")
        .Text("name", p => p.Name, "When it falls due, in words.")
        .Decimal("share", p => p.Share, "Its share of the price.")
        .Decimal("amount", p => p.Amount, "The sum, tax included.");
}

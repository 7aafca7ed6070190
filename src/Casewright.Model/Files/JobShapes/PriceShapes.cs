using Casewright.Model.Files.Shapes;
using Casewright.Model.Pricing;
using Casewright.Model.Timeline;

namespace Casewright.Model.Files.JobShapes;

/// <summary>How the shop prices a job, in a job file.</summary>
internal static class PriceShapes
{
    private static readonly PriceRules s_rules = new();

    private static ChoiceShape<HardwareKind> HardwareKinds { get; } = ChoiceShape.Of(
        "hardwareKind",
        "Hardware that is counted from the plan.",
        (HardwareKind.ShelfPin, "shelf pin"),
        (HardwareKind.LooseTenon, "loose tenon"),
        (HardwareKind.DrawConnector, "draw connector"),
        (HardwareKind.WallFixing, "fixing of a case into the wall"),
        (HardwareKind.JoiningScrew, "screw that joins a case to its neighbour"),
        (HardwareKind.Hinge, "concealed hinge with its plate"),
        (HardwareKind.SlidePair, "pair of drawer slides"),
        (HardwareKind.Pull, "pull of a door or drawer"));

    private static ChoiceShape<WorkPhase> Phases { get; } = ChoiceShape.Of(
        "workPhase",
        "A stage of the work.",
        (WorkPhase.Breakdown, "unloading and sawing"),
        (WorkPhase.Splicing, "splicing and trimming to length"),
        (WorkPhase.Joinery, "dados, grooves, rabbets, notches"),
        (WorkPhase.Drilling, "pin rows"),
        (WorkPhase.Edges, "nosings and face frames"),
        (WorkPhase.Assembly, "bases, cases, backs"),
        (WorkPhase.Sanding, "sanding"),
        (WorkPhase.Finishing, "coats"),
        (WorkPhase.Delivery, "loading, carrying in"),
        (WorkPhase.Install, "work on site"));

    private static RecordShape<HardwarePrice> Hardware { get; } = new("hardwarePrice", "Price of one piece of hardware.", f => new(
        f.Required("kind", h => h.Kind, HardwareKinds, "Which."),
        f.Required("each", h => h.Each, MoneyShape.Instance, "Price of one.")));

    private static RecordShape<PhaseRate> Rate { get; } = new("phaseRate", "An hourly rate of one stage of the work.", f => new(
        f.Required("phase", r => r.Phase, Phases, "The stage."),
        f.Required("rate", r => r.Rate, MoneyShape.Instance, "Price of an hour.")));

    private static RecordShape<PaymentStage> Payment { get; } = new("payment", "A part of the price that falls due at one moment.", f => new(
        f.Required("name", p => p.Name, TextShape.Words, "When, such as with the order."),
        f.Required("share", p => p.Share, DecimalShape.Between(0, 1), "Share of the price; the last stage takes what is left.")));

    public static RecordShape<PriceRules> Prices { get; } = new(
        "prices",
        "How the job is priced. Shares are fractions of 1; what is left out is usual in the trade (common practice, no source).",
        f => new()
        {
            MarkUp = f.Default("markUp", p => p.MarkUp, DecimalShape.Between(-0.99m, 10), s_rules.MarkUp, "Added to bought material, hardware, consumables and finish."),
            Overhead = f.Default("overhead", p => p.Overhead, DecimalShape.Between(0, 10), s_rules.Overhead, "Overhead on labour, where it is not inside the hourly rate."),
            Consumables = f.Default("consumables", p => p.Consumables, DecimalShape.Between(0, 1), s_rules.Consumables, "Abrasives, screws, tape, as a share of material."),
            Contingency = f.Default("contingency", p => p.Contingency, DecimalShape.Between(0, 1), s_rules.Contingency, "For what goes wrong, as a share of all costs."),
            Tax = f.OptionalValue("tax", p => p.Tax, DecimalShape.Between(0, 1), "Tax on the price; left out, the price is without tax and says so."),
            RoundUpTo = f.Default("roundUpTo", p => p.RoundUpTo, MoneyShape.Instance, s_rules.RoundUpTo, "The price before tax is rounded up to a whole number of these; 0 to the smallest coin."),
            GlueLitre = f.OptionalValue("glueLitre", p => p.GlueLitre, MoneyShape.Instance, "Price of a litre of glue."),
            Hardware = f.Items("hardware", p => p.Hardware, Hardware, 0, 20, "Hardware prices, each kind once."),
            Rates = f.Items("rates", p => p.Rates, Rate, 0, 10, "Rates of single stages of the work, each once; the shop's rate holds for the others."),
            DeliveryLoad = f.Default("deliveryLoad", p => p.DeliveryLoad, MoneyShape.Instance, s_rules.DeliveryLoad, "Price of one load to the site."),
            SiteDay = f.Default("siteDay", p => p.SiteDay, MoneyShape.Instance, s_rules.SiteDay, "Price of getting to the site for one day."),
            Payments = f.Default("payments", p => p.Payments, new ListShape<PaymentStage>(Payment, 1, 12), s_rules.Payments, "Stages of payment; shares add up to 1."),
            ValidDays = f.Default("validDays", p => p.ValidDays, new CountShape(1, 366), s_rules.ValidDays, "Days for which the quote holds."),
        })
    {
        Check = (prices, spot) =>
        {
            if (prices.Payments.Sum(p => p.Share) != 1)
                spot["payments"].Fail("The stages of payment must add up to the price.", null, "shares that add up to 1");
        },
    };
}

using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Papers.Documents.Offers;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// What is offered to the client: scope, how tall pieces are made and where their lines run, what is not in it, what the price takes for
/// granted, price with tax and stages, and where to sign. What the shop pays and earns is not on it.
/// </summary>
public static class Quote
{
    private const double RowHeight = 8;

    private static readonly Length LongSheet = Length.FromMillimetres(2500);

    /// <summary>The pages; none without a price.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        if (plan.Estimate is not { } estimate)
            return [];
        var job = plan.Job;
        var date = job.Date ?? settings.Date;
        var until = date.AddDays(job.Shop.Prices.ValidDays);
        var flow = Drafting.Flow(
            DocumentKind.Quote, settings, landscape: false,
            new("Quote", (job.Client.Length > 0 ? $"for {job.Client} · " : "") + $"holds until {PageStamp.Written(until)}"),
            "What is offered, for how much, and on what terms.", $"Goes with the drawings of revision {job.Revision.ToString(CultureInfo.InvariantCulture)}.");
        flow.Paragraph(job.Name, Lettering.Title.Sized(16));
        Section(flow, "What you get", OfferWords.Scope(plan));
        Section(flow, "How tall pieces are made", OfferWords.TallPieces(plan));
        Section(flow, "When", OfferWords.Dates(plan));
        Section(flow, "What the price takes for granted", OfferWords.Assumptions(plan));
        Section(flow, "Not in it", OfferWords.Exclusions(plan));
        Price(flow, plan, estimate);
        Section(flow, "Changes", OfferWords.Changes(plan));
        Signatures.Draw(flow, "Ordered as above, with the drawings named", "client", "maker");
        return flow.Finish();
    }

    private static void Section(PageFlow flow, string title, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
            return;
        flow.Heading(title, follows: 8);
        foreach (var line in all)
            Bullet(flow, line);
    }

    private static void Bullet(PageFlow flow, string text)
    {
        const double Indent = 4;
        var lines = WordWrap.Lines(text, Lettering.Body, flow.Body.Width - Indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first) = (lines[i], i == 0);
            flow.Draw(Lettering.Body.LineHeight, (sketch, box) =>
            {
                if (first)
                    sketch.Text("–", box.Left, box.Top + Sketch.Ascent(Lettering.Body), Lettering.Body);
                sketch.Text(line, box.Left + Indent, box.Top + Sketch.Ascent(Lettering.Body), Lettering.Body);
            });
        }
    }

    private static void Price(PageFlow flow, Plan plan, Estimate estimate)
    {
        flow.Heading("Price", follows: 30);
        Column[] columns = [new("", 2, Lettering: Lettering.Body.Sized(12)), new(estimate.Currency, Fixed: 44, Anchor: Anchor.End, Lettering: Lettering.Figure.Sized(14))];
        var rows = new List<Row> { Row.Of(new("Casework, made, finished as stated, delivered and fitted"), new(Words.Amount(estimate.Net, estimate.Currency))) };
        rows.Add(plan.Job.Shop.Prices.Tax is { } tax
            ? Row.Of(new(string.Create(CultureInfo.InvariantCulture, $"Tax, {tax * 100:0.##} %")), new(Words.Amount(estimate.Tax, estimate.Currency)))
            : Row.Of(new("Tax: none stated"), new("")));
        rows.Add(Row.Of(new("Price with tax", Lettering.BodyStrong.Sized(13)), new(Words.Money(estimate.Gross, estimate.Currency), Lettering.Figure.Sized(18))));
        Table.Draw(flow, columns, rows);

        // The stages stay together: a client who turns the page for the rest overlooks them.
        flow.Heading("Payment", follows: RowHeight * (estimate.Payments.Count + 1));
        Column[] stages = [new("When", 2), new("Share", Fixed: 20, Anchor: Anchor.End, Lettering: Lettering.Figure), new(estimate.Currency, Fixed: 44, Anchor: Anchor.End, Lettering: Lettering.Figure)];
        Table.Draw(flow, stages, [.. estimate.Payments.Select((p, i) => Row.Of(
            new(i == 0 ? $"Deposit, {p.Name}" : Capital(p.Name)),
            new(string.Create(CultureInfo.InvariantCulture, $"{p.Share * 100:0.#} %")),
            new(Words.Amount(p.Amount, estimate.Currency))))]);
        if (plan.Cutting.Sheets.Any(s => s.Bought && Length.Max(s.Length, s.Width) > LongSheet))
        {
            flow.Gap(2);
            flow.Paragraph("Long sheets that are ordered for this job alone are paid with the deposit and are not taken back.", Lettering.Note);
        }
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}

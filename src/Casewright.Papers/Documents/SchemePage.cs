using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Model.Schemes;
using Casewright.Papers.Documents.Offers;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The ways to build a job on one page, for the client to choose from: what is seen, when it is ready, what it costs.</summary>
public static class SchemePage
{
    /// <summary>The pages; none when nobody compared.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schemes.Count == 0)
            return [];
        var flow = Drafting.Flow(
            DocumentKind.Schemes, settings, landscape: true,
            new("Ways to build it", "each planned in full; tick one"), "Ways to build the job, with what is seen of each and what it costs.",
            "Prices before tax. Each way has its own drawings, which go with the order.");
        var shown = plan.Schemes.Where(s => s.Feasible).ToList();
        if (shown.Count > 0)
            Table.Draw(flow, Columns(plan), [.. shown.Select(s => RowOf(plan, s))]);
        var others = plan.Schemes.Where(s => !s.Feasible).ToList();
        if (others.Count > 0)
        {
            flow.Heading("Looked at and not offered");
            foreach (var scheme in others)
                flow.Paragraph($"{Capital(SchemeNames.Of(scheme.Kind))}: {string.Join("; ", scheme.Why.Select(w => w.TrimEnd('.')))}.");
        }

        if (shown.Count > 0)
            Signatures.Draw(flow, "We choose the way that is ticked", "client", "maker");
        return flow.Finish();
    }

    private static Column[] Columns(Plan plan) =>
    [
        new("", Fixed: 8),
        new("Way", 0.9, Lettering: Lettering.BodyStrong.Sized(12)),
        new("What it is", 2),
        new("What changes", 1.2),
        new("Lines seen", Fixed: 16, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Heaviest, kg", Fixed: 18, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Ready", Fixed: 24, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Price, " + plan.Job.Currency, Fixed: 28, Anchor: Anchor.End, Lettering: Lettering.Figure.Sized(14)),
    ];

    private static Row RowOf(Plan plan, Scheme scheme)
    {
        var figures = scheme.Figures!;
        return Row.Of(
            Cell.TickBox,
            new(Capital(SchemeNames.Of(scheme.Kind))),
            new(SchemeNames.Meaning(scheme.Kind)),
            new(scheme.Changes.Count == 0 ? "as drawn" : string.Join("; ", scheme.Changes)),
            new(figures.LinesInView.ToString(CultureInfo.InvariantCulture)),
            new(figures.Heaviest.ToString("0", CultureInfo.InvariantCulture)),
            new(figures.Finish is { } finish ? PageStamp.Written(finish) : "open"),
            new(figures.Net is { } net ? Words.Money(net, "").TrimStart() : "open"));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

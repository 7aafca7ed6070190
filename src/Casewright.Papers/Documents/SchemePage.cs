using System.Globalization;
using Casewright.Engine.Checks;
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
    /// <summary>The pages; none when nobody compared, or when all ways come to the same.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var shown = Choices(plan);
        var others = plan.Schemes.Where(s => !s.Feasible).ToList();
        if (shown.Count + others.Count < 2)
            return [];
        var flow = Drafting.Flow(
            DocumentKind.Schemes, settings, landscape: true,
            new("Ways to build it", "each planned in full; tick one"), "Ways to build the job, with what is seen of each and what it costs.",
            "Prices before tax. Each way has its own drawings, which go with the order.");
        if (shown.Count > 0)
            Table.Draw(flow, Columns(plan), [.. shown.Select(s => RowOf(plan, s))]);
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

    /// <summary>The ways that can be built; of those that come to the same only the first, for they leave nothing to choose.</summary>
    private static List<Scheme> Choices(Plan plan) => [.. plan.Schemes.Where(s => s.Feasible).DistinctBy(s => s.Figures)];

    private static Column[] Columns(Plan plan) =>
    [
        new("", Fixed: 8),
        new("Way", 0.9, Lettering: Lettering.BodyStrong.Sized(12)),
        new("What it is", 2),
        new("What changes", 1.2),
        new("Lines seen", Fixed: 16, Anchor: Anchor.End, Lettering: Lettering.Figure),
        new("Heaviest", Fixed: 18, Anchor: Anchor.End, Lettering: Lettering.Figure),
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
            new(new Say(plan.Job.Units).Mass(Math.Round(figures.Heaviest))),
            new(figures.Finish is { } finish ? PageStamp.Written(finish) : "open"),
            new(figures.Net is { } net ? Words.Amount(net, plan.Job.Currency) : "open"));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

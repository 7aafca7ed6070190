using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The papers that go to the client: ways to build it where they were compared, the quote, and the drawings it names. The shop's own figures are not among them.</summary>
/// <param name="Title">Title of the file.</param>
/// <param name="Date">Date printed on every page.</param>
/// <param name="Pages">The pages; empty without a price.</param>
public sealed record ClientPapers(string Title, DateOnly Date, ValueList<Page> Pages)
{
    /// <summary>Quote and drawings of a plan.</summary>
    public static ClientPapers Of(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var quote = Quote.Pages(plan, settings);
        return Numbered(plan, settings, "Quote", quote.Count == 0 ? [] : [.. quote, .. SchemePage.Pages(plan, settings), .. Elevation.Pages(plan, settings), .. PlanAndSection.Pages(plan, settings)]);
    }

    /// <summary>The change of an order, with the drawings as they are to be.</summary>
    public static ClientPapers OfChange(Plan old, Plan plan, string why, PaperSettings settings) =>
        Numbered(plan, settings, "Change order", [.. ChangeOrder.Pages(old, plan, why, settings), .. Elevation.Pages(plan, settings)]);

    /// <summary>The ways to build a job, to choose from before there is an order; empty when nobody compared.</summary>
    public static ClientPapers OfSchemes(Plan plan, PaperSettings settings) => Numbered(plan, settings, "Ways to build it", SchemePage.Pages(plan, settings));

    /// <summary>Writes the papers as one PDF.</summary>
    public void WritePdf(Stream output) =>
        PdfRenderer.Write([.. Pages.Select(page => page.Scene)], new(Title, Title, Date.ToDateTime(TimeOnly.MinValue)), output);

    private static ClientPapers Numbered(Plan plan, PaperSettings settings, string title, IReadOnlyList<PageDraft> drafts)
    {
        var date = plan.Job.Date ?? settings.Date;
        return new($"{title}: {plan.Job.Name}", date, Pagination.Number(drafts, plan.Job.Name, plan.Job.Revision, date));
    }
}

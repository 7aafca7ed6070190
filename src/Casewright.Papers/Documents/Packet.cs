using Casewright.Model.Collections;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing.Rendering;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>All papers of a job, in order, numbered.</summary>
/// <param name="Title">Name of the job.</param>
/// <param name="Date">Date printed on every page.</param>
/// <param name="Pages">The pages.</param>
public sealed record Packet(string Title, DateOnly Date, ValueList<Page> Pages)
{
    /// <summary>Puts the packet of a plan together.</summary>
    public static Packet Of(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var rest = Documents(plan, settings);
        // The contents tell page numbers that depend on how long the cover itself is; its length does not depend on the numbers.
        var length = CoverSheet.Pages(plan, settings, Contents(rest, 1)).Count;
        var cover = CoverSheet.Pages(plan, settings, Contents(rest, length));
        var date = plan.Job.Date ?? settings.Date;
        return new(plan.Job.Name, date, Pagination.Number([.. cover, .. rest], plan.Job.Name, plan.Job.Revision, date));
    }

    /// <summary>Calculation sheets of one check, or of one finding of it, by themselves; null when the plan has none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">How it is printed.</param>
    /// <param name="check">Id of the check, such as shelf-sag.</param>
    /// <param name="subject">Id of what it looked at; null for everything, the worst in full.</param>
    public static Packet? OfCalculations(Plan plan, PaperSettings settings, string check, string? subject = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var findings = plan.Findings.Where(finding => finding.Check == check && (subject is null || finding.Subject == subject)).ToList();
        return findings.Count == 0 ? null : OfPages(plan, settings, CalculationSheets.Pages(plan, settings, findings));
    }

    /// <summary>The span tables by themselves.</summary>
    public static Packet OfSpanTables(Plan plan, PaperSettings settings) => OfPages(plan, settings, SpanTables.Pages(plan, settings));

    private static Packet OfPages(Plan plan, PaperSettings settings, ValueList<PageDraft> pages)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var date = plan.Job.Date ?? settings.Date;
        return new(plan.Job.Name, date, Pagination.Number(pages, plan.Job.Name, plan.Job.Revision, date));
    }

    /// <summary>The title of a document in the table of contents.</summary>
    public static string TitleOf(DocumentKind kind) => kind switch
    {
        DocumentKind.Cover => "Cover",
        DocumentKind.Elevation => "Elevation",
        DocumentKind.PlanAndSection => "Plan and section",
        DocumentKind.BuyingList => "Buying list",
        DocumentKind.Timetable => "Timetable",
        DocumentKind.RipSchedule => "Rip schedule",
        DocumentKind.SheetLayouts => "Sheet layouts",
        DocumentKind.BoardCuts => "Board cutting list",
        DocumentKind.SpliceCards => "Splice cards",
        DocumentKind.GlueUps => "Glue-up timetable",
        DocumentKind.StorySticks => "Story sticks",
        DocumentKind.DrillingLayouts => "Drilling layouts",
        DocumentKind.PartDrawings => "Part drawings",
        DocumentKind.AssemblySheets => "Assembly sheets",
        DocumentKind.PartList => "Part list",
        DocumentKind.FinishSchedule => "Finish schedule",
        DocumentKind.DaySheets => "Day sheets",
        DocumentKind.AccessSheet => "Getting in and up",
        DocumentKind.InstallSheet => "Install sheet",
        DocumentKind.ScribeTemplates => "Scribe templates",
        DocumentKind.Findings => "Findings",
        DocumentKind.Calculations => "Calculations",
        DocumentKind.SpanTables => "Span tables",
        DocumentKind.Labels => "Labels",
        DocumentKind.Quote => "Quote",
        DocumentKind.Schemes => "Ways to build it",
        DocumentKind.ChangeOrder => "Change order",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown document."),
    };

    /// <summary>Writes the packet as one PDF.</summary>
    public void WritePdf(Stream output) =>
        PdfRenderer.Write([.. Pages.Select(page => page.Scene)], new(Title, "Job packet", Date.ToDateTime(TimeOnly.MinValue)), output);

    private static List<PageDraft> Documents(Plan plan, PaperSettings settings) =>
    [
        .. RoomDrawings.WallPages(plan, settings),
        .. Elevation.Pages(plan, settings),
        .. RoomDrawings.PlanPages(plan, settings),
        .. PlanAndSection.Pages(plan, settings),
        .. BuyingList.Pages(plan, settings),
        .. TimetableChart.Pages(plan, settings),
        .. RipSchedule.Pages(plan, settings),
        .. SheetLayouts.Pages(plan, settings),
        .. BoardCuts.Pages(plan, settings),
        .. SpliceCards.Pages(plan, settings),
        .. GlueUpTimetable.Pages(plan, settings),
        .. StorySticks.Pages(plan, settings),
        .. DrillingLayouts.Pages(plan, settings),
        .. PartDrawings.Pages(plan, settings),
        .. AssemblySheets.Pages(plan, settings),
        .. PartList.Pages(plan, settings),
        .. FinishSchedule.Pages(plan, settings),
        .. DaySheets.Pages(plan, settings),
        .. AccessSheet.Pages(plan, settings),
        .. InstallSheet.Pages(plan, settings),
        .. ScribeTemplates.Pages(plan, settings),
        .. FindingSheet.Pages(plan, settings),
        .. settings.Calculations ? CalculationSheets.Pages(plan, settings, CalculationSheets.ToLookAt(plan)) : [],
        .. Labels.Pages(plan, settings),
    ];

    private static ValueList<ContentsLine> Contents(IReadOnlyList<PageDraft> rest, int coverPages) => rest
        .Select((draft, i) => (draft.Document, Number: i + coverPages + 1))
        .GroupBy(page => page.Document)
        .Select(group => new ContentsLine(TitleOf(group.Key), group.Min(page => page.Number), group.Max(page => page.Number)))
        .ToValueList();
}

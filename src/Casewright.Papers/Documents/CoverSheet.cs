using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>A document in the table of contents.</summary>
/// <param name="Title">Its title.</param>
/// <param name="FirstPage">Its first page.</param>
/// <param name="LastPage">Its last page.</param>
public sealed record ContentsLine(string Title, int FirstPage, int LastPage);

/// <summary>What the job comes to, what to look out for, and where to find the rest.</summary>
public static class CoverSheet
{
    private static readonly Lettering Big = new(30, FontFamily.BarlowCondensed, FontWeight.SemiBold);

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings, ValueList<ContentsLine> contents)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(contents);
        var index = new PlanIndex(plan);
        var job = plan.Job;
        var flow = Drafting.Flow(
            DocumentKind.Cover, settings, landscape: false, new(job.Name, job.Client.Length > 0 ? "job packet for " + job.Client : "job packet"), "What the job comes to.");
        DrawTally(flow, index);
        DrawMaterials(flow, index);
        DrawFindings(flow, index);
        DrawContents(flow, contents);
        DrawCautions(flow);
        return flow.Finish();
    }

    private static void DrawTally(PageFlow flow, PlanIndex index)
    {
        var tally = Tally(index).ToList();
        flow.Gap(2);
        flow.Draw(22, (sketch, box) =>
        {
            for (var i = 0; i < tally.Count; i++)
                DrawFigure(sketch, box.Column(i, tally.Count, 4), tally[i].Figure, tally[i].Noun, tally[i].Note);
        });
    }

    private static void DrawFigure(Sketch sketch, Box box, string figure, string noun, string note)
    {
        var lettering = Fitting.Shrunk(figure, Big, box.Width, 14);
        sketch.Text(figure, box.Left, box.Top + 9, lettering);
        sketch.Text(Fitting.Cut(noun, Lettering.BodyStrong, box.Width), box.Left, box.Top + 14.5, Lettering.BodyStrong);
        sketch.Text(Fitting.Cut(note, Lettering.Small, box.Width), box.Left, box.Top + 19, Lettering.Small);
    }

    private static IEnumerable<(string Figure, string Noun, string Note)> Tally(PlanIndex index)
    {
        var cutting = index.Plan.Cutting;
        yield return (Number(cutting.Sheets.Count), cutting.Sheets.Count == 1 ? "sheet" : "sheets", BoundWords(cutting.Bounds));
        yield return (Number(cutting.Splices.Count), cutting.Splices.Count == 1 ? "splice" : "splices", SightWords(cutting));
        yield return (Number(index.Plan.Parts.Count), "parts", Words.Count(cutting.Pieces.Count, "piece", "pieces"));
        yield return (Number(index.Plan.Cases.Count), index.Plan.Cases.Count == 1 ? "case" : "cases", Words.Count(cutting.Boards.Count, "board", "boards"));
        yield return (Words.Money(cutting.ToBuy, index.Plan.Job.Currency), "stock to buy", "sheets and boards");
    }

    private static string BoundWords(CutBounds bounds) => bounds.Sheets <= bounds.SheetsLowerBound
        ? "none fewer possible"
        : string.Create(CultureInfo.InvariantCulture, $"proven: at least {bounds.SheetsLowerBound}");

    private static string SightWords(CutPlan cutting)
    {
        var lines = cutting.Splices.Select(splice => splice.SightLine).Where(line => line is not null).Distinct().Count();
        return lines == 0 ? "no sight line" : Words.Count(lines, "sight line", "sight lines");
    }

    private static void DrawMaterials(PageFlow flow, PlanIndex index)
    {
        if (index.Plan.Cutting.Materials.Count == 0)
            return;
        flow.Heading("Stock");
        Column[] columns =
        [
            new("Material", 2),
            new("Used", 0.6, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Proven", 1.6),
            new("To buy " + index.Plan.Job.Currency, 1, Anchor: Anchor.End, Lettering: Lettering.Figure),
        ];
        Table.Draw(flow, columns, [.. index.Plan.Cutting.Materials.Select(line => MaterialRow(index, line))]);
    }

    private static Row MaterialRow(PlanIndex index, MaterialBounds line)
    {
        var material = index.Material(line.Material);
        var cutting = index.Plan.Cutting;
        var cost = material.IsBoard
            ? cutting.Boards.Where(board => board.Material == line.Material && !board.Sawn).Sum(board => board.Cost)
            : cutting.Sheets.Where(sheet => sheet.Material == line.Material && !sheet.Sawn).Sum(sheet => sheet.Cost);
        var one = material.IsBoard ? "board" : "sheet";
        return Row.Of(new(material.Name), new(Words.Count(line.Bounds.Sheets, one, one + "s")), new(BoundWords(line.Bounds)), new(Words.Amount(cost, index.Plan.Job.Currency)));
    }

    private static void DrawFindings(PageFlow flow, PlanIndex index)
    {
        var findings = index.Plan.Findings;
        var figures = new FindingFigures(index.Plan.Job.Units);
        int Count(Severity severity) => findings.Count(finding => finding.Severity == severity);
        flow.Heading("Before you cut");
        flow.Paragraph($"{Words.Count(Count(Severity.Stop), "stop", "stops")}, {Words.Count(Count(Severity.Caution), "caution", "cautions")}, {Count(Severity.NotChecked)} not checked for want of an input, {Words.Count(Count(Severity.Pass), "pass", "passes")}.");
        flow.Gap(1);
        foreach (var marked in index.Marked)
            DrawFinding(flow, figures, marked.Worst with { Subject = marked.Subjects }, marked.Number.ToString(CultureInfo.InvariantCulture));
        foreach (var group in findings.Where(finding => finding.Severity == Severity.NotChecked).GroupBy(finding => (finding.Check, finding.Advice)))
            DrawFinding(flow, figures, Together(group), "");
    }

    private static Finding Together(IEnumerable<Finding> group)
    {
        var list = group.ToList();
        return list.Count == 1 ? list[0] : list[0] with { Subject = $"{list[0].Subject} and {Words.Count(list.Count - 1, "other", "others")}" };
    }

    private static void DrawFinding(PageFlow flow, FindingFigures figures, Finding finding, string number)
    {
        const double Indent = 14;
        var value = figures.Against(finding);
        var text = $"{finding.Subject}: {finding.Message}{(value.Length > 0 ? $" ({value})" : "")}{(finding.Advice.Length > 0 ? " " + finding.Advice : "")}";
        var lines = WordWrap.Lines(text, Lettering.Body, flow.Body.Width - Indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first) = (lines[i], i == 0);
            flow.Draw(Lettering.Body.LineHeight, (sketch, box) =>
            {
                if (first)
                {
                    FindingSheet.DrawSign(sketch, finding.Severity, box.Left + 2.6, box.Top + 2.5, 4.2);
                    sketch.Text(number, box.Left + 12, box.Top + Sketch.Ascent(Lettering.Body), Lettering.Figure, Anchor.End);
                }

                sketch.Text(line, box.Left + Indent, box.Top + Sketch.Ascent(Lettering.Body), Lettering.Body);
            });
        }

        flow.Gap(1.2);
    }

    private static void DrawContents(PageFlow flow, ValueList<ContentsLine> contents)
    {
        if (contents.Count == 0)
            return;
        flow.Heading("In this packet");
        foreach (var line in contents)
        {
            var pages = line.FirstPage == line.LastPage ? $"{line.FirstPage}" : string.Create(CultureInfo.InvariantCulture, $"{line.FirstPage} to {line.LastPage}");
            flow.Draw(5.4, (sketch, box) =>
            {
                sketch.Text(line.Title, box.Left, box.Top + 4, Lettering.Body.Sized(11));
                sketch.Text(pages, box.Left + 90, box.Top + 4, Lettering.Figure, Anchor.End);
                var from = box.Left + TextLayout.Width(line.Title, Lettering.Body.Sized(11)) + 2;
                sketch.Line(from, box.Top + 4, box.Left + 90 - TextLayout.Width(pages, Lettering.Figure) - 2, box.Top + 4, new(0.2, Tone.Hairline, Dash.Dotted));
            });
        }
    }

    private static void DrawCautions(PageFlow flow)
    {
        flow.Heading("The work");
        flow.Paragraph(
            "Guards, eyes, ears, lungs: wood dust harms, so use extraction and a mask. Two people for full sheets, long parts and tall cases. "
            + "Never crosscut a strip against the rip fence without a stand-off block. Keep tall cases from tipping until they are fixed to the structure. "
            + "Look for wires and pipes before drilling into a wall. Read the glue's and finish's own sheets. "
            + "Local codes and licensed trades decide where they differ from these papers.",
            Lettering.Body.Sized(10));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

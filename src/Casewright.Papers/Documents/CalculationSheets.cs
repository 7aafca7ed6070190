using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// One sheet for each check: what it looks at, formula, figures, result against limit, the shop's limits beside the usual ones, source
/// with what stands behind it, advice. The finding farthest beyond its limit is shown in full, the others in a table.
/// </summary>
public static class CalculationSheets
{
    /// <summary>What stands at the end of every sheet.</summary>
    public const string NoPermit = "A check is arithmetic, not a permit. Local codes, product rules, structural engineers and licensed trades come first.";

    private static readonly Lettering Formula = new(13, Weight: FontWeight.Medium);

    /// <summary>Stops and cautions of a plan.</summary>
    public static ValueList<Finding> ToLookAt(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Findings.Where(finding => finding.Severity is Severity.Stop or Severity.Caution).ToValueList();
    }

    /// <summary>The pages for some findings, check by check in their order.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings, IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return findings.GroupBy(finding => finding.Check, StringComparer.Ordinal).SelectMany(group => Sheet(plan, settings, [.. group])).ToValueList();
    }

    /// <summary>The finding shown in full: the gravest, and of those the farthest beyond its limit.</summary>
    public static Finding Foremost(IEnumerable<Finding> findings)
    {
        var all = findings.ToList();
        var gravest = all.Max(finding => Rank(finding.Severity));
        return new MarkedFinding(1, all.Where(finding => Rank(finding.Severity) == gravest).ToValueList()).Worst;
    }

    private static int Rank(Severity severity) => severity == Severity.NotChecked ? -1 : (int)severity;

    private static ValueList<PageDraft> Sheet(Plan plan, PaperSettings settings, IReadOnlyList<Finding> findings)
    {
        var finding = Foremost(findings);
        var sheet = CheckCatalogue.All.Select(check => check.Sheet).FirstOrDefault(each => each.Id == finding.Check);
        var name = char.ToUpperInvariant(finding.Check[0]) + finding.Check[1..].Replace('-', ' ');
        var flow = Drafting.Flow(
            DocumentKind.Calculations, settings, landscape: false, new("Calculation: " + name, "formula, figures, result, limit and source"),
            $"How {finding.Check} was reckoned.");
        Headline(flow, finding);
        if (sheet is not null)
            flow.Paragraph("Looks at: " + sheet.LooksAt);
        if (finding.Formula.Length > 0)
        {
            flow.Heading("Formula");
            flow.Paragraph(finding.Formula, Formula);
        }

        var figures = new FindingFigures(plan.Job.Units);
        Inputs(flow, figures, finding);
        Result(flow, figures, finding);
        Limits(flow, figures, plan, sheet);
        flow.Heading("Source");
        flow.Paragraph($"{finding.Source}. Standing: {Words.Of(finding.Standing)}.");
        if (finding.Advice.Length > 0)
        {
            flow.Heading("What would mend it");
            flow.Paragraph(finding.Advice);
        }

        Others(flow, figures, findings, finding);
        flow.Gap(3);
        flow.Paragraph(NoPermit, Lettering.BodyStrong);
        return flow.Finish();
    }

    private static void Headline(PageFlow flow, Finding finding)
    {
        const double Indent = 9;
        var lines = WordWrap.Lines($"{finding.Subject}: {finding.Message}", Lettering.Heading, flow.Body.Width - Indent);
        flow.Draw((lines.Count * Lettering.Heading.LineHeight) + 2, (sketch, box) =>
        {
            FindingSheet.DrawSign(sketch, finding.Severity, box.Left + 3, box.Top + 3, 5);
            sketch.Paragraph($"{finding.Subject}: {finding.Message}", box.Left + Indent, box.Top, box.Width - Indent, Lettering.Heading);
        });
    }

    private static void Inputs(PageFlow flow, FindingFigures figures, Finding finding)
    {
        var inputs = finding.Inputs.Where(input => !input.Name.StartsWith("limit: ", StringComparison.Ordinal)).ToList();
        if (inputs.Count == 0)
            return;
        flow.Heading("What went in");
        Column[] columns = [new("Figure", 1.2), new("Value", 1.6, Lettering: Lettering.Figure), new("Unit", Fixed: 24)];
        Table.Draw(flow, columns, [.. inputs.Select(input => Row.Of(new(input.Name), new(figures.Figures(input), Text(input.Value)), new(figures.Unit(input.Unit))))]);
    }

    // Words in the lettering of words, figures in that of figures.
    private static Lettering? Text(string value) => value.Any(char.IsLetter) ? Lettering.Body : null;

    private static void Result(PageFlow flow, FindingFigures figures, Finding finding)
    {
        if (finding.Value is not { } value)
            return;
        flow.Heading("Result");
        Column[] columns = [new("", 1.2), new("Value", 1.6, Lettering: Lettering.Figure.Sized(15)), new("Unit", Fixed: 24)];
        var rows = new List<Row> { Row.Of(new("reckoned", Lettering.BodyStrong), new(Words.Number(figures.Value(value, finding.Unit))), new(figures.Unit(finding.Unit))) };
        if (finding.Limit is { } limit)
            rows.Add(Row.Of(new("held to", Lettering.BodyStrong), new(Words.Number(figures.Value(limit, finding.Unit))), new(figures.Unit(finding.Unit))));
        rows.Add(Row.Of(new("so", Lettering.BodyStrong), new(Words.Of(finding.Severity), Lettering.BodyStrong), Cell.Empty));
        Table.Draw(flow, columns, rows);
    }

    private static void Limits(PageFlow flow, FindingFigures figures, Plan plan, CheckSheet? sheet)
    {
        if (sheet is null || sheet.Limits.Count == 0)
            return;
        flow.Heading("Limits that the shop may edit");
        Column[] columns = [new("Limit", 1.4), new("This shop", 0.7, Lettering: Lettering.Figure), new("Usual", 0.7, Lettering: Lettering.Figure), new("Unit", Fixed: 14), new("Where the usual value comes from", 2.2)];
        Table.Draw(flow, columns, [.. sheet.Limits.Select(limit => Row.Of(
            new(limit.Name), new(Words.Number(figures.Value(limit.Setting(plan.Job.Shop.Checks), limit.Unit))), new(Words.Number(figures.Value(limit.Usual, limit.Unit))), new(figures.Unit(limit.Unit)),
            new(Words.Sourced(limit.Source, limit.Standing))))]);
    }

    private static void Others(PageFlow flow, FindingFigures figures, IReadOnlyList<Finding> findings, Finding shown)
    {
        var others = FindingGroup.Of(findings.Where(finding => finding != shown));
        if (others.Count == 0)
            return;
        flow.Heading("Elsewhere in this plan");
        Column[] columns = [new("", Fixed: 7), new("Subjects", 2), new("Result against limit", 1.2, Lettering: Lettering.Figure), new("Found", 2.4)];
        Table.Draw(flow, columns, [.. others.Select(group => Row.Of(
            new("", Drawing: (sketch, box) => FindingSheet.DrawSign(sketch, group.First.Severity, box.Left + 3, box.Top + 2, 4.2)),
            new(NameList.Of(group.Subjects)),
            new(figures.Against(group.First)),
            new(group.First.Message)))]);
    }
}

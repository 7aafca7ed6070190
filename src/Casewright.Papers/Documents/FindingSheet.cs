using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Every finding with its number, limit, formula, inputs and source.</summary>
public static class FindingSheet
{
    /// <summary>The pages; none when nothing was found.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Findings.Count == 0)
            return [];
        var index = new PlanIndex(plan);
        var flow = Drafting.Flow(
            DocumentKind.Findings, settings, landscape: false, new("Findings", "what was checked, against what, and where the figures come from"), "Every finding with its source.");
        var figures = new FindingFigures(plan.Job.Units);
        foreach (var marked in index.Marked)
            Draw(flow, figures, marked.Worst, marked.Number, marked.Findings);
        foreach (var group in plan.Findings.Where(f => f.Severity == Severity.NotChecked).GroupBy(f => (f.Check, f.Advice)))
            Draw(flow, figures, group.First(), null, [.. group]);
        DrawPasses(flow, figures, [.. plan.Findings.Where(f => f.Severity == Severity.Pass)]);
        return flow.Finish();
    }

    /// <summary>Draws the sign of a severity, centred at the point.</summary>
    internal static void DrawSign(Sketch sketch, Severity severity, double x, double y, double size)
    {
        if (severity == Severity.Stop)
            Symbols.Stop(sketch, x, y, size);
        else if (severity == Severity.Caution)
            Symbols.Caution(sketch, x, y, size);
        else if (severity == Severity.Pass)
            Symbols.Pass(sketch, x, y, size);
        else
            sketch.Circle(x, y, size * 0.4, Pen.Object);
    }

    private static void Draw(PageFlow flow, FindingFigures figures, Finding finding, int? number, IReadOnlyList<Finding> all)
    {
        const double Indent = 9;
        var headline = $"{(number is { } n ? n.ToString(System.Globalization.CultureInfo.InvariantCulture) + "  " : "")}{finding.Subject}: {finding.Message}";
        flow.Gap(2.5);
        flow.Ensure(18);
        var lines = WordWrap.Lines(headline, Lettering.BodyStrong, flow.Body.Width - Indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var (line, first) = (lines[i], i == 0);
            flow.Draw(Lettering.BodyStrong.LineHeight, (sketch, box) =>
            {
                if (first)
                    DrawSign(sketch, finding.Severity, box.Left + 3, box.Top + 2.6, 4.6);
                sketch.Text(line, box.Left + Indent, box.Top + Sketch.Ascent(Lettering.BodyStrong), Lettering.BodyStrong);
            });
        }

        foreach (var text in Details(figures, finding))
            flow.Paragraph(text, Lettering.Body.Sized(10), Indent);
        if (Others(figures, finding, all) is { Length: > 0 } others)
            flow.Paragraph(others, Lettering.Body.Sized(10), Indent);
    }

    // Numbers that are all the same need not be said again.
    private static string Others(FindingFigures figures, Finding finding, IReadOnlyList<Finding> all)
    {
        var others = all.Where(other => other != finding).ToList();
        if (others.Count == 0)
            return "";
        var unit = finding.Unit.Length > 0 ? " " + figures.Unit(finding.Unit) : "";
        var values = others.GroupBy(other => other.Value).ToList();
        if (values is [{ Key: null }])
            return $"Also: {CodeList.Of(others.Select(other => other.Subject).Distinct(StringComparer.Ordinal))}";
        return "Also: " + string.Join("; ", values.Select(group => group.Key is { } value
            ? $"{Words.Number(figures.Value(value, finding.Unit))}{unit} at {CodeList.Of(group.Select(other => other.Subject).Distinct(StringComparer.Ordinal))}"
            : CodeList.Of(group.Select(other => other.Subject).Distinct(StringComparer.Ordinal))));
    }

    private static IEnumerable<string> Details(FindingFigures figures, Finding finding)
    {
        var value = figures.Against(finding);
        if (value.Length > 0)
            yield return $"{Words.Of(finding.Severity)}: {value}";
        if (finding.Advice.Length > 0)
            yield return finding.Advice;
        if (finding.Formula.Length > 0)
            yield return "Formula: " + finding.Formula;
        if (finding.Inputs.Count > 0)
            yield return "With: " + string.Join("; ", finding.Inputs.Select(figures.Said));
        yield return "Source: " + Words.Sourced(finding.Source, finding.Standing);
    }

    private static void DrawPasses(PageFlow flow, FindingFigures figures, IReadOnlyList<Finding> passes)
    {
        if (passes.Count == 0)
            return;
        flow.Heading("Checked and within limits");
        Column[] columns = [new("", Fixed: 7), new("Check", 1), new("Subjects", 2), new("Nearest to its limit", 1.2), new("Source", 2)];
        var rows = passes.GroupBy(finding => (finding.Check, finding.Source)).Select(group => Row.Of(
            new("", Drawing: (sketch, box) => Symbols.Pass(sketch, box.Left + 3, box.Top + 2, 4.6)),
            new(group.Key.Check),
            new(Subjects(group)),
            new(figures.Against(Nearest(group))),
            new(Words.Sourced(group.Key.Source, group.First().Standing))));
        Table.Draw(flow, columns, [.. rows]);
    }

    private static string Subjects(IEnumerable<Finding> group)
    {
        var subjects = group.Select(finding => finding.Subject).Distinct(StringComparer.Ordinal).ToList();
        return CodeList.Of(subjects);
    }

    private static Finding Nearest(IEnumerable<Finding> group) => group
        .OrderByDescending(finding => finding is { Value: { } value, Limit: { } limit } && limit != 0 && value != 0 ? Math.Min(Math.Abs(value / limit), Math.Abs(limit / value)) : 0)
        .First();
}

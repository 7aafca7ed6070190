using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;

namespace Casewright.App.Commands;

/// <summary>Prints how a finding was reckoned: the same as its calculation sheet, in plain lines.</summary>
public static class CalculationText
{
    private const int Indent = 44;

    /// <summary>Writes formula, figures, result, limit, source and advice.</summary>
    public static void Write(TextWriter writer, Plan plan, Finding finding)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(finding);
        var sheet = CheckCatalogue.All.Select(c => c.Sheet).FirstOrDefault(s => s.Id == finding.Check);
        var figures = new FindingFigures(plan.Job.Units);
        writer.WriteLine($"{finding.Check}: {finding.Subject}");
        writer.WriteLine(finding.Message);
        if (sheet is not null)
            writer.WriteLine($"Looks at: {sheet.LooksAt}");
        if (finding.Formula.Length > 0)
            writer.WriteLine($"Formula: {finding.Formula}");
        foreach (var input in finding.Inputs.Where(i => !i.Name.StartsWith("limit: ", StringComparison.Ordinal)))
            writer.WriteLine($"  {input.Name.PadRight(Indent)} {figures.Figures(input)} {figures.Unit(input.Unit)}".TrimEnd());
        if (finding.Value is { } value)
            writer.WriteLine($"Result: {Number(figures.Value(value, finding.Unit))} {figures.Unit(finding.Unit)}".TrimEnd() + (finding.Limit is { } limit ? $", held to {Number(figures.Value(limit, finding.Unit))} {figures.Unit(finding.Unit)}".TrimEnd() : "") + $": {Words.Of(finding.Severity)}");
        foreach (var limit in sheet?.Limits ?? [])
            writer.WriteLine($"  {("limit: " + limit.Name).PadRight(Indent)} {Number(figures.Value(limit.Setting(plan.Job.Shop.Checks), limit.Unit))}{Spaced(figures.Unit(limit.Unit))}; usual {Number(figures.Value(limit.Usual, limit.Unit))} ({Words.Sourced(limit.Source, limit.Standing)})");
        writer.WriteLine("Source: " + Words.Sourced(finding.Source, finding.Standing));
        if (finding.Advice.Length > 0)
            writer.WriteLine($"Mend: {finding.Advice}");
        writer.WriteLine(CalculationSheets.NoPermit);
    }

    private static string Spaced(string unit) => unit.Length == 0 ? "" : " " + unit;

    private static string Number(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}

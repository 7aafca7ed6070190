using Casewright.Model.Findings;

namespace Casewright.App.Commands;

/// <summary>Prints findings, the gravest first.</summary>
public static class FindingText
{
    /// <summary>Writes stops, cautions and what was not checked; passes only on request, and their number always.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Finding> findings, bool all)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(findings);
        foreach (var group in FindingGroup.Of(findings.Where(f => all || f.Severity != Severity.Pass)))
        {
            var finding = group.First;
            writer.WriteLine($"{Word(finding.Severity),-11} {finding.Subject}: {finding.Message}");
            if (group.Subjects.Count > 1)
                writer.WriteLine($"            also {string.Join(", ", group.Others)}");
            if (finding.Advice.Length > 0)
                writer.WriteLine($"            {finding.Advice}");
            if (all)
                writer.WriteLine($"            [{finding.Check}; {finding.Source}]");
        }

        writer.WriteLine(string.Join(", ", Counts(findings)) + ".");
    }

    private static IEnumerable<string> Counts(IReadOnlyList<Finding> findings) =>
        from severity in new[] { Severity.Stop, Severity.Caution, Severity.NotChecked, Severity.Pass }
        let count = findings.Count(f => f.Severity == severity)
        select severity switch
        {
            Severity.Stop => $"{count} stop",
            Severity.Caution => $"{count} caution",
            Severity.NotChecked => $"{count} not checked",
            _ => $"{count} passed",
        };

    private static string Word(Severity severity) => severity switch
    {
        Severity.Stop => "STOP",
        Severity.Caution => "CAUTION",
        Severity.NotChecked => "NOT CHECKED",
        _ => "pass",
    };
}

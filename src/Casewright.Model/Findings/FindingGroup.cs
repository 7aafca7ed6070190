using Casewright.Model.Collections;

namespace Casewright.Model.Findings;

/// <summary>Findings that say the same of several subjects: one check, one severity, one value, one advice.</summary>
/// <param name="First">The finding that speaks for all of them.</param>
/// <param name="Subjects">All subjects, in the order of the findings; each once.</param>
public sealed record FindingGroup(Finding First, ValueList<string> Subjects)
{
    /// <summary>The subjects after the first, for "also ...".</summary>
    public IEnumerable<string> Others => Subjects.Skip(1);

    /// <summary>Folds findings that are alike, in the order of their first.</summary>
    public static ValueList<FindingGroup> Of(IEnumerable<Finding> findings) => findings
        .GroupBy(f => (f.Check, f.Severity, Figure(f.Value), Figure(f.Limit), f.Unit, f.Advice))
        .Select(alike => new FindingGroup(alike.First(), alike.Select(f => f.Subject).Distinct(StringComparer.Ordinal).ToValueList()))
        .ToValueList();

    /// <summary>A figure as it is told: three digits are what a check's value is good for.</summary>
    private static string Figure(double? value) => value?.ToString("G3", System.Globalization.CultureInfo.InvariantCulture) ?? "";
}

using System.Globalization;
using System.Text.RegularExpressions;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Papers.Documents;

/// <summary>Figures of findings in the unit of the job. A plan keeps them metric, so that no verdict depends on the unit; people in inches read them in inches and pounds.</summary>
/// <param name="Units">Unit of the job.</param>
public readonly partial record struct FindingFigures(UnitSystem Units)
{
    private const double NewtonsPerPound = 4.4482216152605;
    private const double KilogramsPerPound = 0.45359237;
    private const double PascalsPerPsf = 47.88025898;

    // Metric unit, customary unit, and how many of the first make one of the second.
    private static readonly (string Metric, string Customary, double Each)[] s_customary =
    [
        ("mm", "in", 25.4),
        ("kg", "lb", KilogramsPerPound),
        ("kg/m", "lb/ft", KilogramsPerPound / 0.3048),
        ("N", "lbf", NewtonsPerPound),
        ("N·m", "in·lbf", NewtonsPerPound * 0.0254),
        ("N/mm²", "psi", 0.006894757293168),
        ("kN/m²", "psf", PascalsPerPsf / 1000),
        ("Pa", "psf", PascalsPerPsf),
    ];

    /// <summary>The unit that people read instead of a metric one.</summary>
    public string Unit(string unit) => Units == UnitSystem.Millimetres ? unit : unit == "°C" ? "°F" : Customary(unit)?.Customary ?? unit;

    /// <summary>A figure in that unit.</summary>
    public double Value(double value, string unit) => Units == UnitSystem.Millimetres
        ? value
        : unit == "°C" ? (value * 9 / 5) + 32 : Customary(unit) is { } customary ? value / customary.Each : value;

    /// <summary>Value against limit, in words; empty when the finding has no number.</summary>
    public string Against(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        string Said(double value, FindingFigures figures) => Words.Number(figures.Value(value, finding.Unit));
        return (finding.Value, finding.Limit) switch
        {
            ({ } value, { } limit) => $"{Said(value, this)} against {Said(limit, this)} {Unit(finding.Unit)}".TrimEnd(),
            ({ } value, null) => $"{Said(value, this)} {Unit(finding.Unit)}".TrimEnd(),
            _ => "",
        };
    }

    /// <summary>The figures of an input, without its unit; words stay as they are.</summary>
    public string Figures(FindingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return Unit(input.Unit) == input.Unit ? input.Value : Converted(input.Value, input.Unit);
    }

    /// <summary>An input in one phrase. Of a limit the unit stands beside its figures, before the source in brackets.</summary>
    public string Said(FindingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var (own, unit) = (this, Unit(input.Unit));
        if (!input.Name.StartsWith("limit: ", StringComparison.Ordinal))
            return $"{input.Name} {Figures(input)} {unit}".TrimEnd();
        var bracket = input.Value.IndexOf(" (", StringComparison.Ordinal);
        var (head, tail) = bracket < 0 ? (input.Value, "") : (input.Value[..bracket], input.Value[bracket..]);
        var figures = unit.Length == 0 ? head : Number().Replace(head, m => own.Converted(m.Value, input.Unit) + " " + unit);
        return $"{input.Name} {figures}{tail}";
    }

    private static (string Metric, string Customary, double Each)? Customary(string unit)
    {
        foreach (var each in s_customary)
        {
            if (each.Metric == unit)
                return each;
        }

        return null;
    }

    private string Converted(string text, string unit)
    {
        var own = this;
        return Number().Replace(text, m => Words.Number(own.Value(double.Parse(m.Value, CultureInfo.InvariantCulture), unit)));
    }

    [GeneratedRegex(@"[0-9]+(\.[0-9]+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}

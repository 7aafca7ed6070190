using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Casewright.Model.Measure;

namespace Casewright.App.Web;

/// <summary>How figures are written on the pages.</summary>
public static class Shown
{
    /// <summary>Whether inches are written as decimals: a setting of the shop, the same in every window and for every job.</summary>
    public static bool DecimalInches { get; set; }

    /// <summary>A length in the job's unit; millimetres without the unit, which the page states once.</summary>
    public static string Length(Length length, UnitSystem units) => units == UnitSystem.Inches
        ? DecimalInches ? LengthFormat.DecimalInches(length, 3) : Fraction(LengthFormat.Usual(length, units))
        : LengthFormat.Millimetres(length).Replace(" mm", "", StringComparison.Ordinal);

    /// <summary>The same length in the other unit, for a note beside it.</summary>
    public static string OtherUnit(Length length, UnitSystem units) => units == UnitSystem.Inches
        ? LengthFormat.Millimetres(length)
        : DecimalInches ? LengthFormat.DecimalInches(length, 3) : Fraction(LengthFormat.Inches(length, FractionStep.ThirtySecond));

    /// <summary>Minutes of work as hours.</summary>
    public static string Hours(int minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes / 60m:0.#} h");

    /// <summary>A sum of money in its currency.</summary>
    public static string Money(decimal sum, string currency) => string.Create(CultureInfo.InvariantCulture, $"{Sign(currency)} {sum:#,##0}").Replace(',', ' ');

    /// <summary>Reads a length as typed.</summary>
    public static bool TryRead(string text, UnitSystem units, out Length length, [NotNullWhen(false)] out string? error)
    {
        var reading = LengthReader.Read(text, units);
        length = reading.Value ?? default;
        error = reading.Refusal is { } refusal ? $"{refusal.Reason} Accepted: {refusal.Accepted}" : null;
        return error is null;
    }

    /// <summary>With the fraction slash, at which the typefaces set a real fraction and which reads back like any other.</summary>
    private static string Fraction(string text) => text.Replace('/', '\u2044');

    private static string Sign(string currency) => currency switch
    {
        "EUR" => "€",
        "USD" => "$",
        "GBP" => "£",
        _ => currency,
    };
}

using System.Globalization;
using System.Text.RegularExpressions;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>The advice of a finding as a maker reads it: figures are taken from its words, never from the check.</summary>
public sealed partial record Told(Finding Finding, UnitSystem Units)
{
    private const double KilogramsPerPound = 0.45359237;

    /// <summary>The advice.</summary>
    public string Advice => Finding.Advice;

    /// <summary>Whether the advice says this.</summary>
    public bool Says(string words) => Advice.Contains(words, StringComparison.OrdinalIgnoreCase);

    /// <summary>The text between two pieces of the advice.</summary>
    public string Between(string before, string after)
    {
        var match = Regex.Match(Advice, Regex.Escape(before) + "(?<x>.+?)" + Regex.Escape(after), RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1));
        Assert.True(match.Success, $"'{before} … {after}' is not in: {Advice}");
        return match.Groups["x"].Value;
    }

    /// <summary>A length between two pieces of the advice, in mm.</summary>
    public decimal Mm(string before, string after) => Read(Between(before, after));

    /// <summary>A number between two pieces of the advice.</summary>
    public double Number(string before, string after) => double.Parse(Between(before, after), CultureInfo.InvariantCulture);

    /// <summary>A load per length after these words, in kg/m.</summary>
    public double Load(string before) => Units == UnitSystem.Millimetres
        ? Number(before, " kg/m")
        : Number(before, " lb/ft") * KilogramsPerPound / 0.3048;

    /// <summary>A mass, in kg.</summary>
    public double Mass(string before) => Units == UnitSystem.Millimetres ? Number(before, " kg") : Number(before, " lb") * KilogramsPerPound;

    /// <summary>A force, in N.</summary>
    public double Force(string before) => Units == UnitSystem.Millimetres ? Number(before, " N") : Number(before, " lbf") * 4.4482216152605;

    /// <summary>A load on a floor, in kN/m².</summary>
    public double FloorLoad(string before) => Units == UnitSystem.Millimetres ? Number(before, " kN/m²") : Number(before, " psf") * 0.04788025898;

    /// <summary>Every length that is said with a direction, in mm: up and to the right positive.</summary>
    public IReadOnlyList<decimal> Moves() =>
    [
        .. Directed().Matches(Advice).Select(m => Read(m.Groups["x"].Value.Trim()) * (m.Groups["way"].Value is "up" or "to the right" ? 1 : -1)),
    ];

    private decimal Read(string text)
    {
        var read = LengthReader.Read(text, Units).Value;
        Assert.True(read is not null, $"'{text}' is no length in: {Advice}");
        return read.Value.Millimetres;
    }

    [GeneratedRegex("""(?<x>[\d'/. ]+("|'| mm)) (?<way>up|down|to the left|to the right)""", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Directed();
}

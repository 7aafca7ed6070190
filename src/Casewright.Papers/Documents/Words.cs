using System.Globalization;
using System.Text.RegularExpressions;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Pricing;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Papers.Documents;

/// <summary>The words of the trade for what the plan holds.</summary>
public static partial class Words
{
    /// <summary>A count with its noun: 1 splice, 2 splices.</summary>
    public static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");

    /// <summary>A price as English writes it: £1,234.50, €1,234.50, $1,234.50, JPY 1,235.</summary>
    public static string Money(decimal amount, string currency) => MoneyText.Write(amount, currency, MoneyText.English(currency));

    /// <summary>A price in a column that names the currency: 1,234.50, with the places of the currency.</summary>
    public static string Amount(decimal amount, string currency) =>
        amount.ToString("N" + MoneyText.Decimals(currency).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>What decides between layouts of one cost.</summary>
    public static string Of(SheetAim aim) => aim == SheetAim.LargestOffcut ? "the most useful offcut" : "the fewest fence settings";

    /// <summary>How a splice is made.</summary>
    public static string Of(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => "loose tenons",
        SpliceMethod.TenonsAndConnectors => "loose tenons with draw connectors",
        SpliceMethod.Spline => "spline",
        SpliceMethod.HalfLap => "half-lap",
        SpliceMethod.Scarf => "scarf",
        SpliceMethod.BackedButt => "butt with a glued plate",
        SpliceMethod.CoveredButt => "butt, covered",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Unknown splice method."),
    };

    /// <summary>A number of clamps of a kind: 1 spreader, 4 long bar clamps.</summary>
    public static string Of(ClampKind kind, int count) => kind switch
    {
        ClampKind.LongBar => Count(count, "long bar clamp", "long bar clamps"),
        ClampKind.Bar => Count(count, "bar clamp", "bar clamps"),
        ClampKind.Face => Count(count, "face clamp", "face clamps"),
        ClampKind.Spreader => Count(count, "spreader", "spreaders"),
        ClampKind.PinchDog => Count(count, "pinch dog", "pinch dogs"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown clamp."),
    };

    /// <summary>How grave a finding is.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Stop => "STOP",
        Severity.Caution => "caution",
        Severity.NotChecked => "not checked",
        _ => "pass",
    };

    /// <summary>What stands behind a limit.</summary>
    public static string Of(Standing standing) => standing switch
    {
        Standing.Published => "published",
        Standing.FromMemory => "published, quoted from memory",
        Standing.CommonPractice => "common practice, no source",
        Standing.Judgement => "our judgement",
        _ => "arithmetic",
    };

    /// <summary>A source with what stands behind it, told once where the source says it already.</summary>
    public static string Sourced(string source, Standing standing)
    {
        ArgumentNullException.ThrowIfNull(source);
        var words = Of(standing);
        var said = standing switch
        {
            Standing.FromMemory => "from memory",
            Standing.CommonPractice => "common practice",
            _ => words,
        };
        return source.Contains(said, StringComparison.OrdinalIgnoreCase)
            ? source
            : $"{source} ({words})";
    }

    /// <summary>Which way the grain runs.</summary>
    public static string Of(Grain grain) => grain switch
    {
        Grain.AlongLength => "along",
        Grain.AlongWidth => "across",
        _ => "free",
    };

    /// <summary>Name of the upper end and lower end of a part: foot and head for uprights, left and right for level ones.</summary>
    public static (string Start, string End) EndsOf(Part part) => part.Place.AlongLength switch
    {
        Axis.Up => ("FOOT", "HEAD"),
        Axis.Down => ("HEAD", "FOOT"),
        Axis.Right => ("LEFT", "RIGHT"),
        Axis.Left => ("RIGHT", "LEFT"),
        Axis.Out => ("WALL", "FRONT"),
        _ => ("FRONT", "WALL"),
    };

    /// <summary>Where the reference edge of a part is.</summary>
    public static string ReferenceEdgeOf(Part part) => part.Place.AlongWidth switch
    {
        Axis.In => "front",
        Axis.Out => "wall side",
        Axis.Up => "lower",
        Axis.Down => "upper",
        Axis.Right => "left",
        _ => "right",
    };

    /// <summary>A number of a finding, rounded to what matters.</summary>
    public static string Number(double value)
    {
        var magnitude = Math.Abs(value);
        var format = magnitude >= 100 ? "0" : magnitude >= 10 ? "0.#" : magnitude >= 0.1 || magnitude == 0 ? "0.##" : "0.####";
        return value.ToString(format, CultureInfo.InvariantCulture).Replace('-', '−');
    }

    /// <summary>The name that alike parts share: what stands before the comma, numbers of shelf and bay left out.</summary>
    public static string CommonName(IReadOnlyList<Part> parts)
    {
        if (parts.Count == 1)
            return parts[0].Name;
        var names = parts.Select(part => Counting().Replace(part.Name.Split(',')[0], "").Trim()).Distinct(StringComparer.Ordinal).ToList();
        return names.Count == 1 ? names[0] : string.Join(" / ", names.Take(3));
    }

    [GeneratedRegex(" bay [0-9]+| [0-9]+", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Counting();
}

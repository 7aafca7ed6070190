using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A unit of a quantity: what is written is multiplied by the factor and shifted to give the first unit.</summary>
internal readonly record struct QuantityUnit(string Name, double Factor, double Shift = 0);

/// <summary>An engineering figure written with its unit, such as "30 kg/m"; kept in the first of its units.</summary>
internal sealed class QuantityShape : ReadableShape<double>
{
    // Exact by the international yard and pound agreement of 1959, and the standard acceleration of gravity (CGPM 1901).
    private const double KilogramsPerPound = 0.45359237;
    private const double MetresPerFoot = 0.3048;
    private const double NewtonsPerPound = KilogramsPerPound * 9.80665;
    private const double PascalsPerPoundPerSquareFoot = NewtonsPerPound / (MetresPerFoot * MetresPerFoot);
    private const double DensityPerPoundPerCubicFoot = KilogramsPerPound / (MetresPerFoot * MetresPerFoot * MetresPerFoot);

    private readonly QuantityUnit[] _units;
    private readonly double _least;
    private readonly double _most;
    private readonly string _example;
    private readonly string _pattern;
    private readonly Regex _regex;

    private QuantityShape(double least, double most, string example, params QuantityUnit[] units)
    {
        (_least, _most, _example, _units) = (least, most, example, units);
        var sign = least < 0 ? "-?" : "";
        var names = units.Select(u => u.Name.Replace("/", "\\/", StringComparison.Ordinal));
        _pattern = $@"^{sign}[0-9]{{1,9}}(?:\.[0-9]{{1,28}})? ?(?:{string.Join('|', names)})$";
        _regex = new(_pattern, RegexOptions.CultureInvariant, TimeSpan.FromSeconds(5));
    }

    /// <summary>Weight on a shelf for each length of it, in kg/m.</summary>
    public static QuantityShape LoadPerLength { get; } = new(0, 2000, "30 kg/m", new("kg/m", 1), new("lb/ft", KilogramsPerPound / MetresPerFoot));

    /// <summary>Density in kg/m³.</summary>
    public static QuantityShape Density { get; } = new(
        50,
        2000,
        "680 kg/m³",
        new("kg/m³", 1),
        new("kg/m3", 1),
        new("lb/ft³", DensityPerPoundPerCubicFoot),
        new("lb/ft3", DensityPerPoundPerCubicFoot));

    /// <summary>Modulus of elasticity in N/mm².</summary>
    public static QuantityShape Elasticity { get; } = new(
        100, 40_000, "9500 N/mm²", new("N/mm²", 1), new("N/mm2", 1), new("MPa", 1), new("psi", NewtonsPerPound / (25.4 * 25.4)));

    /// <summary>Mass in kg.</summary>
    public static QuantityShape Mass { get; } = new(0.1, 5000, "23 kg", new("kg", 1), new("lb", KilogramsPerPound));

    /// <summary>Force in N.</summary>
    public static QuantityShape Force { get; } = new(1, 100_000, "1000 N", new("N", 1), new("kN", 1000), new("lbf", NewtonsPerPound));

    /// <summary>Load on an area in Pa.</summary>
    public static QuantityShape AreaLoad { get; } = new(
        10, 100_000, "50 psf", new("Pa", 1), new("kPa", 1000), new("psf", PascalsPerPoundPerSquareFoot));

    /// <summary>Rating of a floor in kN/m².</summary>
    public static QuantityShape FloorRating { get; } = new(
        0.1, 100, "2 kN/m²", new("kN/m²", 1), new("kN/m2", 1), new("kPa", 1), new("psf", PascalsPerPoundPerSquareFoot / 1000));

    /// <summary>Temperature in °C.</summary>
    public static QuantityShape Temperature { get; } = new(
        -40, 60, "20 °C", new("°C", 1), new("C", 1), new("°F", 5.0 / 9, -160.0 / 9), new("F", 5.0 / 9, -160.0 / 9));

    /// <summary>Relative humidity in %.</summary>
    public static QuantityShape Humidity { get; } = new(0, 100, "45 %", new QuantityUnit("%", 1));

    public override string Accepted => string.Create(
        CultureInfo.InvariantCulture,
        $"a text of a number with its unit ({string.Join(", ", _units.Select(u => u.Name))}), from {_least} to {_most} {_units[0].Name}, such as \"{_example}\"");

    public override JsonNode Write(double value, UnitSystem units) => JsonValue.Create(Digits(value) + " " + _units[0].Name);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string", ["pattern"] = _pattern, ["examples"] = new JsonArray(_example) };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out double value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "This figure is written as a text with its unit.", out value);
        value = 0;
        if (text.Value.EndsWith('\n') || !_regex.IsMatch(text.Value))
            return context.Fail(path, node.Position, "This is no figure with one of the units accepted here.", node.Shown, Accepted);
        var digits = text.Value.Length - text.Value.AsSpan().TrimStart("-0123456789.").Length;
        var name = text.Value[digits..].TrimStart();
        var unit = Array.Find(_units, u => u.Name == name);
        value = (double.Parse(text.Value.AsSpan(0, digits), CultureInfo.InvariantCulture) * unit.Factor) + unit.Shift;
        return (value >= _least && value <= _most) || context.Fail(path, node.Position, "This figure is out of range.", node.Shown, Accepted);
    }

    /// <summary>The shortest digits that read back as the same double, without an exponent.</summary>
    private static string Digits(double value) =>
        decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture)
            .ToString(CultureInfo.InvariantCulture);
}

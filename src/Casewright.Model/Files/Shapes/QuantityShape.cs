using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>An engineering figure written with its unit, such as "30 kg/m"; kept in the first of its units.</summary>
internal sealed class QuantityShape : ReadableShape<double>
{
    private const string Number = @"[0-9]{1,9}(?:\.[0-9]{1,28})?";
    private readonly (string Unit, double Factor)[] _units;
    private readonly double _least;
    private readonly double _most;
    private readonly string _example;
    private readonly string _pattern;

    /// <summary>A quantity.</summary>
    /// <param name="least">Least value, in the first unit.</param>
    /// <param name="most">Largest value, in the first unit.</param>
    /// <param name="example">An example, as written.</param>
    /// <param name="units">Units that may be written, each with its size in the first one.</param>
    private QuantityShape(double least, double most, string example, params (string Unit, double Factor)[] units)
    {
        (_least, _most, _example, _units) = (least, most, example, units);
        _pattern = $"^{Number} ?(?:{string.Join('|', units.Select(u => u.Unit.Replace("/", "\\/", StringComparison.Ordinal)))})$";
    }

    /// <summary>Weight on a shelf for each length of it, in kg/m (1 lb = 0.45359237 kg, 1 ft = 0.3048 m, both exact since 1959).</summary>
    public static QuantityShape LoadPerLength { get; } = new(0, 2000, "30 kg/m", ("kg/m", 1), ("lb/ft", 0.45359237 / 0.3048));

    /// <summary>Density in kg/m³.</summary>
    public static QuantityShape Density { get; } = new(
        50, 2000, "680 kg/m³", ("kg/m³", 1), ("kg/m3", 1), ("lb/ft³", 0.45359237 / (0.3048 * 0.3048 * 0.3048)), ("lb/ft3", 0.45359237 / (0.3048 * 0.3048 * 0.3048)));

    /// <summary>Modulus of elasticity in N/mm² (1 psi = 0.45359237 · 9.80665 N on 25.4² mm²).</summary>
    public static QuantityShape Elasticity { get; } = new(
        100, 40_000, "9500 N/mm²", ("N/mm²", 1), ("N/mm2", 1), ("MPa", 1), ("psi", 0.45359237 * 9.80665 / (25.4 * 25.4)));

    public override string Accepted => string.Create(
        CultureInfo.InvariantCulture,
        $"a number with its unit ({string.Join(", ", _units.Select(u => u.Unit))}), from {_least} to {_most} {_units[0].Unit}, such as \"{_example}\"");

    public override JsonNode Write(double value, UnitSystem units) => JsonValue.Create(Digits(value) + " " + _units[0].Unit);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string", ["pattern"] = _pattern, ["examples"] = new JsonArray(_example) };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out double value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "This figure is written as a text with its unit.", out value);
        value = 0;
        if (text.Value.EndsWith('\n') || !Regex.IsMatch(text.Value, _pattern, RegexOptions.CultureInvariant, TimeSpan.FromSeconds(5)))
            return context.Fail(path, node.Position, "This is no figure with one of the units accepted here.", node.Shown, Accepted);
        var digits = text.Value.Length - text.Value.AsSpan().TrimStart("0123456789.").Length;
        var unit = text.Value[digits..].TrimStart();
        value = double.Parse(text.Value.AsSpan(0, digits), CultureInfo.InvariantCulture) * _units.First(u => u.Unit == unit).Factor;
        return (value >= _least && value <= _most) || context.Fail(path, node.Position, "This figure is out of range.", node.Shown, Accepted);
    }

    /// <summary>The shortest digits that read back as the same double, without an exponent.</summary>
    private static string Digits(double value) =>
        decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);
}

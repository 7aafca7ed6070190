using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>An exact decimal number with at most four places, whose unit its field names.</summary>
/// <param name="least">Least value.</param>
/// <param name="allowsLeast">Whether the least value itself is allowed.</param>
/// <param name="most">Largest value.</param>
internal sealed class DecimalShape(decimal least, bool allowsLeast, decimal most) : ReadableShape<decimal>
{
    private const int Places = 4;

    public override string Accepted => string.Create(
        CultureInfo.InvariantCulture,
        $"a number {(allowsLeast ? $"from {least} to {most}" : $"above {least}, at most {most}")}, with at most four decimals");

    /// <summary>A number above 0.</summary>
    public static DecimalShape Positive(decimal most) => new(0, allowsLeast: false, most);

    /// <summary>A number between two limits, both allowed.</summary>
    public static DecimalShape Between(decimal least, decimal most) => new(least, allowsLeast: true, most);

    public override JsonNode Write(decimal value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "number",
        [allowsLeast ? "minimum" : "exclusiveMinimum"] = least,
        ["maximum"] = most,
        ["multipleOf"] = 0.0001m,
    };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out decimal value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "A number is needed here.", out value);
        if (!number.TryDecimal(out value)
            || (allowsLeast ? value < least : value <= least)
            || value > most)
        {
            return context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
        }

        return decimal.Round(value, Places) == value
            || context.Fail(path, node.Position, "This number has too many decimals.", node.Shown, Accepted);
    }
}

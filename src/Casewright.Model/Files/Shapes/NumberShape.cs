using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A number within limits that has no unit, or whose field names it.</summary>
/// <param name="least">Least value.</param>
/// <param name="allowsLeast">Whether the least value itself is allowed.</param>
/// <param name="most">Largest value.</param>
internal sealed class NumberShape(double least, bool allowsLeast, double most) : ReadableShape<double>
{
    /// <summary>A share of a whole, from 0 to 1.</summary>
    public static NumberShape Share { get; } = Between(0, 1);

    public override string Accepted => string.Create(
        CultureInfo.InvariantCulture, $"a number {(allowsLeast ? $"from {least} to {most}" : $"above {least}, at most {most}")}");

    /// <summary>A number above 0.</summary>
    public static NumberShape Positive(double most) => new(0, allowsLeast: false, most);

    /// <summary>A number between two limits, both allowed.</summary>
    public static NumberShape Between(double least, double most) => new(least, allowsLeast: true, most);

    public override JsonNode Write(double value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "number",
        [allowsLeast ? "minimum" : "exclusiveMinimum"] = least,
        ["maximum"] = most,
    };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out double value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "A number is needed here.", out value);
        value = double.Parse(number.Digits, NumberStyles.Float, CultureInfo.InvariantCulture);
        var isInRange = (allowsLeast ? value >= least : value > least) && value <= most;
        return isInRange || context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
    }
}

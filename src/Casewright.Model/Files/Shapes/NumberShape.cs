using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A number above 0 and not above a limit, whose unit its field names.</summary>
internal sealed class NumberShape(double most) : ReadableShape<double>
{
    public override string Accepted => string.Create(CultureInfo.InvariantCulture, $"a number above 0, at most {most}");

    public override JsonNode Write(double value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "number", ["exclusiveMinimum"] = 0, ["maximum"] = most };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out double value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "A number is needed here.", out value);
        value = double.Parse(number.Digits, NumberStyles.Float, CultureInfo.InvariantCulture);
        return (value > 0 && value <= most) || context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
    }
}

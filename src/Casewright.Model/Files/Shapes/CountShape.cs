using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A whole number within limits, both allowed.</summary>
internal sealed class CountShape(int least, int most) : ReadableShape<int>
{
    public override string Accepted => string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}");

    public override JsonNode Write(int value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "integer", ["minimum"] = least, ["maximum"] = most };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out int value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "A whole number is needed here.", out value);
        value = 0;
        if (!number.TryWhole(out var read))
            return context.Fail(path, node.Position, "A whole number is needed here.", node.Shown, Accepted);
        if (read < least || read > most)
            return context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
        value = (int)read;
        return true;
    }
}

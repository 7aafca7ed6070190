using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>Yes or no.</summary>
internal sealed class FlagShape : ReadableShape<bool>
{
    public static FlagShape Instance { get; } = new();

    public override string Accepted => "true or false";

    public override JsonNode Write(bool value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "boolean" };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out bool value)
    {
        if (node is not SourceFlag flag)
            return FailKind(node, path, context, "This is either true or false.", out value);
        value = flag.Value;
        return true;
    }
}

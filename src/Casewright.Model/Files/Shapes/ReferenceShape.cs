using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>The id of something that is given elsewhere in the file.</summary>
/// <param name="scope">Scope in which ids of its kind are declared.</param>
/// <param name="kind">What it must name, in words, such as "sheet material".</param>
internal sealed class ReferenceShape(string scope, string kind) : ReadableShape<string>
{
    public override string Accepted => $"the id of a {kind} of this job";

    public override JsonNode Write(string value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => TextShape.Id.Schema(book);

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out string value)
    {
        if (!TextShape.Id.TryRead(node, path, context, out value))
            return false;
        context.Refer(scope, kind, (SourceText)node, path);
        return true;
    }
}

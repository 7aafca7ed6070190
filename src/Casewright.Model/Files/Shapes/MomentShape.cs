using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A moment by the clock of the shop, to the minute, without a time zone (ISO 8601).</summary>
internal sealed class MomentShape : ReadableShape<DateTime>
{
    private const string Format = "yyyy-MM-ddTHH:mm";

    public static MomentShape Instance { get; } = new();

    public override string Accepted => "a moment as year-month-dayThours:minutes, such as \"2026-03-09T14:30\"";

    public override JsonNode Write(DateTime value, UnitSystem units) => JsonValue.Create(value.ToString(Format, CultureInfo.InvariantCulture));

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "string",
        ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}T(?:[01][0-9]|2[0-3]):[0-5][0-9]$",
    };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out DateTime value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "A moment is needed here.", out value);
        return DateTime.TryParseExact(text.Value, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            || context.Fail(path, node.Position, "This is no moment.", node.Shown, Accepted);
    }
}

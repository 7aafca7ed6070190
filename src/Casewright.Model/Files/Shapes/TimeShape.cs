using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A time of day to the minute, on the clock of 24 hours.</summary>
internal sealed class TimeShape : ReadableShape<TimeOnly>
{
    private const string Format = "HH:mm";

    public static TimeShape Instance { get; } = new();

    public override string Accepted => "a time of day as hours:minutes, such as \"08:00\" or \"15:30\"";

    public override JsonNode Write(TimeOnly value, UnitSystem units) => JsonValue.Create(value.ToString(Format, CultureInfo.InvariantCulture));

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string", ["pattern"] = "^(?:[01][0-9]|2[0-3]):[0-5][0-9]$" };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out TimeOnly value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "A time of day is needed here.", out value);
        return TimeOnly.TryParseExact(text.Value, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            || context.Fail(path, node.Position, "This is no time of day.", node.Shown, Accepted);
    }
}

using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A calendar date (ISO 8601).</summary>
internal sealed class DateShape : ReadableShape<DateOnly>
{
    private const string Format = "yyyy-MM-dd";

    public static DateShape Instance { get; } = new();

    public override string Accepted => "a date as year-month-day, such as \"2026-03-09\"";

    public override JsonNode Write(DateOnly value, UnitSystem units) => JsonValue.Create(value.ToString(Format, CultureInfo.InvariantCulture));

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "string",
        ["format"] = "date",
        ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
    };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out DateOnly value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "A date is needed here.", out value);
        return DateOnly.TryParseExact(text.Value, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out value)
            || context.Fail(path, node.Position, "This is no date.", node.Shown, Accepted);
    }
}

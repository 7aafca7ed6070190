using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;

namespace Casewright.Model.Files.Shapes;

/// <summary>A rule about which fields of a record stand together; checked on reading, kept on writing and stated in the schema.</summary>
internal abstract record PresenceRule
{
    /// <summary>Exactly one of two fields is given.</summary>
    public static PresenceRule ExactlyOne(string first, string second) => new OneOfTwoRule(first, second, IsOneNeeded: true);

    /// <summary>At most one of two fields is given.</summary>
    public static PresenceRule AtMostOne(string first, string second) => new OneOfTwoRule(first, second, IsOneNeeded: false);

    /// <summary>At least one of two fields is given.</summary>
    public static PresenceRule AtLeastOne(string first, string second) => new EitherRule(first, second);

    /// <summary>A field means something only together with another.</summary>
    public static PresenceRule OnlyWith(string field, string other) => new CompanionRule(field, other);

    /// <summary>A field is needed when another has one of these values.</summary>
    public static PresenceRule Needs(string field, string other, params string[] values) => new DependenceRule(field, other, values, IsNeeded: true);

    /// <summary>A field is out of place when another has one of these values.</summary>
    public static PresenceRule Excludes(string field, string other, params string[] values) => new DependenceRule(field, other, values, IsNeeded: false);

    /// <summary>Checks a record as written.</summary>
    /// <returns>Whether the rule is kept.</returns>
    public abstract bool Check(SourceObject source, NodePath path, ReadContext context);

    /// <summary>Whether the field must be written even with its default value, in an object that is written so far.</summary>
    public virtual bool Demands(string field, JsonObject written) => false;

    /// <summary>The rule as a JSON Schema.</summary>
    public abstract JsonObject Schema();

    private static JsonObject Has(string field) => new() { ["required"] = new JsonArray(field) };

    private sealed record OneOfTwoRule(string First, string Second, bool IsOneNeeded) : PresenceRule
    {
        public override bool Check(SourceObject source, NodePath path, ReadContext context)
        {
            var (first, second) = (source[First], source[Second]);
            var accepted = $"{(IsOneNeeded ? "exactly" : "at most")} one of \"{First}\" and \"{Second}\"";
            if (first is not null && second is not null)
            {
                var (later, position) = second.Position.CompareTo(first.Position) > 0 ? (Second, second.Position) : (First, first.Position);
                return context.Fail(path.Field(later), position, $"\"{First}\" and \"{Second}\" cannot stand together.", "both", accepted);
            }

            return !IsOneNeeded || first is not null || second is not null
                || context.Fail(path, source.Position, $"Neither \"{First}\" nor \"{Second}\" is given.", "", accepted);
        }

        public override JsonObject Schema() => IsOneNeeded
            ? new() { ["oneOf"] = new JsonArray(Has(First), Has(Second)) }
            : new() { ["not"] = new JsonObject { ["required"] = new JsonArray(First, Second) } };
    }

    private sealed record EitherRule(string First, string Second) : PresenceRule
    {
        public override bool Check(SourceObject source, NodePath path, ReadContext context) =>
            source[First] is not null || source[Second] is not null
            || context.Fail(
                path, source.Position, $"Neither \"{First}\" nor \"{Second}\" is given.", "", $"at least one of \"{First}\" and \"{Second}\"");

        public override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(Has(First), Has(Second)) };
    }

    private sealed record CompanionRule(string Field, string Other) : PresenceRule
    {
        public override bool Check(SourceObject source, NodePath path, ReadContext context) =>
            source[Field] is not { } node || source[Other] is not null
            || context.Fail(
                path.Field(Field),
                node.Position,
                $"\"{Field}\" means nothing without \"{Other}\".",
                node.Shown,
                $"give \"{Other}\" too, or leave \"{Field}\" out");

        public override JsonObject Schema() => new() { ["dependentRequired"] = new JsonObject { [Field] = new JsonArray(Other) } };
    }

    private sealed record DependenceRule(string Field, string Other, string[] Values, bool IsNeeded) : PresenceRule
    {
        public override bool Check(SourceObject source, NodePath path, ReadContext context)
        {
            if (source[Other] is not SourceText { Value: var value } || !Values.Contains(value))
                return true;
            var node = source[Field];
            if (IsNeeded == node is not null)
                return true;
            var (message, accepted) = node is null
                ? ($"With \"{Other}\" {value}, the field \"{Field}\" is needed.", $"a value for \"{Field}\"")
                : ($"With \"{Other}\" {value}, there is no \"{Field}\".", $"leave \"{Field}\" out");
            return context.Fail(path.Field(Field), (node ?? source).Position, message, node?.Shown ?? "", accepted);
        }

        public override bool Demands(string field, JsonObject written) =>
            IsNeeded && field == Field && written[Other] is JsonValue value && Values.Contains(value.ToString());

        public override JsonObject Schema() => new()
        {
            ["if"] = new JsonObject
            {
                ["properties"] = new JsonObject { [Other] = new JsonObject { ["enum"] = new JsonArray([.. Values.Select(v => (JsonNode)v)]) } },
                ["required"] = new JsonArray(Other),
            },
            ["then"] = IsNeeded ? Has(Field) : new() { ["properties"] = new JsonObject { [Field] = false } },
        };
    }
}

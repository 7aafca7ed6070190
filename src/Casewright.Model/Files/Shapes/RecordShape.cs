using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A record as a JSON object: its fields, the rules among them, and the checks of the whole.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class RecordShape<T> : ReadableShape<T>
    where T : class
{
    private readonly string _name;
    private readonly string _description;
    private readonly Func<IFields<T>, T> _build;
    private readonly IReadOnlyList<Field<T>> _fields;

    /// <summary>A record.</summary>
    /// <param name="name">Name of the record in the schema.</param>
    /// <param name="description">What it is, for the schema.</param>
    /// <param name="build">Builds the record from its fields.</param>
    public RecordShape(string name, string description, Func<IFields<T>, T> build)
    {
        (_name, _description, _build) = (name, description, build);
        var collector = new FieldCollector<T>();
        build(collector);
        _fields = collector.Fields;
    }

    /// <summary>Which fields stand together.</summary>
    public IReadOnlyList<PresenceRule> Rules { get; init; } = [];

    /// <summary>Where its field "id" must be unique, and what the id names; null when it declares none.</summary>
    public Func<SourceObject, (string Scope, string Kind)>? Declares { get; init; }

    /// <summary>Check of a record whose fields are all right; null for none.</summary>
    public Action<T, Spot>? Check { get; init; }

    public override string Accepted =>
        $"an object in {{ }} with {string.Join(", ", _fields.Where(f => f.IsRequired).Select(f => f.Name).DefaultIfEmpty("its fields"))}";

    public override JsonNode Write(T value, UnitSystem units)
    {
        var written = new JsonObject();
        foreach (var field in _fields)
        {
            if ((!field.IsDefault(value) || Rules.Any(r => r.Demands(field.Name, written))) && field.Write(value, units) is { } node)
                written[field.Name] = node;
        }

        return written;
    }

    public override JsonObject Schema(SchemaBook book) => book.Reference(_name, this, () => Definition(book));

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out T value)
    {
        if (node is not SourceObject source)
            return FailKind(node, path, context, "An object is needed here.", out value);
        var before = context.Count;
        CheckNames(source, path, context);
        foreach (var rule in Rules)
            rule.Check(source, path, context);
        if (Declares is not null && source["id"] is SourceText id)
        {
            var (scope, kind) = Declares(source);
            context.Declare(scope, kind, id, path.Field("id"));
        }

        var reader = new FieldReader<T>(source, path, context);
        value = _build(reader);
        if (reader.Failed || context.Count > before)
            return false;
        Check?.Invoke(value, new(source, path, context));
        return context.Count == before;
    }

    private void CheckNames(SourceObject source, NodePath path, ReadContext context)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in source.Members)
        {
            if (!seen.Add(member.Name))
                context.Fail(
                    path.Field(member.Name), member.Position, "This field is written twice.", member.Value.Shown, "each field once");
            else if (!_fields.Any(f => f.Name == member.Name))
                FailUnknown(member, path, context);
        }
    }

    private void FailUnknown(SourceMember member, NodePath path, ReadContext context)
    {
        if (context.IsFull)
        {
            context.FailUntold();
            return;
        }

        var names = _fields.Select(f => f.Name).ToList();
        var nearest = NearestName.To(member.Name, names);
        context.Fail(
            path.Field(member.Name),
            member.Position,
            "There is no such field here.",
            new SourceText(member.Position, member.Name).Shown,
            (nearest is null ? "" : $"did you mean {nearest}? ") + string.Join(", ", names));
    }

    private JsonObject Definition(SchemaBook book)
    {
        var properties = new JsonObject();
        foreach (var field in _fields)
        {
            var schema = field.Schema(book);
            schema["description"] = schema["description"] is { } range ? $"{field.Description} {range}" : field.Description;
            if (field.Default() is { } value)
                schema["default"] = value;
            properties[field.Name] = schema;
        }

        var definition = new JsonObject
        {
            ["description"] = _description,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. _fields.Where(f => f.IsRequired).Select(f => (JsonNode)f.Name)]),
            ["additionalProperties"] = false,
        };
        if (Rules.Count > 0)
            definition["allOf"] = new JsonArray([.. Rules.Select(r => r.Schema())]);
        return definition;
    }
}

using System.Text.Json.Nodes;

namespace Casewright.Model.Files.Shapes;

/// <summary>The named definitions of one JSON Schema (draft 2020-12), collected while it is written.</summary>
internal sealed class SchemaBook
{
    private readonly SortedDictionary<string, JsonObject> _definitions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, object> _owners = new(StringComparer.Ordinal);

    /// <summary>Writes the schema of a whole file.</summary>
    public static JsonObject Write<T>(Shape<T> root, string id, string title)
    {
        var book = new SchemaBook();
        var reference = root.Schema(book);
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["$id"] = id, ["title"] = title };
        foreach (var (key, value) in reference.ToList())
        {
            reference.Remove(key);
            schema[key] = value;
        }

        var definitions = new JsonObject();
        foreach (var (name, definition) in book._definitions)
            definitions[name] = definition;
        schema["$defs"] = definitions;
        return schema;
    }

    /// <summary>A reference to a definition, which is written when it is first asked for.</summary>
    /// <param name="name">Name of the definition.</param>
    /// <param name="owner">Whose definition it is; always the same one for a name.</param>
    /// <param name="definition">Writes it.</param>
    /// <exception cref="InvalidOperationException">Two owners use one name.</exception>
    public JsonObject Reference(string name, object owner, Func<JsonObject> definition)
    {
        if (!_owners.TryAdd(name, owner) && !_owners[name].Equals(owner))
            throw new InvalidOperationException($"Two shapes are called '{name}'.");
        if (!_definitions.ContainsKey(name))
        {
            _definitions[name] = [];
            _definitions[name] = definition();
        }

        return new() { ["$ref"] = "#/$defs/" + name };
    }
}

using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>One of a few values that have names.</summary>
/// <typeparam name="T">The value.</typeparam>
internal sealed class ChoiceShape<T> : ReadableShape<T>
    where T : notnull
{
    private const int MostListed = 12;
    private readonly string _name;
    private readonly string _description;
    private readonly (T Value, string Name)[] _choices;

    /// <summary>A choice.</summary>
    /// <param name="name">Name of the choice in the schema.</param>
    /// <param name="description">What is chosen, with what each name means.</param>
    /// <param name="choices">Values and their names.</param>
    public ChoiceShape(string name, string description, IEnumerable<(T Value, string Name)> choices)
    {
        (_name, _description, _choices) = (name, description, [.. choices]);
    }

    /// <summary>Values that can be chosen.</summary>
    public IEnumerable<T> Values => _choices.Select(c => c.Value);

    public override string Accepted => _choices.Length > MostListed
        ? string.Join(", ", _choices.Take(MostListed).Select(c => c.Name)) + ", ..."
        : string.Join(", ", _choices.Select(c => c.Name));

    public override JsonNode Write(T value, UnitSystem units) => JsonValue.Create(NameOf(value))!;

    public override JsonObject Schema(SchemaBook book) => book.Reference(_name, this, () => new()
    {
        ["description"] = _description,
        ["enum"] = new JsonArray([.. _choices.Select(c => (JsonNode)c.Name)]),
    });

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out T value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "One of a few words is needed here, in quotes.", out value);
        foreach (var choice in _choices)
        {
            if (choice.Name == text.Value)
            {
                value = choice.Value;
                return true;
            }
        }

        value = default;
        var nearest = NearestName.To(text.Value, _choices.Select(c => c.Name));
        var accepted = (nearest is null ? "" : $"did you mean {nearest}? ") + Accepted;
        return context.Fail(path, node.Position, "This is none of the words accepted here.", node.Shown, accepted);
    }

    private string NameOf(T value) => Array.Find(_choices, c => c.Value.Equals(value)).Name
        ?? throw new ArgumentOutOfRangeException(nameof(value), value, $"A {_name} has no such value in a file.");
}

/// <summary>Makes choices of enumerations.</summary>
internal static class ChoiceShape
{
    /// <summary>A choice among values of an enumeration, named as its members are.</summary>
    /// <param name="name">Name of the choice in the schema.</param>
    /// <param name="about">What is chosen.</param>
    /// <param name="meanings">Values with what they mean.</param>
    public static ChoiceShape<T> Of<T>(string name, string about, params (T Value, string Meaning)[] meanings)
        where T : struct, Enum
    {
        var words = meanings.Select(m => $"{NameOf(m.Value)}: {m.Meaning}");
        return new(name, $"{about} {string.Join("; ", words)}.", meanings.Select(m => (m.Value, NameOf(m.Value))));
    }

    /// <summary>A choice among all values of an enumeration whose names say what they are.</summary>
    /// <param name="name">Name of the choice in the schema.</param>
    /// <param name="about">What is chosen.</param>
    public static ChoiceShape<T> Of<T>(string name, string about)
        where T : struct, Enum => new(name, about, Enum.GetValues<T>().Select(v => (v, NameOf(v))));

    /// <summary>The name of an enumeration's value in files.</summary>
    public static string NameOf<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());
}

using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>How a value looks in JSON: the one description from which its writing and its JSON Schema are derived.</summary>
/// <typeparam name="T">The value.</typeparam>
internal abstract class Shape<T>
{
    /// <summary>The value as JSON.</summary>
    /// <param name="value">The value.</param>
    /// <param name="units">Unit that lengths are written in, where they are texts.</param>
    public abstract JsonNode? Write(T value, UnitSystem units);

    /// <summary>The JSON Schema of such values, or a reference to it.</summary>
    public abstract JsonObject Schema(SchemaBook book);
}

/// <summary>A shape that can also be read.</summary>
/// <typeparam name="T">The value.</typeparam>
internal abstract class ReadableShape<T> : Shape<T>
{
    /// <summary>What is accepted here, in words, to end a sentence that begins "Accepted:".</summary>
    public abstract string Accepted { get; }

    /// <summary>Reads a value; what is wrong goes to <paramref name="context"/>.</summary>
    /// <returns>Whether there is a value.</returns>
    public abstract bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out T value);

    /// <summary>Notes that the value is of the wrong kind.</summary>
    protected bool FailKind(SourceNode node, NodePath path, ReadContext context, string message, out T? value)
    {
        value = default;
        return context.Fail(path, node.Position, message, node.Shown, Accepted);
    }
}

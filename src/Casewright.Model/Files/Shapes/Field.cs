using System.Text.Json.Nodes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A field of a record: how it is written, and its part of the schema.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed record Field<T>
{
    /// <summary>Name in the file.</summary>
    public required string Name { get; init; }

    /// <summary>Whether it must be there.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What it is, for the schema.</summary>
    public required string Description { get; init; }

    /// <summary>The value as JSON; null when there is none.</summary>
    public required Func<T, UnitSystem, JsonNode?> Write { get; init; }

    /// <summary>Whether the value is the one that a missing field has.</summary>
    public Func<T, bool> IsDefault { get; init; } = _ => false;

    /// <summary>Schema of the value.</summary>
    public required Func<SchemaBook, JsonObject> Schema { get; init; }

    /// <summary>The default as JSON; null when there is none.</summary>
    public Func<JsonNode?> Default { get; init; } = () => null;
}

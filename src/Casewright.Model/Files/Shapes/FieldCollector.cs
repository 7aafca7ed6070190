using System.Text.Json.Nodes;
using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>Learns the fields of a record from the function that builds it; every field it hands out is empty.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class FieldCollector<T> : IFields<T>
{
    private readonly List<Field<T>> _fields = [];

    /// <summary>The fields, in the order of the description.</summary>
    public IReadOnlyList<Field<T>> Fields => _fields;

    public TValue Required<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, string description)
    {
        Add(name, (r, units) => shape.Write(get(r), units), shape, description, isRequired: true);
        return default!;
    }

    public TValue? Optional<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : class
    {
        Add(name, (r, units) => get(r) is { } value ? shape.Write(value, units) : null, shape, description);
        return null;
    }

    public TValue? OptionalValue<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : struct
    {
        Add(name, (r, units) => get(r) is { } value ? shape.Write(value, units) : null, shape, description);
        return null;
    }

    public TValue Default<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, TValue value, string description)
        where TValue : notnull
    {
        _fields.Add(new()
        {
            Name = name,
            Description = description,
            Write = (r, units) => shape.Write(get(r), units),
            IsDefault = r => value.Equals(get(r)),
            Schema = shape.Schema,
            Default = () => shape.Write(value, UnitSystem.Millimetres),
        });
        return default!;
    }

    public TValue Usual<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, Func<UnitSystem, TValue> usual, string description)
        where TValue : notnull
    {
        var inches = shape.Write(usual(UnitSystem.Inches), UnitSystem.Inches)!.ToJsonString();
        var millimetres = shape.Write(usual(UnitSystem.Millimetres), UnitSystem.Millimetres)!.ToJsonString();
        var note = inches == millimetres ? $" Usual: {inches}." : $" Usual: {millimetres}, or {inches} in a job in inches.";
        Add(name, (r, units) => shape.Write(get(r), units), shape, description + note);
        return default!;
    }

    public TValue Section<TValue>(string name, Func<T, TValue> get, RecordShape<TValue> shape, string description)
        where TValue : class
    {
        Add(name, (r, units) => shape.Write(get(r), units) is JsonObject { Count: > 0 } section ? section : null, shape, description);
        return null!;
    }

    public ValueList<TValue> Items<TValue>(
        string name, Func<T, ValueList<TValue>> get, ReadableShape<TValue> item, int least, int most, string description)
    {
        var shape = new ListShape<TValue>(item, least, most);
        Add(name, (r, units) => get(r) is { Count: > 0 } list ? shape.Write(list, units) : null, shape, description);
        return null!;
    }

    public void Constant(string name, int value, string description) => _fields.Add(new()
    {
        Name = name,
        Description = description,
        IsRequired = true,
        Write = (_, _) => JsonValue.Create(value),
        Schema = _ => new() { ["const"] = value },
    });

    public void Ignored(string name, string description) => _fields.Add(new()
    {
        Name = name,
        Description = description,
        Write = (_, _) => null,
        Schema = _ => new() { ["type"] = "string" },
    });

    private void Add<TValue>(string name, Func<T, UnitSystem, JsonNode?> write, Shape<TValue> shape, string description, bool isRequired = false) =>
        _fields.Add(new() { Name = name, Description = description, IsRequired = isRequired, Write = write, Schema = shape.Schema });
}

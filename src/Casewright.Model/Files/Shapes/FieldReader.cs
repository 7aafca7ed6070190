using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>Reads the fields of one record. After a failure it goes on, so that every problem of the record is found.</summary>
/// <typeparam name="T">The record.</typeparam>
internal sealed class FieldReader<T>(SourceObject source, NodePath path, ReadContext context) : IFields<T>
{
    /// <summary>Whether a field could not be read; the record built from the fields is then of no use.</summary>
    public bool Failed { get; private set; }

    public TValue Required<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, string description)
    {
        if (source[name] is not null)
            return TryRead(name, shape, out var value) ? value : default!;
        FailMissing(name, shape.Accepted);
        return default!;
    }

    public TValue? Optional<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : class => TryRead(name, shape, out var value) ? value : null;

    public TValue? OptionalValue<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : struct => TryRead(name, shape, out var value) ? value : null;

    public TValue Default<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, TValue value, string description)
        where TValue : notnull => TryRead(name, shape, out var read) ? read : value;

    public TValue Usual<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, Func<UnitSystem, TValue> usual, string description)
        where TValue : notnull
    {
        if (TryRead(name, shape, out var value))
            return value;
        if (context.Units is { } units)
            return usual(units);
        Failed = true;
        return default!;
    }

    public TValue Section<TValue>(string name, Func<T, TValue> get, RecordShape<TValue> shape, string description)
        where TValue : class
    {
        var node = source[name] ?? new SourceObject(source.Position, []);
        if (shape.TryRead(node, path.Field(name), context, out var value))
            return value;
        Failed = true;
        return null!;
    }

    public ValueList<TValue> Items<TValue>(
        string name, Func<T, ValueList<TValue>> get, ReadableShape<TValue> item, int least, int most, string description) =>
        TryRead(name, new ListShape<TValue>(item, least, most), out var list) ? list : [];

    public void Constant(string name, int value, string description)
    {
        var accepted = value.ToString(CultureInfo.InvariantCulture);
        if (source[name] is not { } node)
            FailMissing(name, accepted);
        else if (node is not SourceNumber number || !number.TryDecimal(out var read) || read != value)
            Failed = !context.Fail(path.Field(name), node.Position, "This value is fixed.", node.Shown, accepted);
    }

    public void Ignored(string name, string description)
    {
        if (source[name] is { } node and not SourceText)
            Failed = !context.Fail(path.Field(name), node.Position, "A text is needed here.", node.Shown, "a text");
    }

    private bool TryRead<TValue>(string name, ReadableShape<TValue> shape, [MaybeNullWhen(false)] out TValue value)
    {
        value = default;
        if (source[name] is not { } node)
            return false;
        if (shape.TryRead(node, path.Field(name), context, out value))
            return true;
        Failed = true;
        return false;
    }

    private void FailMissing(string name, string accepted)
    {
        Failed = true;
        context.Fail(path.Field(name), source.Position, $"The field \"{name}\" is missing.", "", accepted);
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>
/// The fields of a record as its file shows them. A record is described by one function that builds it from its fields; the same
/// function is run once to learn the fields, for writing and for the schema, and once for every record that is read.
/// It must ask for all fields on every run, whatever their values.
/// </summary>
/// <typeparam name="T">The record.</typeparam>
internal interface IFields<T>
{
    /// <summary>A field that must be there.</summary>
    TValue Required<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, string description);

    /// <summary>A field that may be left out, and then is null.</summary>
    TValue? Optional<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : class;

    /// <summary>A field that may be left out, and then is null.</summary>
    TValue? OptionalValue<TValue>(string name, Func<T, TValue?> get, ReadableShape<TValue> shape, string description)
        where TValue : struct;

    /// <summary>A field that may be left out, and then has a value that does no harm. It is written only when it differs.</summary>
    TValue Default<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, TValue value, string description)
        where TValue : notnull;

    /// <summary>A field that may be left out, and then has the usual value of the job's unit system. It is always written.</summary>
    TValue Usual<TValue>(string name, Func<T, TValue> get, ReadableShape<TValue> shape, Func<UnitSystem, TValue> usual, string description)
        where TValue : notnull;

    /// <summary>An object that may be left out, and then is read as if it were empty.</summary>
    TValue Section<TValue>(string name, Func<T, TValue> get, RecordShape<TValue> shape, string description)
        where TValue : class;

    /// <summary>A list that may be left out, and then is empty.</summary>
    ValueList<TValue> Items<TValue>(string name, Func<T, ValueList<TValue>> get, ReadableShape<TValue> item, int least, int most, string description);

    /// <summary>A field that always has the same value in a file of this version.</summary>
    void Constant(string name, int value, string description);

    /// <summary>A text for other programs, which is read over and not written.</summary>
    void Ignored(string name, string description);
}

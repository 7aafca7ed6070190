using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>
/// A record as a JSON object that is written for other programs and never read back. Every field is always there, so that a reader can
/// count on it; what is not known is null. Lengths are numbers of millimetres.
/// </summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="name">Name of the record in the schema.</param>
/// <param name="description">What it is, for the schema.</param>
internal sealed class ViewShape<T>(string name, string description) : Shape<T>
{
    private readonly List<Field<T>> _fields = [];

    /// <inheritdoc/>
    public override JsonNode Write(T value, UnitSystem units)
    {
        var written = new JsonObject();
        foreach (var field in _fields)
            written[field.Name] = field.Write(value, units);
        return written;
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaBook book) => book.Reference(name, this, () =>
    {
        var properties = new JsonObject();
        foreach (var field in _fields)
        {
            properties[field.Name] = field.Schema(book);
            properties[field.Name]!["description"] = field.Description;
        }

        return new()
        {
            ["description"] = description,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = new JsonArray([.. _fields.Select(f => (JsonNode)f.Name)]),
            ["additionalProperties"] = false,
        };
    });

    /// <summary>A text.</summary>
    public ViewShape<T> Text(string field, Func<T, string> get, string about) =>
        Add(field, r => JsonValue.Create(get(r)), about, _ => Type("string"));

    /// <summary>A text, or null.</summary>
    public ViewShape<T> TextOrNull(string field, Func<T, string?> get, string about) =>
        Add(field, r => get(r) is { } text ? JsonValue.Create(text) : null, about, _ => Type("string", "null"));

    /// <summary>Texts, mostly ids.</summary>
    public ViewShape<T> Texts(string field, Func<T, IEnumerable<string>> get, string about) =>
        Add(field, r => new JsonArray([.. get(r).Select(t => (JsonNode)t)]), about, _ => ListOf(Type("string")));

    /// <summary>A whole number.</summary>
    public ViewShape<T> Count(string field, Func<T, int> get, string about) =>
        Add(field, r => JsonValue.Create(get(r)), about, _ => Type("integer"));

    /// <summary>A whole number, or null.</summary>
    public ViewShape<T> CountOrNull(string field, Func<T, int?> get, string about) =>
        Add(field, r => get(r) is { } count ? JsonValue.Create(count) : null, about, _ => Type("integer", "null"));

    /// <summary>An exact decimal, or null.</summary>
    public ViewShape<T> DecimalOrNull(string field, Func<T, decimal?> get, string about) =>
        Add(field, r => get(r) is { } number ? JsonValue.Create(number) : null, about, _ => Type("number", "null"));

    /// <summary>Yes or no.</summary>
    public ViewShape<T> Flag(string field, Func<T, bool> get, string about) =>
        Add(field, r => JsonValue.Create(get(r)), about, _ => Type("boolean"));

    /// <summary>An exact decimal: an amount in the job's currency, or a number of days.</summary>
    public ViewShape<T> Decimal(string field, Func<T, decimal> get, string about) =>
        Add(field, r => JsonValue.Create(get(r)), about, _ => Type("number"));

    /// <summary>A number; null when there is none, or none that can be written.</summary>
    public ViewShape<T> NumberOrNull(string field, Func<T, double?> get, string about) =>
        Add(
            field,
            r => get(r) is { } number && double.IsFinite(number) ? JsonValue.Create(number) : null,
            about,
            _ => Type("number", "null"));

    /// <summary>A length in millimetres, as an exact decimal.</summary>
    public ViewShape<T> Length(string field, Func<T, Length> get, string about) =>
        Add(field, r => JsonValue.Create(get(r).Millimetres), about, MillimetresIn);

    /// <summary>A length in millimetres, or null.</summary>
    public ViewShape<T> LengthOrNull(string field, Func<T, Length?> get, string about) => Add(
        field,
        r => get(r) is { } length ? JsonValue.Create(length.Millimetres) : null,
        about,
        b => new() { ["anyOf"] = new JsonArray(MillimetresIn(b), Type("null")) });

    /// <summary>Lengths in millimetres.</summary>
    public ViewShape<T> Lengths(string field, Func<T, IEnumerable<Length>> get, string about) => Add(
        field,
        r => new JsonArray([.. get(r).Select(l => (JsonNode)l.Millimetres)]),
        about,
        b => ListOf(MillimetresIn(b)));

    /// <summary>A date (ISO 8601), or null.</summary>
    public ViewShape<T> DateOrNull(string field, Func<T, DateOnly?> get, string about) => Add(
        field,
        r => get(r) is { } date ? JsonValue.Create(date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)) : null,
        about,
        _ => new() { ["type"] = new JsonArray("string", "null"), ["format"] = "date" });

    /// <summary>A moment by the clock of the shop (ISO 8601 without a time zone), or null.</summary>
    public ViewShape<T> MomentOrNull(string field, Func<T, DateTime?> get, string about) => Add(
        field,
        r => get(r) is { } moment ? JsonValue.Create(moment.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture)) : null,
        about,
        _ => Type("string", "null"));

    /// <summary>A moment by the clock of the shop (ISO 8601 without a time zone).</summary>
    public ViewShape<T> Moment(string field, Func<T, DateTime> get, string about) => Add(
        field,
        r => JsonValue.Create(get(r).ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture)),
        about,
        _ => Type("string"));

    /// <summary>A value of an enumeration, by name.</summary>
    public ViewShape<T> Choice<TValue>(string field, Func<T, TValue> get, string about)
        where TValue : struct, Enum => Add(field, r => ChoiceShape.NameOf(get(r)), about, _ => Names<TValue>());

    /// <summary>A value of an enumeration, by name, or null.</summary>
    public ViewShape<T> ChoiceOrNull<TValue>(string field, Func<T, TValue?> get, string about)
        where TValue : struct, Enum => Add(
            field,
            r => get(r) is { } value ? ChoiceShape.NameOf(value) : null,
            about,
            _ => new() { ["anyOf"] = new JsonArray(Names<TValue>(), Type("null")) });

    /// <summary>A record.</summary>
    public ViewShape<T> One<TValue>(string field, Func<T, TValue> get, Shape<TValue> shape, string about) =>
        Add(field, r => shape.Write(get(r), UnitSystem.Millimetres), about, shape.Schema);

    /// <summary>A record, or null.</summary>
    public ViewShape<T> OneOrNull<TValue>(string field, Func<T, TValue?> get, Shape<TValue> shape, string about)
        where TValue : class => Add(
            field,
            r => get(r) is { } value ? shape.Write(value, UnitSystem.Millimetres) : null,
            about,
            b => new() { ["anyOf"] = new JsonArray(shape.Schema(b), Type("null")) });

    /// <summary>Records.</summary>
    public ViewShape<T> Many<TValue>(string field, Func<T, IEnumerable<TValue>> get, Shape<TValue> shape, string about) => Add(
        field,
        r => new JsonArray([.. get(r).Select(v => shape.Write(v, UnitSystem.Millimetres))]),
        about,
        b => ListOf(shape.Schema(b)));

    /// <summary>A number that is the same in every file of one form.</summary>
    public ViewShape<T> Constant(string field, int value, string about) =>
        Add(field, _ => JsonValue.Create(value), about, _ => new() { ["const"] = value });

    private static JsonObject Type(params string[] types) =>
        new() { ["type"] = types.Length == 1 ? types[0] : new JsonArray([.. types.Select(t => (JsonNode)t)]) };

    private static JsonObject ListOf(JsonObject item) => new() { ["type"] = "array", ["items"] = item };

    private static JsonObject Names<TValue>()
        where TValue : struct, Enum => new() { ["enum"] = new JsonArray([.. Enum.GetValues<TValue>().Select(v => (JsonNode)ChoiceShape.NameOf(v))]) };

    private static JsonObject MillimetresIn(SchemaBook book) => book.Reference("millimetres", "a length", () => new()
    {
        ["description"] = "A length in millimetres, as an exact decimal with at most six places.",
        ["type"] = "number",
    });

    private ViewShape<T> Add(string field, Func<T, JsonNode?> write, string about, Func<SchemaBook, JsonObject> schema)
    {
        _fields.Add(new() { Name = field, Description = about, IsRequired = true, Write = (r, _) => write(r), Schema = schema });
        return this;
    }
}

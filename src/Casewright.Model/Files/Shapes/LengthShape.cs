using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A length within limits, written as a text.</summary>
/// <param name="least">Least length; not negative.</param>
/// <param name="allowsLeast">Whether the least length itself is allowed.</param>
/// <param name="most">Largest length.</param>
internal sealed class LengthShape(Length least, bool allowsLeast, Length most) : ReadableShape<Length>
{
    /// <summary>Longest measure of any job: 30 m.</summary>
    public static Length Longest { get; } = Length.FromMillimetres(30_000);

    public override string Accepted =>
        $"{Range}, as a text in quotes such as \"2440 mm\", \"96 in\" or \"8 ft\"";

    private string Range => allowsLeast
        ? $"a length from {Name(least)} to {Name(most)}"
        : $"a length above {Name(least)}, at most {Name(most)}";

    /// <summary>A length above zero.</summary>
    public static LengthShape Positive(decimal mostMillimetres = 30_000) => new(Length.Zero, allowsLeast: false, Length.FromMillimetres(mostMillimetres));

    /// <summary>A length that may be zero.</summary>
    public static LengthShape ZeroOrMore(decimal mostMillimetres = 30_000) => new(Length.Zero, allowsLeast: true, Length.FromMillimetres(mostMillimetres));

    /// <summary>A length between two limits, both allowed.</summary>
    public static LengthShape Between(decimal leastMillimetres, decimal mostMillimetres) =>
        new(Length.FromMillimetres(leastMillimetres), allowsLeast: true, Length.FromMillimetres(mostMillimetres));

    public override JsonNode Write(Length value, UnitSystem units) => JsonValue.Create(LengthFormat.Exact(value, units));

    public override JsonObject Schema(SchemaBook book)
    {
        var reference = book.Reference("length", typeof(LengthShape), Definition);
        reference["description"] = char.ToUpperInvariant(Range[0]) + Range[1..] + ".";
        return reference;
    }

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out Length value)
    {
        value = Length.Zero;
        if (node is SourceNumber number)
            return FailBareNumber(number, path, context);
        if (node is not SourceText text)
            return FailKind(node, path, context, "A length is needed here.", out value);
        var reading = LengthReader.Read(text.Value, context.Units ?? UnitSystem.Inches);
        if (reading.Refusal is { } refusal)
            return context.Fail(path, node.Position, refusal.Reason, node.Shown, refusal.Accepted);
        if (context.Units is null && !reading.HasUnit)
            return false;
        value = reading.Value!.Value;
        return (IsInRange(value) && !IsSigned(text.Value)) || FailRange(text, reading, path, context);
    }

    private static JsonObject Definition() => new()
    {
        ["description"] = "A length, as a text: with its unit, or a number alone in the job's unit (a fraction always needs a unit in a job in millimetres). "
            + "Feet and inches, fractions, decimals, ½ ¾ ⅝, primes and typographic quotes are read. It is kept exactly, never rounded.",
        ["type"] = "string",
        ["maxLength"] = 64,
        ["pattern"] = LengthReader.UnsignedPattern,
        ["examples"] = new JsonArray("2440 mm", "118 5/8 in", "9 ft 10 5/8 in", "118.625 in", "3.013 m"),
    };

    /// <summary>A text that is a length begins with its sign, where it has one; a signed zero is refused too, as the schema does.</summary>
    private static bool IsSigned(string text) => char.GetUnicodeCategory(text.TrimStart()[0]) is UnicodeCategory.DashPunctuation or UnicodeCategory.MathSymbol;

    private static string Name(Length length) => length >= Length.FromMillimetres(1000) && length.Nanometres % (100 * Length.NanometresPerMillimetre) == 0
        ? FormattableString.Invariant($"{length.Millimetres / 1000:0.#} m")
        : length == Length.Zero ? "0" : length.ToString();

    private bool IsInRange(Length value) => (allowsLeast ? value >= least : value > least) && value <= most;

    private bool FailBareNumber(SourceNumber number, NodePath path, ReadContext context)
    {
        var unit = context.Units == UnitSystem.Inches ? "in" : "mm";
        return context.Fail(
            path,
            number.Position,
            "A length is written as a text with its unit, not as a bare number.",
            number.Shown,
            $"\"{number.Shown} {unit}\" if {unit} is meant; {Range}");
    }

    private bool FailRange(SourceText text, LengthReading reading, NodePath path, ReadContext context)
    {
        var value = reading.Value!.Value;
        var message = value < Length.Zero || IsSigned(text.Value) ? "This length must not be negative."
            : value == Length.Zero ? "This length must not be zero."
            : IsInRange(value) ? "This length is out of range."
            : value < least ? "This length is too small." : "This length is too large.";
        return context.Fail(path, text.Position, message + UnitHint(text, reading, context), text.Shown, Accepted);
    }

    /// <summary>A number that fits in the other unit was most likely meant in it.</summary>
    private string UnitHint(SourceText text, LengthReading reading, ReadContext context)
    {
        if (reading.HasUnit || context.Units is not { } units)
            return "";
        var other = units == UnitSystem.Inches ? UnitSystem.Millimetres : UnitSystem.Inches;
        var (unit, otherUnit) = units == UnitSystem.Inches ? ("inches", "mm") : ("millimetres", "in");
        return LengthReader.Read(text.Value, other).Value is { } meant && IsInRange(meant)
            ? $" Without a unit it was read in {unit}; was {text.Value.Trim()} {otherUnit} meant?"
            : "";
    }
}

using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

<<<<<<< HEAD
/// <summary>An exact decimal number with at most four places, whose unit its field names.</summary>
/// <param name="least">Least value.</param>
/// <param name="allowsLeast">Whether the least value itself is allowed.</param>
/// <param name="most">Largest value.</param>
internal sealed class DecimalShape(decimal least, bool allowsLeast, decimal most) : ReadableShape<decimal>
{
    private const int Places = 4;

    public override string Accepted => string.Create(
        CultureInfo.InvariantCulture,
        $"a number {(allowsLeast ? $"from {least} to {most}" : $"above {least}, at most {most}")}, with at most four decimals");

    /// <summary>A number above 0.</summary>
    public static DecimalShape Positive(decimal most) => new(0, allowsLeast: false, most);

    /// <summary>A number between two limits, both allowed.</summary>
    public static DecimalShape Between(decimal least, decimal most) => new(least, allowsLeast: true, most);

    public override JsonNode Write(decimal value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "number",
        [allowsLeast ? "minimum" : "exclusiveMinimum"] = least,
        ["maximum"] = most,
        ["multipleOf"] = 0.0001m,
    };
=======
/// <summary>An exact decimal number within limits, both allowed, to 1/10 000; its field names its unit.</summary>
internal sealed class DecimalShape(decimal least, decimal most) : ReadableShape<decimal>
{
    private const int Places = 4;

    /// <summary>A share of a whole: 0.25 is a quarter.</summary>
    public static DecimalShape Share { get; } = new(0, 1);

    /// <summary>Minutes of a standard time.</summary>
    public static DecimalShape Minutes { get; } = new(0.01m, 10_000);

    public override string Accepted => string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most} with at most four decimals");

    public override JsonNode Write(decimal value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "number", ["minimum"] = least, ["maximum"] = most, ["multipleOf"] = 0.0001m };
>>>>>>> f9ecd1b (Price a planned job line by line, and hold timetable and price to tables worked by hand)

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out decimal value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "A number is needed here.", out value);
<<<<<<< HEAD
        if (!decimal.TryParse(number.Digits, NumberStyles.Float, CultureInfo.InvariantCulture, out value)
            || (allowsLeast ? value < least : value <= least)
            || value > most)
        {
            return context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
        }

=======
        if (!decimal.TryParse(number.Digits, NumberStyles.Float, CultureInfo.InvariantCulture, out value) || value < least || value > most)
            return context.Fail(path, node.Position, "This number is out of range.", node.Shown, Accepted);
>>>>>>> f9ecd1b (Price a planned job line by line, and hold timetable and price to tables worked by hand)
        return decimal.Round(value, Places) == value
            || context.Fail(path, node.Position, "This number has too many decimals.", node.Shown, Accepted);
    }
}

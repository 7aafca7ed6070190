using System.Text.Json.Nodes;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>An amount of money in the job's currency, not negative, to 1/10 000.</summary>
internal sealed class MoneyShape : ReadableShape<decimal>
{
    private const int Places = 4;
    private const decimal Most = 1_000_000_000;

    public static MoneyShape Instance { get; } = new();

    public override string Accepted => "an amount from 0 to 1000000000 with at most four decimals, as a plain number such as 84.50";

    public override JsonNode Write(decimal value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "number", ["minimum"] = 0, ["maximum"] = Most, ["multipleOf"] = 0.0001m };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, out decimal value)
    {
        if (node is not SourceNumber number)
            return FailKind(node, path, context, "An amount of money is needed here.", out value);
        if (!number.TryDecimal(out value))
            return context.Fail(path, node.Position, "This amount is out of range.", node.Shown, Accepted);
        if (value < 0)
            return context.Fail(path, node.Position, "An amount of money must not be negative.", node.Shown, Accepted);
        if (value > Most)
            return context.Fail(path, node.Position, "This amount is out of range.", node.Shown, Accepted);
        return decimal.Round(value, Places) == value
            || context.Fail(path, node.Position, "This amount has too many decimals.", node.Shown, Accepted);
    }
}

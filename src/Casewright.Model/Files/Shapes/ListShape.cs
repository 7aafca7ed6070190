using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Casewright.Model.Collections;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A list of values of one shape.</summary>
/// <typeparam name="T">An item.</typeparam>
/// <param name="item">Shape of an item.</param>
/// <param name="least">Fewest items.</param>
/// <param name="most">Most items.</param>
internal sealed class ListShape<T>(ReadableShape<T> item, int least, int most) : ReadableShape<ValueList<T>>
{
    public override string Accepted => string.Create(CultureInfo.InvariantCulture, $"a list in [ ] of {least} to {most} entries");

    public override JsonNode Write(ValueList<T> value, UnitSystem units) => new JsonArray([.. value.Select(v => item.Write(v, units))]);

    public override JsonObject Schema(SchemaBook book) => new()
    {
        ["type"] = "array",
        ["items"] = item.Schema(book),
        ["minItems"] = least,
        ["maxItems"] = most,
    };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out ValueList<T> value)
    {
        if (node is not SourceList list)
            return FailKind(node, path, context, "A list is needed here.", out value);
        value = null;
        var count = list.Items.Count;
        if (count > most)
            return context.Fail(path, node.Position, "This list is too long.", $"{count} entries", Accepted);
        var found = count == 0 ? node.Shown : $"{count} entries";
        var isLongEnough = count >= least || context.Fail(path, node.Position, "This list is too short.", found, Accepted);
        var items = new List<T>(count);
        for (var i = 0; i < count; i++)
        {
            if (item.TryRead(list.Items[i], path.Item(i), context, out var read))
                items.Add(read);
        }

        if (!isLongEnough || items.Count < count)
            return false;
        value = items.ToValueList();
        return true;
    }
}

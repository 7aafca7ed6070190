using Casewright.Model.Files.Source;

namespace Casewright.Model.Files.Shapes;

/// <summary>A place in a file at which a check of a whole record reports.</summary>
internal sealed class Spot(SourceNode node, NodePath path, ReadContext context)
{
    /// <summary>The place of a field; of a field that is not there, the path with the position of its object.</summary>
    public Spot this[string field] => new((node as SourceObject)?[field] ?? node, path.Field(field), context);

    /// <summary>The place of an item.</summary>
    public Spot this[int index] => new(node is SourceList list && index < list.Items.Count ? list.Items[index] : node, path.Item(index), context);

    /// <summary>Notes a problem here.</summary>
    /// <param name="message">What is wrong, in one sentence.</param>
    /// <param name="found">What was found; null to show the value here.</param>
    /// <param name="accepted">What is accepted.</param>
    public void Fail(string message, string? found, string accepted) => context.Fail(path, node.Position, message, found ?? node.Shown, accepted);
}

using System.Globalization;
using System.Text;

namespace Casewright.Model.Files.Shapes;

/// <summary>The path to a value in a file, such as runs[0].base.height.</summary>
internal sealed class NodePath
{
    private const int LongestName = 40;
    private readonly NodePath? _parent;
    private readonly string? _name;
    private readonly int _index;

    private NodePath(NodePath? parent, string? name, int index)
    {
        _parent = parent;
        _name = name;
        _index = index;
    }

    /// <summary>The file's outermost object.</summary>
    public static NodePath Root { get; } = new(null, null, -1);

    /// <summary>A field of the value here.</summary>
    public NodePath Field(string name) => new(this, name, -1);

    /// <summary>An item of the list here.</summary>
    public NodePath Item(int index) => new(this, null, index);

    /// <inheritdoc/>
    public override string ToString()
    {
        var text = new StringBuilder();
        Append(text);
        return text.ToString();
    }

    private void Append(StringBuilder text)
    {
        _parent?.Append(text);
        if (_index >= 0)
            text.Append('[').Append(_index.ToString(CultureInfo.InvariantCulture)).Append(']');
        else if (_name is not null)
            text.Append(text.Length > 0 ? "." : "").Append(Plain(_name));
    }

    /// <summary>Any name may stand in a faulty file; on one line and short, it still shows where the fault is.</summary>
    private static string Plain(string name)
    {
        var line = string.Concat(name.Select(c => char.IsControl(c) ? ' ' : c));
        return line.Length <= LongestName ? line : string.Concat(line.AsSpan(0, LongestName - 3), "...");
    }
}

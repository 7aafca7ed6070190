using System.Globalization;

namespace Casewright.Model.Files.Source;

/// <summary>A place in a file: line and column in characters, both from 1.</summary>
internal readonly record struct SourcePosition(int Line, int Column) : IComparable<SourcePosition>
{
    public int CompareTo(SourcePosition other) => (Line, Column).CompareTo((other.Line, other.Column));
}

/// <summary>A JSON value that knows where it was written.</summary>
/// <param name="Position">Where it begins.</param>
internal abstract record SourceNode(SourcePosition Position)
{
    private const int LongestShown = 60;

    /// <summary>The value as it is shown in a problem: short, and never more than one line.</summary>
    public abstract string Shown { get; }

    protected static string Shorten(string text)
    {
        var line = text.ReplaceLineEndings(" ");
        return line.Length <= LongestShown ? line : string.Concat(line.AsSpan(0, LongestShown - 4), " ...");
    }
}

/// <summary>A text.</summary>
internal sealed record SourceText(SourcePosition Position, string Value) : SourceNode(Position)
{
    public override string Shown => "\"" + Shorten(Value) + "\"";
}

/// <summary>A number, as it was written.</summary>
internal sealed record SourceNumber(SourcePosition Position, string Digits) : SourceNode(Position)
{
    public override string Shown => Shorten(Digits);

    /// <summary>The number as an exact decimal.</summary>
    /// <returns>False when it is too large for one.</returns>
    public bool TryDecimal(out decimal value) => decimal.TryParse(Digits, NumberStyles.Float, CultureInfo.InvariantCulture, out value);

    /// <summary>The number as a whole one.</summary>
    /// <returns>False when it has a fraction, or is too large for a decimal.</returns>
    public bool TryWhole(out decimal value) => TryDecimal(out value) && value == decimal.Truncate(value);
}

/// <summary>True or false.</summary>
internal sealed record SourceFlag(SourcePosition Position, bool Value) : SourceNode(Position)
{
    public override string Shown => Value ? "true" : "false";
}

/// <summary>Null.</summary>
internal sealed record SourceNull(SourcePosition Position) : SourceNode(Position)
{
    public override string Shown => "null";
}

/// <summary>A list.</summary>
internal sealed record SourceList(SourcePosition Position, IReadOnlyList<SourceNode> Items) : SourceNode(Position)
{
    public override string Shown => Items.Count == 0 ? "an empty list" : "a list";
}

/// <summary>A field of an object.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Position">Where the name begins.</param>
/// <param name="Value">Its value.</param>
internal sealed record SourceMember(string Name, SourcePosition Position, SourceNode Value);

/// <summary>An object; a name that was written twice is there twice.</summary>
internal sealed record SourceObject(SourcePosition Position, IReadOnlyList<SourceMember> Members) : SourceNode(Position)
{
    public override string Shown => Members.Count == 0 ? "an empty object" : "an object";

    /// <summary>The value of the first field of this name; null when there is none.</summary>
    public SourceNode? this[string name]
    {
        get
        {
            foreach (var member in Members)
            {
                if (member.Name == name)
                    return member.Value;
            }

            return null;
        }
    }
}

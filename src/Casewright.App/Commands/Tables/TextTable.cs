using System.Text;

namespace Casewright.App.Commands.Tables;

/// <summary>A table in plain text: columns as wide as their longest cell, the first to the left, the others to the right.</summary>
public sealed class TextTable
{
    private const string Gap = "  ";
    private readonly List<string[]> _rows = [];

    /// <summary>A table with heads over its columns.</summary>
    public TextTable(params string[] heads) => _rows.Add(heads);

    /// <summary>Adds a row; as many cells as there are columns.</summary>
    public void Add(params string[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        if (cells.Length != _rows[0].Length)
            throw new ArgumentException($"The table has {_rows[0].Length} columns, not {cells.Length}.", nameof(cells));
        _rows.Add(cells);
    }

    /// <summary>Writes the table.</summary>
    public void Write(TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        var widths = Enumerable.Range(0, _rows[0].Length).Select(c => _rows.Max(r => r[c].Length)).ToArray();
        for (var r = 0; r < _rows.Count; r++)
        {
            writer.WriteLine(Line(_rows[r], widths));
            if (r == 0)
                writer.WriteLine(new string('-', widths.Sum() + (Gap.Length * (widths.Length - 1))));
        }
    }

    private static string Line(string[] cells, int[] widths)
    {
        var line = new StringBuilder();
        for (var c = 0; c < cells.Length; c++)
        {
            if (c > 0)
                line.Append(Gap);
            line.Append(c == 0 ? cells[c].PadRight(widths[c]) : cells[c].PadLeft(widths[c]));
        }

        return line.ToString().TrimEnd();
    }
}

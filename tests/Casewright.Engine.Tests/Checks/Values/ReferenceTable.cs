using System.Globalization;

namespace Casewright.Engine.Tests.Checks.Values;

/// <summary>One row of the outside table of check values.</summary>
public sealed record ReferenceRow(string Id, string Topic, double Expected, string Unit, double Tolerance);

/// <summary>The outside table of check values, where it is at hand.</summary>
internal static class ReferenceTable
{
    private static readonly Lazy<string?> Root = new(Find);

    public static string? Folder => Root.Value;

    public static IReadOnlyList<ReferenceRow> Rows() => Folder is null ? [] : [.. File.ReadLines(Path.Combine(Folder, "check-values.csv")).Skip(1).Select(Parse)];

    private static ReferenceRow Parse(string line)
    {
        var cells = Split(line);
        var expected = double.Parse(cells[3], CultureInfo.InvariantCulture);
        var tolerance = cells[5].Split(' ');
        var size = double.Parse(tolerance[1], CultureInfo.InvariantCulture);
        return new(cells[0], cells[1], expected, cells[4], tolerance[0] == "rel" ? size * Math.Abs(expected) : size);
    }

    private static List<string> Split(string line)
    {
        var (cells, cell, quoted) = (new List<string>(), new System.Text.StringBuilder(), false);
        foreach (var c in line)
        {
            if (c == '"')
                quoted = !quoted;
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
                cell.Append(c);
        }

        cells.Add(cell.ToString());
        return cells;
    }

    private static string? Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var candidate = Path.Combine(folder.FullName, "shared", "reference");
            if (File.Exists(Path.Combine(candidate, "check-values.csv")))
                return candidate;
        }

        return null;
    }
}

using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using ClosedXML.Excel;

namespace Casewright.Papers.Spreadsheets;

/// <summary>Writes lists as one workbook (Office Open XML), a sheet for each.</summary>
public static partial class Workbook
{
    /// <summary>The file. The time is given, never read from the clock, so that the same plan gives the same file.</summary>
    public static byte[] ToBytes(IReadOnlyList<ListTable> tables, string title, DateTime created)
    {
        ArgumentNullException.ThrowIfNull(tables);
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = title;
        workbook.Properties.Author = "Casewright";
        workbook.Properties.Created = created;
        workbook.Properties.Modified = created;
        foreach (var table in tables)
            Fill(workbook.Worksheets.Add(table.Name), table);
        using var stream = new MemoryStream();
        workbook.SaveAs(stream);
        return WithFixedTimes(stream, created);
    }

    private static void Fill(IXLWorksheet sheet, ListTable table)
    {
        for (var column = 0; column < table.Columns.Count; column++)
        {
            sheet.Cell(1, column + 1).SetValue(table.Columns[column]).Style.Font.Bold = true;
            sheet.Column(column + 1).Width = Width(table, column);
        }

        for (var row = 0; row < table.Rows.Count; row++)
        {
            for (var column = 0; column < table.Columns.Count; column++)
                Set(sheet.Cell(row + 2, column + 1), table.Rows[row][column]);
        }

        sheet.SheetView.FreezeRows(1);
    }

    // Set as text, never parsed: a name that starts with = stays a name.
    private static void Set(IXLCell cell, object? value)
    {
        if (value is decimal number)
            cell.SetValue(number);
        else if (value is string { Length: > 0 } text)
            cell.SetDataType(XLDataType.Text).SetValue(text);
    }

    private static double Width(ListTable table, int column)
    {
        var longest = table.Rows.Select(row => row[column] is string text ? text.Length : 9).Append(table.Columns[column].Length).Max();
        return Math.Clamp(longest + 2, 8, 50);
    }

    // The packaging layer stamps every entry with the clock and gives one part and some relations random names: lay the entries anew,
    // with the time of the plan and names by their order.
    private static byte[] WithFixedTimes(MemoryStream source, DateTime created)
    {
        using var result = new MemoryStream();
        using (var from = new ZipArchive(source, ZipArchiveMode.Read, leaveOpen: true))
        using (var to = new ZipArchive(result, ZipArchiveMode.Create, leaveOpen: true))
        {
            var entries = from.Entries.Select(entry => (entry.FullName, Text: ReadAll(entry))).ToList();
            var names = RandomNames(entries.Select(entry => entry.FullName + entry.Text));
            foreach (var (name, text) in entries)
            {
                var copy = to.CreateEntry(Renamed(name, names), CompressionLevel.Optimal);
                copy.LastWriteTime = new DateTimeOffset(DateTime.SpecifyKind(created, DateTimeKind.Utc));
                using var output = new StreamWriter(copy.Open(), new UTF8Encoding(false));
                output.Write(Renamed(text, names));
            }
        }

        return result.ToArray();
    }

    private static string ReadAll(ZipArchiveEntry entry)
    {
        using var input = new StreamReader(entry.Open(), Encoding.UTF8);
        return input.ReadToEnd();
    }

    private static Dictionary<string, string> RandomNames(IEnumerable<string> texts) => texts
        .SelectMany(text => RandomName().Matches(text).Select(match => match.Groups["name"].Value))
        .Distinct(StringComparer.Ordinal)
        .Select((name, i) => (name, i))
        .ToDictionary(pair => pair.name, pair => string.Create(CultureInfo.InvariantCulture, $"N{pair.i + 1}"), StringComparer.Ordinal);

    private static string Renamed(string text, Dictionary<string, string> names) =>
        names.Aggregate(text, (current, pair) => current.Replace(pair.Key, pair.Value, StringComparison.Ordinal));

    [GeneratedRegex("core-properties/(?<name>[0-9a-f]{16,})\\.psmdcp|Id=\"(?<name>R[0-9a-f]{12,})\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex RandomName();
}

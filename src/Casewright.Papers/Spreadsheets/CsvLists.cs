using System.Globalization;
using System.Text;

namespace Casewright.Papers.Spreadsheets;

/// <summary>Writes a list as comma-separated values by RFC 4180: CRLF between records, fields quoted where needed, quotes doubled.</summary>
public static class CsvLists
{
    private const string NewLine = "\r\n";

    private static readonly char[] FormulaStarts = ['=', '+', '-', '@', '\t', '\r'];
    private static readonly char[] NeedQuotes = [',', '"', '\r', '\n'];

    /// <summary>The file as text.</summary>
    public static string ToText(ListTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = new StringBuilder();
        AppendRecord(text, table.Columns);
        foreach (var row in table.Rows)
            AppendRecord(text, row.Select(Written));
        return text.ToString();
    }

    /// <summary>
    /// A text cell as written: one that a spreadsheet would take for a formula gets an apostrophe in front, so that a name in a job
    /// file can never run as a formula on the computer of whoever opens the list.
    /// </summary>
    public static string Guarded(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > 0 && FormulaStarts.Contains(text[0]) ? "'" + text : text;
    }

    private static void AppendRecord(StringBuilder text, IEnumerable<string> fields) => text.AppendJoin(',', fields.Select(Quoted)).Append(NewLine);

    private static string Quoted(string field) =>
        field.IndexOfAny(NeedQuotes) < 0 ? field : "\"" + field.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";

    private static string Written(object? cell) => cell switch
    {
        null => "",
        string text => Guarded(text),
        decimal number => number.ToString("0.############################", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A cell holds a {cell.GetType().Name}; text, number or nothing is accepted.", nameof(cell)),
    };
}

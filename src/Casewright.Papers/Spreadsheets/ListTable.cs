using Casewright.Model.Collections;

namespace Casewright.Papers.Spreadsheets;

/// <summary>A list for a spreadsheet: named columns and rows of texts, numbers or nothing.</summary>
/// <param name="Name">Name of the list, used for the sheet of a workbook.</param>
/// <param name="Columns">Heading of each column, with its unit.</param>
/// <param name="Rows">Rows; each cell is a <see cref="string"/>, a <see cref="decimal"/> or null.</param>
public sealed record ListTable(string Name, ValueList<string> Columns, ValueList<ValueList<object?>> Rows);

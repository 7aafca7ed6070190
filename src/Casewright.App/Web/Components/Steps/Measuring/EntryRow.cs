using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.App.Web.Components.Steps.Measuring;

/// <summary>One line of a table of readings.</summary>
/// <param name="Cells">Its lengths, column by column; null where nothing was read.</param>
/// <param name="Choice">Which of the table's choices it takes; zero where there are none.</param>
public sealed record EntryRow(ValueList<Length?> Cells, int Choice = 0)
{
    /// <summary>A line of these lengths.</summary>
    public static EntryRow Of(params Length?[] cells) => new([.. cells]);

    /// <summary>A line with nothing in it yet.</summary>
    public static EntryRow Empty(int columns) => new([.. Enumerable.Repeat((Length?)null, columns)]);

    /// <summary>Whether every column is filled.</summary>
    public bool IsFull => Cells.All(c => c is not null);

    /// <summary>The same with another length in a column.</summary>
    public EntryRow With(int column, Length? value) => this with { Cells = [.. Cells.Select((c, i) => i == column ? value : c)] };
}

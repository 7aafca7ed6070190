using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Editing;

/// <summary>Edits of the cases along a run: moving the line between two, giving one a width, adding, splitting, merging, removing.</summary>
/// <remarks>A run divided by rule is first written out column by column, as it stands, so that one case can differ.</remarks>
public static class ColumnEditing
{
    /// <summary>Moves the line between column <paramref name="left"/> and the next by <paramref name="by"/>; to the right when positive.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no line there.</exception>
    public static Job MoveLine(Job job, Casework casework, string runId, int left, Length by)
    {
        var (columns, widths) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(left);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(left, columns.Length - 1);
        columns[left] = columns[left] with { Width = widths[left] + by };
        columns[left + 1] = columns[left + 1] with { Width = widths[left + 1] - by };
        return With(job, runId, KeepOneFree(columns, left + 1));
    }

    /// <summary>Gives a column an outer width; the others without a width of their own share the rest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column.</exception>
    public static Job SetWidth(Job job, Casework casework, string runId, int column, Length? width)
    {
        var (columns, _) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length);
        columns[column] = columns[column] with { Width = width };
        return With(job, runId, KeepOneFree(columns, columns.Length - 1 == column ? 0 : columns.Length - 1));
    }

    /// <summary>Gives a column a number of equal bays.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column, or the number is below 1.</exception>
    public static Job SetBays(Job job, Casework casework, string runId, int column, int bays)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bays, 1);
        var (columns, _) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length);
        columns[column] = columns[column] with { Bays = bays };
        return With(job, runId, columns);
    }

    /// <summary>Adds a column like <paramref name="column"/> to its right; the columns without a width make room.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column.</exception>
    public static Job Add(Job job, Casework casework, string runId, int column)
    {
        var (columns, _) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length);
        var added = columns[column] with { Id = FreeId(columns), Width = null };
        return With(job, runId, [.. columns[..(column + 1)], added, .. columns[(column + 1)..]]);
    }

    /// <summary>Splits a column into two cases of half its width.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column.</exception>
    public static Job Split(Job job, Casework casework, string runId, int column)
    {
        var (columns, widths) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length);
        var bays = Math.Max(1, columns[column].Bays / 2);
        var half = widths[column] / 2;
        var left = columns[column] with { Bays = bays, Width = half };
        var right = columns[column] with { Id = FreeId(columns), Bays = Math.Max(1, columns[column].Bays - bays), Width = widths[column] - half };
        ColumnDesign[] split = [.. columns[..column], left, right, .. columns[(column + 1)..]];
        return With(job, runId, KeepOneFree(split, column + 1));
    }

    /// <summary>Merges a column with the next into one case that has the bays of both.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no column to its right.</exception>
    public static Job Merge(Job job, Casework casework, string runId, int column)
    {
        var (columns, widths) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length - 1);
        var merged = columns[column] with
        {
            Bays = columns[column].Bays + columns[column + 1].Bays,
            Width = columns[column].Width is null && columns[column + 1].Width is null ? null : widths[column] + widths[column + 1],
        };
        return With(job, runId, KeepOneFree([.. columns[..column], merged, .. columns[(column + 2)..]], column));
    }

    /// <summary>Removes a column; its neighbours without a width take the room.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such column, or it is the last one.</exception>
    public static Job Remove(Job job, Casework casework, string runId, int column)
    {
        var (columns, _) = WrittenOut(job, casework, runId);
        ArgumentOutOfRangeException.ThrowIfNegative(column);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(column, columns.Length);
        ArgumentOutOfRangeException.ThrowIfLessThan(columns.Length, 2, nameof(column));
        ColumnDesign[] rest = [.. columns[..column], .. columns[(column + 1)..]];
        return With(job, runId, KeepOneFree(rest, Math.Min(column, rest.Length - 1)));
    }

    private static (ColumnDesign[] Columns, Length[] Widths) WrittenOut(Job job, Casework casework, string runId)
    {
        var run = JobRuns.Find(job, runId);
        var cases = casework.Cases.Where(c => c.Run == runId && c.Tier == 0).OrderBy(c => c.Column).ToArray();
        ColumnDesign[] columns = run.Columns.Count > 0
            ? [.. run.Columns]
            : [.. cases.Select((c, i) => new ColumnDesign { Id = (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), Bays = c.Bays })];
        return (columns, [.. cases.Select(c => c.Width)]);
    }

    /// <summary>A run's widths add up only when one column takes what is left.</summary>
    private static ColumnDesign[] KeepOneFree(ColumnDesign[] columns, int preferred)
    {
        if (columns.All(c => c.Width is not null))
            columns[preferred] = columns[preferred] with { Width = null };
        return columns;
    }

    private static string FreeId(ColumnDesign[] columns)
    {
        var taken = columns.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        for (var number = columns.Length + 1; ; number++)
        {
            var id = number.ToString(System.Globalization.CultureInfo.InvariantCulture);
            if (!taken.Contains(id))
                return id;
        }
    }

    private static Job With(Job job, string runId, ColumnDesign[] columns) =>
        JobRuns.Change(job, runId, run => run with { Columns = columns.ToValueList(), Division = null });
}

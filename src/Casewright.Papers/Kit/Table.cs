using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>A column of a table.</summary>
/// <param name="Title">Words over the column.</param>
/// <param name="Share">Share of the width that is left after <paramref name="Fixed"/> columns; ignored when fixed.</param>
/// <param name="Fixed">Width in millimetres; null to share.</param>
/// <param name="Anchor">Start, middle or end of the column.</param>
/// <param name="Lettering">Lettering of its cells.</param>
public sealed record Column(string Title, double Share = 1, double? Fixed = null, Anchor Anchor = Anchor.Start, Lettering? Lettering = null);

/// <summary>A cell: text that is wrapped into it, a second text under it, or a tick box.</summary>
/// <param name="Text">Its text.</param>
/// <param name="Lettering">Its lettering; null for the column's.</param>
/// <param name="Second">Text under it in the lettering of second figures.</param>
/// <param name="Tick">Whether it holds a box to tick.</param>
/// <param name="Drawing">What to draw in it, inside the padding; null for nothing.</param>
/// <param name="LeastHeight">Height that the drawing needs, in millimetres.</param>
public sealed record Cell(
    string Text, Lettering? Lettering = null, string Second = "", bool Tick = false, Action<Sketch, Box>? Drawing = null, double LeastHeight = 0)
{
    /// <summary>An empty cell.</summary>
    public static Cell Empty { get; } = new("");

    /// <summary>A box to tick.</summary>
    public static Cell TickBox { get; } = new("", Tick: true);
}

/// <summary>A row of cells, or a heading or total across the table.</summary>
public sealed record Row(IReadOnlyList<Cell> Cells, string Across = "", bool Strong = false)
{
    /// <summary>A row of cells.</summary>
    public static Row Of(params Cell[] cells) => new(cells);

    /// <summary>A heading across the table, kept with the row after it.</summary>
    public static Row Heading(string text) => new([], text, true);

    /// <summary>A line across the table, such as a subtotal.</summary>
    public static Row Note(string text) => new([], text);
}

/// <summary>A table that wraps text inside its cells, repeats its head on every page and never cuts a row in two.</summary>
public sealed class Table
{
    private const double Padding = 1.2;
    private const double Gutter = 3.4;
    private const double TickSide = 4;

    private static readonly Lettering HeadLettering = new(9.5, Weight: FontWeight.SemiBold, Tone: Tone.Graphite);

    private readonly IReadOnlyList<Column> _columns;
    private readonly double[] _lefts;
    private readonly double[] _widths;

    private Table(IReadOnlyList<Column> columns, double width)
    {
        _columns = columns;
        _widths = Widths(columns, width);
        _lefts = new double[columns.Count];
        for (var i = 1; i < columns.Count; i++)
            _lefts[i] = _lefts[i - 1] + _widths[i - 1] + Gutter;
    }

    /// <summary>Draws a table into the flow of pages.</summary>
    public static void Draw(PageFlow flow, IReadOnlyList<Column> columns, IReadOnlyList<Row> rows)
    {
        ArgumentNullException.ThrowIfNull(flow);
        var table = new Table(columns, flow.Body.Width);
        table.DrawRows(flow, rows);
    }

    /// <summary>Draws as many rows as fit into a box, from the top, and returns how many that were and the height they took.</summary>
    public static (int Rows, double Height) DrawInto(Sketch sketch, Box box, IReadOnlyList<Column> columns, IReadOnlyList<Row> rows)
    {
        var table = new Table(columns, box.Width);
        var y = box.Top + table.DrawHead(sketch, box);
        var count = 0;
        foreach (var row in rows)
        {
            var height = table.Height(row);
            if (y + height > box.Bottom + 0.001)
                break;
            table.DrawRow(sketch, box with { Top = y, Height = height }, row);
            y += height;
            count++;
        }

        return (count, y - box.Top);
    }

    /// <summary>
    /// The rows with those that are taller than <paramref name="height"/> millimetres, table head included, split into several, so that
    /// each fits on a page of its own.
    /// </summary>
    public static IReadOnlyList<Row> Split(IReadOnlyList<Row> rows, IReadOnlyList<Column> columns, double width, double height)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var table = new Table(columns, width);
        return [.. rows.SelectMany(row => table.Split(row, height - table.HeadHeight))];
    }

    private IEnumerable<Row> Split(Row row, double height)
    {
        while (row.Cells.Count > 0 && Height(row) > height)
        {
            var parts = row.Cells.Select((cell, i) => SplitCell(cell, i, height - (2 * Padding))).ToList();
            yield return new([.. parts.Select(part => part.Here)]);
            row = new([.. parts.Select(part => part.Later)]);
        }

        yield return row;
    }

    private (Cell Here, Cell Later) SplitCell(Cell cell, int index, double height)
    {
        var lettering = Style(cell, index);
        var lines = Lines(cell.Text, lettering, index);
        // Two lines less than would fit leave room for the lowered first baseline and the second text.
        var most = Math.Max(1, (int)(height / lettering.LineHeight) - 2);
        return lines.Count <= most
            ? (cell, Cell.Empty)
            : (cell with { Text = string.Join('\n', lines.Take(most)), Second = "" }, cell with { Text = string.Join('\n', lines.Skip(most)), Tick = false, Drawing = null });
    }

    private void DrawRows(PageFlow flow, IReadOnlyList<Row> rows)
    {
        var headHeight = HeadHeight;
        rows = [.. rows.SelectMany(row => Split(row, flow.Body.Height - headHeight))];
        var needed = headHeight + (rows.Count > 0 ? WithNext(rows, 0) : 0);
        flow.Ensure(needed);
        flow.Draw(headHeight, (sketch, box) => DrawHead(sketch, box));
        for (var i = 0; i < rows.Count; i++)
        {
            if (flow.Ensure(WithNext(rows, i)))
                flow.Draw(headHeight, (sketch, box) => DrawHead(sketch, box));
            var row = rows[i];
            flow.Draw(Height(row), (sketch, box) => DrawRow(sketch, box, row));
        }
    }

    private double WithNext(IReadOnlyList<Row> rows, int index) =>
        Height(rows[index]) + (rows[index].Strong && rows[index].Cells.Count == 0 && index + 1 < rows.Count ? Height(rows[index + 1]) : 0);

    private double HeadHeight
    {
        get
        {
            var lines = _columns.Select((column, i) => WordWrap.Lines(column.Title, HeadLettering, _widths[i]).Count).DefaultIfEmpty(1).Max();
            return (lines * HeadLettering.LineHeight) + (2 * Padding);
        }
    }

    private double DrawHead(Sketch sketch, Box box)
    {
        var height = HeadHeight;
        for (var i = 0; i < _columns.Count; i++)
        {
            var lines = WordWrap.Lines(_columns[i].Title, HeadLettering, _widths[i]);
            var top = box.Top + height - Padding - (lines.Count * HeadLettering.LineHeight);
            DrawLines(sketch, lines, i, box.Left, top, HeadLettering);
        }

        sketch.Line(box.Left, box.Top + height, box.Right, box.Top + height, Pen.Thin);
        return height;
    }

    private void DrawRow(Sketch sketch, Box box, Row row)
    {
        if (row.Cells.Count == 0)
            DrawAcross(sketch, box, row);
        var baseline = FirstBaseline(row);
        for (var i = 0; i < row.Cells.Count; i++)
            DrawCell(sketch, box, row.Cells[i], i, baseline);
        sketch.Line(box.Left, box.Bottom, box.Right, box.Bottom, Pen.Hair);
    }

    private static void DrawAcross(Sketch sketch, Box box, Row row)
    {
        var lettering = AcrossLettering(row);
        sketch.Paragraph(row.Across, box.Left, box.Top + Padding + (row.Strong ? 1.5 : 0), box.Width, lettering);
    }

    private void DrawCell(Sketch sketch, Box box, Cell cell, int index, double baseline)
    {
        var left = box.Left + _lefts[index];
        if (cell.Tick)
            Symbols.TickBox(sketch, left, box.Top + Padding + baseline - TickSide + 0.4, TickSide);
        cell.Drawing?.Invoke(sketch, new(left, box.Top + Padding, _widths[index], box.Height - (2 * Padding)));
        var lettering = Style(cell, index);
        var top = box.Top + Padding + baseline - Sketch.Ascent(lettering);
        var lines = Lines(cell.Text, lettering, index);
        DrawLines(sketch, lines, index, box.Left, top, lettering);
        DrawLines(sketch, Lines(cell.Second, Lettering.SecondFigure, index), index, box.Left, top + (lines.Count * lettering.LineHeight), Lettering.SecondFigure);
    }

    private void DrawLines(Sketch sketch, IReadOnlyList<string> lines, int index, double left, double top, Lettering lettering)
    {
        var anchor = _columns[index].Anchor;
        var x = left + _lefts[index] + (anchor == Anchor.Start ? 0 : anchor == Anchor.Middle ? _widths[index] / 2 : _widths[index]);
        for (var line = 0; line < lines.Count; line++)
            sketch.Text(lines[line], x, top + (line * lettering.LineHeight) + Sketch.Ascent(lettering), lettering, anchor);
    }

    private double Height(Row row)
    {
        if (row.Cells.Count == 0)
        {
            var lettering = AcrossLettering(row);
            return (WordWrap.Lines(row.Across, lettering, _widths.Sum() + (Gutter * (_widths.Length - 1))).Count * lettering.LineHeight)
                + (2 * Padding) + (row.Strong ? 1.5 : 0);
        }

        var baseline = FirstBaseline(row);
        return row.Cells.Select((cell, i) => CellHeight(cell, i, baseline)).Max() + (2 * Padding);
    }

    // From the top of the row's cells to the first line's baseline, which all cells share.
    private double FirstBaseline(Row row) => row.Cells
        .Select((cell, i) => cell.Tick ? TickSide : cell.Text.Length == 0 ? 0 : Sketch.Ascent(Style(cell, i))).DefaultIfEmpty(0).Max();

    private double CellHeight(Cell cell, int index, double baseline)
    {
        var lettering = Style(cell, index);
        var text = (Lines(cell.Text, lettering, index).Count * lettering.LineHeight)
            + (Lines(cell.Second, Lettering.SecondFigure, index).Count * Lettering.SecondFigure.LineHeight);
        var lowered = text == 0 ? 0 : text + baseline - Sketch.Ascent(lettering);
        return Math.Max(Math.Max(lowered, cell.Tick ? baseline + 0.6 : 0), cell.LeastHeight);
    }

    private IReadOnlyList<string> Lines(string text, Lettering lettering, int index) =>
        text.Length == 0 ? [] : WordWrap.Lines(text, lettering, _widths[index]);

    private Lettering Style(Cell cell, int index) => cell.Lettering ?? _columns[index].Lettering ?? Lettering.Body;

    private static Lettering AcrossLettering(Row row) => row.Strong ? Lettering.Heading.Sized(12) : Lettering.BodyStrong;

    private static double[] Widths(IReadOnlyList<Column> columns, double width)
    {
        var free = width - (Gutter * (columns.Count - 1)) - columns.Sum(column => column.Fixed ?? 0);
        var shares = columns.Sum(column => column.Fixed is null ? column.Share : 0);
        return [.. columns.Select(column => column.Fixed ?? (free * column.Share / shares))];
    }
}

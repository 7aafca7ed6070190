using System.Globalization;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>Draws one sheet with its pieces, numbered cuts and offcuts.</summary>
internal sealed class SheetDrawing
{
    private const double MarkRadius = 2.4;

    private static readonly Lettering Code = new(26, FontFamily.BarlowCondensed, FontWeight.Bold);
    private static readonly Lettering Size = new(11, FontFamily.BarlowCondensed, FontWeight.SemiBold);
    private static readonly Lettering CutNumber = new(9, FontFamily.BarlowCondensed, FontWeight.Bold);

    private readonly PlanIndex _index;
    private readonly SheetGroup _group;
    private readonly Sketch _sketch;
    private readonly Box _area;
    private readonly double _scale;
    private readonly FreeSpace _space = new();

    private SheetDrawing(PlanIndex index, SheetGroup group, Sketch sketch, Box area)
    {
        (_index, _group, _sketch) = (index, group, sketch);
        _scale = Math.Min(area.Width / Mm(group.First.Length), area.Height / Mm(group.First.Width));
        _area = new(area.Left, area.Top, Mm(group.First.Length) * _scale, Mm(group.First.Width) * _scale);
    }

    /// <summary>Letter that stands for a place on sheets cut alike: A, B ... Z, AA ...</summary>
    public static string Letter(int place) => place < 26 ? ((char)('A' + place)).ToString() : Letter((place / 26) - 1) + Letter(place % 26);

    /// <summary>Draws the sheet into the upper left of an area and returns the box that it fills.</summary>
    public static Box Draw(PlanIndex index, SheetGroup group, Sketch sketch, Box area)
    {
        var drawing = new SheetDrawing(index, group, sketch, area);
        drawing.DrawAll();
        return drawing._area;
    }

    private bool Alike => _group.Sheets.Count > 1;

    private void DrawAll()
    {
        _sketch.Rectangle(_area, Pen.Object, Tone.Sheet);
        DrawTrim();
        foreach (var offcut in _group.First.Offcuts)
            DrawOffcut(offcut);
        for (var place = 0; place < _group.Places.Count; place++)
            DrawPiece(_group.Places[place], place);
        foreach (var cut in _group.First.Cuts)
            DrawCut(cut);
        foreach (var cut in _group.First.Cuts)
            DrawCutNumber(cut);
    }

    private void DrawTrim()
    {
        var trim = Mm(_group.First.Trim) * _scale;
        if (trim > 0)
            _sketch.Rectangle(_area.Inset(trim), new(0.15, Tone.Hairline, Dash.Dashed));
    }

    private void DrawOffcut(KeptOffcut offcut)
    {
        var box = At(offcut.X, offcut.Y, offcut.Length, offcut.Width);
        _sketch.Add(Hatch.Lines([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], 45, 2.5, Pen.Hair));
        _sketch.Rectangle(box, Pen.Thin);
        DrawFirstThatFits(box, [(Size, ["keep", _index.Figures.Size(offcut.Length, offcut.Width)]), (Size, ["keep " + _index.Figures.Size(offcut.Length, offcut.Width)])], backed: true);
    }

    private void DrawPiece(Piece piece, int place)
    {
        var box = At(piece.X, piece.Y, piece.Rotated ? piece.Width : piece.Length, piece.Rotated ? piece.Length : piece.Width);
        var name = Alike ? Letter(place) : _index.CodeOf(piece);
        _sketch.Group("piece:" + piece.Id, $"{_index.Part(piece.Part).Name}, {piece.Id}", "piece", group => group.Rectangle(box, Pen.Thin, Tone.Wood));
        if (!DrawFirstThatFits(box, Labels(name, piece), backed: false))
            DrawLeader(box, name);
    }

    private IEnumerable<(Lettering, string[])> Labels(string name, Piece piece)
    {
        var size = _index.Figures.Size(piece.Length, piece.Width);
        var other = _index.Figures.OtherSize(piece.Length, piece.Width);
        var letters = Alike || _index.PairLetters(piece) is not { Length: > 0 } pair ? "" : "   pair " + pair;
        foreach (var points in (double[])[26, 22, 18])
            yield return (Code.Sized(points), [name, size + letters, other]);
        foreach (var points in (double[])[22, 18, 16])
        {
            yield return (Code.Sized(points), [name, size + letters]);
            yield return (Code.Sized(points), [name + "   " + size]);
        }

        foreach (var points in (double[])[16, 14, 12, 10, 9])
            yield return (Code.Sized(points), [name]);
    }

    // The first line in its own lettering, a second one as a size; level if it fits, else turned.
    private bool DrawFirstThatFits(Box box, IEnumerable<(Lettering Lettering, string[] Lines)> choices, bool backed)
    {
        var list = choices.ToList();
        foreach (var turned in (bool[])[false, true])
        {
            foreach (var (lettering, lines) in turned && box.Height <= box.Width ? [] : list)
            {
                if (Fits(box, lettering, lines, turned))
                {
                    DrawLines(box, lettering, lines, turned, backed);
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Fits(Box box, Lettering lettering, string[] lines, bool turned)
    {
        var width = lines.Select((line, i) => TextLayout.Width(line, i == 0 ? lettering : Size)).Max() + 2.4;
        var height = Height(lettering, lines) + 1.2;
        return turned ? width <= box.Height && height <= box.Width : width <= box.Width && height <= box.Height;
    }

    private static double Height(Lettering lettering, string[] lines) => lettering.CapHeight + ((lines.Length - 1) * (Size.CapHeight + 1.8));

    private void DrawLines(Box box, Lettering lettering, string[] lines, bool turned, bool backed)
    {
        var offset = -Height(lettering, lines) / 2;
        for (var i = 0; i < lines.Length; i++)
        {
            var style = i == 0 ? lettering : i == 1 ? Size : Lettering.SecondFigure;
            offset += i == 0 ? lettering.CapHeight : Size.CapHeight + 1.8;
            var at = turned ? new Point(box.Centre.X + offset, box.Centre.Y) : new(box.Centre.X, box.Centre.Y + offset);
            var item = new TextItem(lines[i], at, style, Anchor.Middle, turned ? -90 : 0, backed);
            _sketch.Add(item);
            _space.Take(item.Bounds.Inset(-0.7));
        }
    }

    // For strips that are too thin for any label: a fine line to the nearest edge of the sheet.
    private void DrawLeader(Box box, string name)
    {
        var candidates = Enumerable.Range(0, 60).Select(i => new Box(_area.Right + 2, box.Centre.Y - 1.6 + (i % 2 == 0 ? i : -i) * 1.7, TextLayout.Width(name, Size) + 1, 3.6))
            .Where(candidate => candidate.Top > _area.Top - 4 && candidate.Bottom < _area.Bottom + 4);
        if (_space.TakeFirst(candidates) is not { } label)
            return;
        _sketch.Line(box.Centre.X, box.Centre.Y, label.Left, label.Centre.Y, Pen.Hair);
        _sketch.Circle(box.Centre.X, box.Centre.Y, 0.6, null, Tone.Ink);
        _sketch.TextCentred(name, label.Left + 0.5, label.Centre.Y, Size);
    }

    private void DrawCut(Cut cut)
    {
        var half = Mm(_group.First.Kerf) * _scale / 2;
        var (dx, dy) = cut.Kind == CutKind.Rip ? (0d, half) : (half, 0d);
        var (from, to) = (PointAt(cut.X0, cut.Y0), PointAt(cut.X1, cut.Y1));
        _sketch.Line(from.X + dx, from.Y + dy, to.X + dx, to.Y + dy, new(Math.Max(0.3, 2 * half)));
    }

    private void DrawCutNumber(Cut cut)
    {
        var (from, to) = (PointAt(cut.X0, cut.Y0), PointAt(cut.X1, cut.Y1));
        var length = Math.Abs(to.X - from.X) + Math.Abs(to.Y - from.Y);
        var candidates = Enumerable.Range(0, (int)(length / 1.5) + 1).Select(i => MarkBox(from, to, length == 0 ? 0 : Math.Min(1, ((i * 1.5) + MarkRadius + 0.4) / length)));
        if (_space.TakeFirst(candidates) is not { } box)
            return;
        var centre = box.Centre;
        _sketch.Circle(centre.X, centre.Y, MarkRadius, Pen.Thin, Tone.Sheet);
        _sketch.Add(new TextItem(
            cut.Order.ToString(CultureInfo.InvariantCulture), new(centre.X, centre.Y + (CutNumber.CapHeight / 2)), CutNumber, Anchor.Middle, Backed: true));
    }

    private static Box MarkBox(Point from, Point to, double share) =>
        new Box(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), 0, 0).Inset(-MarkRadius);

    private Box At(Length x, Length y, Length length, Length width)
    {
        var corner = PointAt(x, y);
        return new(corner.X, corner.Y, Mm(length) * _scale, Mm(width) * _scale);
    }

    private Point PointAt(Length x, Length y) => new(_area.Left + (Mm(x) * _scale), _area.Top + (Mm(y) * _scale));

    private static double Mm(Length length) => (double)length.Millimetres;
}

using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>A label for each piece, two across and seven down: code, place, sizes, foot arrow, pair letter, scannable code.</summary>
public static class Labels
{
    private const int Across = 2;
    private const int Down = 7;

    private static readonly Lettering Code = new(34, FontFamily.BarlowCondensed, FontWeight.Bold);
    private static readonly Lettering Pair = new(20, FontFamily.Barlow, FontWeight.Bold);

    /// <summary>The pages: pieces in the order in which they come off sheets and boards.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var layouts = plan.Cutting.Sheets.Select(sheet => sheet.Id).Concat(plan.Cutting.Boards.Select(board => board.Id));
        var pieces = layouts.SelectMany(index.PiecesFrom).ToList();
        return pieces.Chunk(Across * Down).Select(chunk => PageOf(index, chunk, settings)).ToValueList();
    }

    /// <summary>What the scannable code of a piece says: the piece's id and the plan's revision.</summary>
    public static string ScanText(Piece piece, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(plan);
        return FormattableString.Invariant($"{piece.Id} r{plan.Job.Revision}");
    }

    private static PageDraft PageOf(PlanIndex index, Piece[] pieces, PaperSettings settings)
    {
        var sketch = new Sketch();
        for (var i = 0; i < pieces.Length; i++)
            DrawLabel(sketch, index, pieces[i], Place(settings.Size, i % Across, i / Across));
        return new()
        {
            Document = DocumentKind.Labels,
            Key = pieces[0].Stock,
            Format = new(settings.Size, false),
            Description = "labels",
            Body = sketch.Items,
        };
    }

    // A4: 99.1 × 38.1 mm, Letter: 4 × 1⅓ in, the usual cut of label paper with fourteen to a page.
    private static Box Place(PaperSize size, int column, int row) => size == PaperSize.A4
        ? new(4.65 + (column * 101.6), 15.15 + (row * 38.1), 99.1, 38.1)
        : new(3.97 + (column * 106.36), 21.17 + (row * 33.87), 101.6, 33.87);

    private static void DrawLabel(Sketch sketch, PlanIndex index, Piece piece, Box label)
    {
        var box = label.Inset(4, 3);
        var part = index.Part(piece.Part);
        const double QrSide = 21;
        sketch.Group("label:" + piece.Id, $"label of {piece.Id}", "label", group =>
        {
            group.Add(new QrItem(new(box.Right - QrSide, box.Top), QrSide, ScanText(piece, index.Plan)));
            DrawWords(group, index, piece, part, box, box.Width - QrSide - 2);
            DrawFoot(group, index, piece, part, box);
        });
    }

    private static void DrawWords(Sketch sketch, PlanIndex index, Piece piece, Part part, Box box, double width)
    {
        var id = index.CodeOf(piece);
        var code = Fitting.Shrunk(id, Code, width, 16);
        sketch.Text(Fitting.Cut(id, code, width), box.Left, box.Top + 8.6, code);
        var name = new Lettering(10, Weight: FontWeight.Medium);
        var where = id == part.Id ? part.Name : $"{part.Name}, {Stretch(index, piece, part)}";
        where += NextOf(index, part);
        sketch.Text(Fitting.Cut(where, name, width), box.Left, box.Top + 13.6, name);
        var size = index.Figures.Size(piece.Length, piece.Width, part.Thickness);
        var figure = Fitting.Shrunk(size, Lettering.Figure.Sized(15), width, 10);
        sketch.Text(size, box.Left, box.Top + 20, figure);
    }

    // The next operation after the saw.
    private static string NextOf(PlanIndex index, Part part) =>
        index.SplicesOf(part).Any(splice => splice.Method != SpliceMethod.CoveredButt) ? " · next: splice"
        : part.Machining.Count > 0 ? " · next: joinery"
        : part.Nosing is not null ? " · next: nosing"
        : "";

    private static string Stretch(PlanIndex index, Piece piece, Part part)
    {
        var (start, end) = Words.EndsOf(part);
        var pieces = index.PiecesOf(part);
        return piece.From == Model.Measure.Length.Zero ? start.ToLowerInvariant() + " piece"
            : piece.To == part.Length ? end.ToLowerInvariant() + " piece"
            : $"piece {pieces.ToList().IndexOf(piece) + 1} of {pieces.Count}";
    }

    private static void DrawFoot(Sketch sketch, PlanIndex index, Piece piece, Part part, Box box)
    {
        var y = box.Bottom - 3;
        var second = index.Figures.OtherSize(piece.Length, piece.Width, part.Thickness);
        var grey = Lettering.SecondFigure;
        sketch.TextCentred(Fitting.Cut(second, grey, 36), box.Left, y, grey);
        var x = box.Left + 40;
        Symbols.ArrowLeft(sketch, x, y, 4.4);
        var start = new Lettering(9, Weight: FontWeight.Bold);
        sketch.TextCentred(Words.EndsOf(part).Start, x + 9, y, start);
        var letters = index.PairLetters(piece);
        var pairWidth = letters.Length == 0 ? 0 : TextLayout.Width(letters, Pair);
        sketch.Text(letters, box.Right, y + 2.4, Pair, Anchor.End);
        var left = x + 9 + TextLayout.Width(Words.EndsOf(part).Start, start) + 3;
        sketch.TextCentred(Fitting.Cut("up: " + part.ReferenceFaceName, Lettering.Small, box.Right - pairWidth - 2 - left), left, y, Lettering.Small);
    }
}

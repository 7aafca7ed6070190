using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Solid lengths: what is cut from each board.</summary>
public static class BoardCuts
{
    private static readonly Lettering Code = Lettering.ListCode;

    /// <summary>The pages; none without boards.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Cutting.Boards.Count == 0)
            return [];
        var index = new PlanIndex(plan);
        var flow = Drafting.Flow(
            DocumentKind.BoardCuts, settings, landscape: true, new("Board cutting list", "lengths as sawn, from the raw end at the left; longest first"),
            "What is cut from each board.", index.Figures.FootNote);
        foreach (var material in plan.Cutting.Boards.GroupBy(board => board.Material, StringComparer.Ordinal))
        {
            var section = index.Material(material.Key);
            flow.Heading($"{section.Name}, section {index.Figures.Size(section.BoardWidth ?? Length.Zero, section.Thickness)} {index.Figures.Unit}", 26);
            foreach (var group in Alike(index, material))
                DrawGroup(flow, index, group);
        }

        return flow.Finish();
    }

    private static IEnumerable<IReadOnlyList<BoardLayout>> Alike(PlanIndex index, IEnumerable<BoardLayout> boards) => boards
        .GroupBy(board => (board.Stock, board.Length, Cuts: board.Cuts, Pieces: Pieces(index, board).Select(piece => (piece.X, piece.Length)).ToValueList()))
        .Select(group => (IReadOnlyList<BoardLayout>)[.. group]);

    private static IReadOnlyList<Piece> Pieces(PlanIndex index, BoardLayout board) => [.. index.PiecesFrom(board.Id).OrderBy(piece => piece.X)];

    private static void DrawGroup(PageFlow flow, PlanIndex index, IReadOnlyList<BoardLayout> boards)
    {
        var board = boards[0];
        var pieces = Pieces(index, board);
        flow.Ensure(26);
        flow.Draw(20, (sketch, box) => DrawBar(sketch, box.Inset(0, 1), index, boards, pieces));
        Column[] columns =
        [
            new("", Fixed: 10, Lettering: Code),
            new("", Fixed: 5),
            new("Sawn " + index.Figures.Unit, Fixed: 24, Anchor: Anchor.End, Lettering: Lettering.Figure.Sized(14)),
            new(index.Figures.OtherUnit, Fixed: 20, Anchor: Anchor.End, Lettering: Lettering.SecondFigure),
            new("Codes", Lettering: Code),
        ];
        var all = boards.Select(b => Pieces(index, b)).ToList();
        var rows = pieces.Select((piece, place) => Row.Of(
            new(SheetDrawing.Letter(place)), Cell.TickBox, new(index.Figures.Main(piece.Length)), new(index.Figures.Other(piece.Length)),
            new(string.Join(", ", all.Select(list => index.CodeOf(list[place]))))));
        Table.Draw(flow, columns, [.. rows]);
        flow.Gap(5);
    }

    private static void DrawBar(Sketch sketch, Box box, PlanIndex index, IReadOnlyList<BoardLayout> boards, IReadOnlyList<Piece> pieces)
    {
        var board = boards[0];
        var names = boards.Count <= 8 ? string.Join(" ", boards.Select(b => b.Id)) : $"{boards[0].Id} to {boards[^1].Id}";
        var words = string.Create(CultureInfo.InvariantCulture, $"{names}: {boards.Count} × {index.Figures.Main(board.Length)} long, left over {index.Figures.Main(board.Left)}");
        sketch.Text(Fitting.Cut(words, Lettering.BodyStrong, box.Width), box.Left, box.Top + 4, Lettering.BodyStrong);
        var bar = new Box(box.Left, box.Top + 7, box.Width, 9);
        sketch.Rectangle(bar, Pen.Object, Tone.Sheet);
        var scale = bar.Width / (double)board.Length.Millimetres;
        for (var i = 0; i < pieces.Count; i++)
        {
            var part = new Box(bar.Left + ((double)pieces[i].X.Millimetres * scale), bar.Top, (double)pieces[i].Length.Millimetres * scale, bar.Height);
            sketch.Rectangle(part, Pen.Thin, Tone.Wood);
            var letter = SheetDrawing.Letter(i);
            if (TextLayout.Width(letter, Code) + 1.5 < part.Width)
                sketch.TextCentred(letter, part.Centre.X, part.Centre.Y, Code, Anchor.Middle);
        }
    }
}

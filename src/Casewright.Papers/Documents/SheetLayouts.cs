using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>One page for each distinct sheet layout: how many, the cuts in working order, what each piece is.</summary>
public static class SheetLayouts
{
    private const double CutColumnWidth = 76;
    private const double Gap = 6;

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        var index = new PlanIndex(plan);
        return SheetGroups.Of(index).SelectMany(group => PagesOf(index, group, settings)).ToValueList();
    }

    private static IEnumerable<PageDraft> PagesOf(PlanIndex index, SheetGroup group, PaperSettings settings)
    {
        var heading = HeadingOf(index, group);
        var page = Drafting.Page(
            DocumentKind.SheetLayouts, settings, landscape: true, heading, $"How {Names(group)} is cut.", index.Figures.FootNote, group.First.Id);
        var body = page.Format.Body(heading.Height);
        var cuts = Steps(group.First).Select(step => RowOf(index, step)).ToList();
        var pieces = group.Sheets.Count == 1 ? [] : PieceRows(index, group);
        pieces = [.. Table.Split(pieces, PieceColumns(index), body.Width - CutColumnWidth - Gap, body.Height)];
        var first = true;
        while (first || cuts.Count > 0 || pieces.Count > 0)
        {
            var sketch = new Sketch();
            var (cutsDone, piecesDone) = first
                ? FirstPage(index, group, sketch, body, cuts, pieces)
                : MorePage(index, sketch, body, cuts, pieces);
            cuts.RemoveRange(0, cutsDone);
            pieces.RemoveRange(0, piecesDone);
            yield return page with { Body = sketch.Items, Heading = first ? heading : heading with { Subtitle = heading.Subtitle + " · continued" } };
            first = false;
        }
    }

    private static (int Cuts, int Pieces) FirstPage(PlanIndex index, SheetGroup group, Sketch sketch, Box body, List<Row> cuts, List<Row> pieces)
    {
        var right = new Box(body.Right - CutColumnWidth, body.Top, CutColumnWidth, body.Height);
        var left = body with { Width = body.Width - CutColumnWidth - Gap };
        var tick = DrawCount(sketch, group, left);
        var room = new Box(left.Left + 3, left.Top + tick + 2.5, left.Width - 12, left.Height - tick - 21);
        var drawn = SheetDrawing.Draw(index, group, sketch, room with { Height = HeightFor(index, group, pieces, room) });
        DrawUnder(index, group, sketch, drawn, left.Right);
        var cutsDone = cuts.Count == 0 ? 0 : Table.DrawInto(sketch, right, CutColumns(index), cuts).Rows;
        var under = left with { Top = drawn.Bottom + 16, Height = left.Bottom - drawn.Bottom - 16 };
        var piecesDone = pieces.Count > 0 && under.Height > 24 ? Table.DrawInto(sketch, under, PieceColumns(index), pieces).Rows : 0;
        return (cutsDone, piecesDone);
    }

    // The drawing gives way, down to three fifths, where that lets all pieces stand on the same page.
    private static double HeightFor(PlanIndex index, SheetGroup group, List<Row> pieces, Box room)
    {
        var natural = room.Width * (double)(group.First.Width.Millimetres / group.First.Length.Millimetres);
        var full = Math.Min(room.Height, natural);
        if (pieces.Count == 0)
            return full;
        var columns = PieceColumns(index);
        for (var share = 1.0; share >= 0.55; share -= 0.05)
        {
            var left = room.Height - (full * share) - 2;
            if (left > 0 && Table.DrawInto(new(), new(0, 0, room.Width + 12, left), columns, pieces).Rows == pieces.Count)
                return full * share;
        }

        return full * 0.75;
    }

    private static (int Cuts, int Pieces) MorePage(PlanIndex index, Sketch sketch, Box body, List<Row> cuts, List<Row> pieces)
    {
        var right = new Box(body.Right - CutColumnWidth, body.Top, CutColumnWidth, body.Height);
        var left = body with { Width = body.Width - CutColumnWidth - Gap };
        var cutsDone = cuts.Count == 0 ? 0 : Table.DrawInto(sketch, right, CutColumns(index), cuts).Rows;
        var piecesDone = pieces.Count == 0 ? 0 : Table.DrawInto(sketch, left, PieceColumns(index), pieces).Rows;
        return (cutsDone, piecesDone);
    }

    private static PageHeading HeadingOf(PlanIndex index, SheetGroup group)
    {
        var sheet = group.First;
        var many = group.Sheets.Count;
        var title = sheet.Sawn ? "Sheet layout: cut already" : many == 1 ? "Sheet layout" : $"Sheet layout: cut {many} alike";
        var trim = sheet.Trim > Model.Measure.Length.Zero ? $"trim {index.Figures.Main(sheet.Trim)} off every edge" : "no trim";
        if (sheet.LeftOver is not null)
            trim = $"left over by {string.Join(", ", group.Sheets.Select(s => s.LeftOver!.Id).Distinct(StringComparer.Ordinal).Take(4))}{(many > 4 ? " …" : "")}, {trim}";
        return new(title, $"{index.SheetName(sheet)} {index.Figures.Unit} ({index.Figures.OtherSize(sheet.Length, sheet.Width)} {index.Figures.OtherUnit}) · kerf {index.Figures.Main(sheet.Kerf)} · {trim}", Names(group));
    }

    private static string Names(SheetGroup group) => group.Sheets.Count switch
    {
        1 => group.First.Id,
        2 => $"{group.First.Id} {group.Sheets[1].Id}",
        _ => $"{group.First.Id} +{group.Sheets.Count - 1}",
    };

    // A box to tick for every sheet of the group, with its name.
    private static double DrawCount(Sketch sketch, SheetGroup group, Box area)
    {
        if (group.Sheets.Count == 1)
            return 0;
        var lettering = Lettering.Figure.Sized(13);
        double x = area.Left, y = area.Top;
        foreach (var sheet in group.Sheets)
        {
            var width = TextLayout.Width(sheet.Id, lettering) + 10;
            if (x + width > area.Right)
                (x, y) = (area.Left, y + 6.5);
            Symbols.TickBox(sketch, x, y);
            sketch.TextCentred(sheet.Id, x + 5.2, y + 2, lettering);
            x += width;
        }

        return y - area.Top + 7.5;
    }

    private static void DrawUnder(PlanIndex index, SheetGroup group, Sketch sketch, Box drawn, double right)
    {
        var y = drawn.Bottom + 5;
        var x = drawn.Left;
        if (index.Material(group.First.Material).HasGrain)
        {
            Symbols.Grain(sketch, x + 9, y, 18);
            sketch.TextCentred("grain", x + 20, y, Lettering.Body);
            x += 34;
        }

        var used = group.Places.Sum(piece => piece.Length.Millimetres * piece.Width.Millimetres);
        var kept = group.First.Offcuts.Sum(offcut => offcut.Length.Millimetres * offcut.Width.Millimetres);
        var sheet = group.First.Length.Millimetres * group.First.Width.Millimetres;
        var words = string.Create(CultureInfo.InvariantCulture, $"raw edges: left and upper are the origin · pieces {used / sheet:P0}, kept {kept / sheet:P0}, saw and waste {(sheet - used - kept) / sheet:P0}");
        sketch.TextCentred(Fitting.Cut(words, Lettering.Note, right - x), x, y, Lettering.Note);
        FindingSheet.DrawSign(sketch, Severity.Caution, drawn.Left + 2, y + 5.4, 3.8);
        var care = CautionStrip.Brief(Work.Sawing, Work.Sanding);
        sketch.TextCentred(Fitting.Cut(care, Lettering.Body, right - drawn.Left - 6), drawn.Left + 6, y + 5.4, Lettering.Body);
    }

    private static Column[] CutColumns(PlanIndex index) =>
    [
        new("", Fixed: 4.5),
        new("Cut", Fixed: 12.5, Lettering: Lettering.Figure.Sized(13)),
        new("", Fixed: 9, Lettering: Lettering.Body.Sized(10)),
        new($"Fence {index.Figures.Unit}", Anchor: Anchor.End, Lettering: Lettering.Figure.Sized(14)),
        new(index.Figures.OtherUnit, 0.9, Anchor: Anchor.End, Lettering: Lettering.SecondFigure),
    ];

    private static Column[] PieceColumns(PlanIndex index) =>
    [
        new("", Fixed: 8, Lettering: Lettering.ListCode),
        new($"Sawn {index.Figures.Unit}", Fixed: 30, Lettering: Lettering.Figure),
        new(index.Figures.OtherUnit, Fixed: 33, Lettering: Lettering.SecondFigure),
        new("Codes, sheet by sheet", Lettering: Lettering.ListCode),
    ];

    /// <summary>Cuts in a row with the same fence setting.</summary>
    private sealed record Step(Cut First, Cut Last, int Count);

    private static List<Step> Steps(SheetLayout sheet)
    {
        var steps = new List<Step>();
        foreach (var cut in sheet.Cuts.OrderBy(cut => cut.Order))
        {
            if (steps.Count > 0 && IsSameStep(steps[^1].First, cut))
                steps[^1] = steps[^1] with { Last = cut, Count = steps[^1].Count + 1 };
            else
                steps.Add(new(cut, cut, 1));
        }

        return steps;
    }

    // The trim of all edges is one step, whatever is left between them.
    private static bool IsSameStep(Cut first, Cut cut) =>
        first.Stage == cut.Stage && (cut.Stage == 0 || (first.Kind == cut.Kind && first.Setting == cut.Setting));

    private static Row RowOf(PlanIndex index, Step step)
    {
        var number = step.Count == 1
            ? step.First.Order.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{step.First.Order}–{step.Last.Order}");
        var kind = step.First.Stage == 0 ? "trim" : step.First.Kind == CutKind.Rip ? "rip" : "cross";
        return Row.Of(Cell.TickBox, new(number), new(kind), new(index.Figures.Main(step.First.Setting)), new(index.Figures.Other(step.First.Setting)));
    }

    private static List<Row> PieceRows(PlanIndex index, SheetGroup group)
    {
        var all = group.Sheets.Select(sheet => index.PiecesFrom(sheet.Id)).ToList();
        return [.. group.Places.Select((piece, place) => Row.Of(
            new(SheetDrawing.Letter(place)),
            new(index.Figures.Size(piece.Length, piece.Width)),
            new(index.Figures.OtherSize(piece.Length, piece.Width)),
            new(string.Join(", ", all.Select((pieces, i) => $"{group.Sheets[i].Id}: {CodeOf(index, pieces[place])}")))))];
    }

    private static string CodeOf(PlanIndex index, Piece piece)
    {
        var letters = index.PairLetters(piece);
        var code = index.CodeOf(piece);
        return letters.Length == 0 ? code : $"{code} (pair {letters})";
    }
}

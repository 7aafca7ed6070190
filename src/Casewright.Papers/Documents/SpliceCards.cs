using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// One card for each splice that is glued: both faces of both pieces as they lie on the bench, the layout from the reference edge,
/// what to do, what is near. Covered joints of thin backs share one list.
/// </summary>
public static class SpliceCards
{
    private static readonly Lettering FaceName = new(13, Weight: FontWeight.Bold);
    private static readonly Lettering Row = Lettering.Body.Sized(11);
    private static readonly Lettering Figure = Lettering.Figure.Sized(13);
    private static readonly Lettering PieceLength = Lettering.Figure.Sized(15);

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var glued = plan.Cutting.Splices.Where(splice => splice.Method != SpliceMethod.CoveredButt).Select(splice => PairOf(index, splice)).ToList();
        return glued.Select(pair => Card(index, pair, glued, settings)).Concat(CoveredJoints(index, settings)).ToValueList();
    }

    private static SplicePair PairOf(PlanIndex index, Splice splice)
    {
        var part = index.Part(splice.Part);
        var pieces = index.PiecesOf(part);
        return new(part, splice, pieces.First(piece => piece.To == splice.Position), pieces.First(piece => piece.From == splice.Position));
    }

    private static PageDraft Card(PlanIndex index, SplicePair pair, IReadOnlyList<SplicePair> all, PaperSettings settings)
    {
        var part = pair.Part;
        var heading = new PageHeading("Splice card: " + part.Name, Subtitle(pair, all), part.Id);
        var page = Drafting.Page(
            DocumentKind.SpliceCards, settings, landscape: true, heading,
            $"Splice {pair.Splice.Id}: {Words.Of(pair.Splice.Method)}, both faces, laid out from the reference edge.", index.Figures.FootNote, pair.Splice.Id);
        var body = page.Format.Body(heading.Height);
        var sketch = new Sketch();
        var tableHeight = DrawColumns(new(), index, pair, body with { Top = 0 }) + 5;
        var faces = body with { Height = body.Height - tableHeight };
        var faceHeight = (faces.Height - 10.5) / 2;
        var near = DrawFace(sketch, index, pair, Face.Reference, faces.TakeTop(faceHeight));
        DrawLengths(sketch, index, pair, near);
        DrawFace(sketch, index, pair, Face.Opposite, faces.WithoutTop(faceHeight + 10.5).TakeTop(faceHeight));
        var top = body.Bottom - tableHeight + 3;
        sketch.Line(body.Left, top, body.Right, top, Pen.Thin);
        DrawColumns(sketch, index, pair, new(body.Left, top + 2, body.Width, body.Bottom - top - 2));
        return page with { Body = sketch.Items };
    }

    private static string Subtitle(SplicePair pair, IReadOnlyList<SplicePair> all)
    {
        var splice = pair.Splice;
        var alike = splice.KeyClass.Length == 0 ? 1 : all.Count(other => other.Splice.KeyClass == splice.KeyClass);
        var key = alike > 1 ? string.Create(CultureInfo.InvariantCulture, $"one of {alike} cut to key {splice.KeyClass}; this card is for this pair only") : "this card is for this pair only";
        return $"{Words.Of(splice.Method)} · {key}";
    }

    private static SpliceFace DrawFace(Sketch sketch, PlanIndex index, SplicePair pair, Face face, Box area)
    {
        var name = face == Face.Reference ? pair.Part.ReferenceFaceName : pair.Part.OppositeFaceName;
        var title = name.ToUpperInvariant() + " face up";
        sketch.Text(title, area.Left, area.Top + 4.2, FaceName);
        var note = FaceNote(pair, face);
        var left = area.Left + TextLayout.Width(title, FaceName) + 6;
        var pairWords = "pair " + pair.Splice.PairLetter;
        sketch.Text(Fitting.Cut(note, Lettering.Note.Sized(11), area.Right - left - 24), left, area.Top + 4.2, Lettering.Note.Sized(11));
        if (pair.Splice.PairLetter.Length > 0)
            sketch.Text(pairWords, area.Right, area.Top + 4.6, new(15, Weight: FontWeight.Bold), Anchor.End);
        var drawing = new SpliceFace(pair, sketch, face, area.WithoutTop(6.6) with { Height = area.Height - 7.6 });
        drawing.Draw();
        return drawing;
    }

    private static string FaceNote(SplicePair pair, Face face)
    {
        var exposure = face == Face.Reference ? pair.Part.ReferenceFace : pair.Part.OppositeFace;
        if (pair.Splice.AccessFace == face)
            return "access holes here and only here";
        var holes = pair.Splice.AccessFace is null ? "no holes in either face" : "no holes";
        var measure = face == Face.Reference ? "; measure from the heavy edge, depth from this face" : "; the same board turned over";
        return (exposure == Exposure.Shows ? "good face, " : "") + holes + measure;
    }

    private static void DrawLengths(Sketch sketch, PlanIndex index, SplicePair pair, SpliceFace face)
    {
        var y = face.Near.Bottom + 7;
        DimensionLine.Horizontal(sketch, face.Near.Left, face.Near.Right, y, face.Near.Bottom + 1.4, LengthOf(index, pair.Near), PieceLength);
        DimensionLine.Horizontal(sketch, face.Far.Left, face.Far.Right, y, face.Far.Bottom + 1.4, LengthOf(index, pair.Far, pair), PieceLength);
    }

    private static string LengthOf(PlanIndex index, Piece piece, SplicePair? far = null)
    {
        var length = index.Figures.Both(piece.To - piece.From);
        var trim = far is not null && piece.To == far.Part.Length ? piece.AllowanceEnd : Length.Zero;
        return trim == Length.Zero ? length : $"{length} + {index.Figures.Main(trim)} {Words.EndsOf(far!.Part).End.ToLowerInvariant()}";
    }

    // Returns how far down the longest column reaches.
    private static double DrawColumns(Sketch sketch, PlanIndex index, SplicePair pair, Box area)
    {
        const double Gap = 6;
        var free = area.Width - (3 * Gap);
        var first = area with { Width = free * 0.245 };
        var second = area with { Left = first.Right + Gap, Width = free * 0.225 };
        var third = area with { Left = second.Right + Gap, Width = free * 0.31 };
        var fourth = area with { Left = third.Right + Gap, Width = free * 0.22 };
        return new[]
        {
            DrawOffsets(sketch, index, pair, first), DrawKey(sketch, index, pair, second), DrawSteps(sketch, index, pair, third), DrawSurroundings(sketch, index, pair, fourth),
        }.Max();
    }

    private static double Head(Sketch sketch, string text, Box area)
    {
        sketch.Text(text, area.Left, area.Top + 4.4, Lettering.Heading);
        return area.Top + 6.6;
    }

    private static double DrawOffsets(Sketch sketch, PlanIndex index, SplicePair pair, Box area)
    {
        var y = Head(sketch, "From the reference edge", area);
        var number = 1;
        foreach (var (offset, isTenon) in SpliceFace.Holes(pair.Splice))
        {
            DrawOffset(sketch, index, area, y, number.ToString(CultureInfo.InvariantCulture), isTenon ? "tenon" : "connector", offset);
            number++;
            y += 5.3;
        }

        DrawOffset(sketch, index, area, y, "", "triangle", pair.Splice.MarkOffset);
        y += 6;
        foreach (var line in TenonWords(index, pair))
            y += sketch.Paragraph(line, area.Left, y, area.Width, Lettering.Body.Sized(9.5));
        return y;
    }

    private static void DrawOffset(Sketch sketch, PlanIndex index, Box area, double y, string number, string what, Length offset)
    {
        sketch.Text(number, area.Left, y + 3.8, Figure);
        sketch.Text(what, area.Left + 6, y + 3.8, Row);
        sketch.Text(index.Figures.Main(offset), area.Left + 46, y + 3.8, Figure.Sized(14), Anchor.End);
        sketch.Text(index.Figures.Other(offset), area.Right, y + 3.8, Lettering.SecondFigure, Anchor.End);
    }

    private static IEnumerable<string> TenonWords(PlanIndex index, SplicePair pair)
    {
        if (pair.Splice.Tenons is not [var tenon, ..])
            yield break;
        var figures = index.Figures;
        yield return $"Tenon {figures.Size(tenon.Thickness, tenon.Width)}, {figures.Main(tenon.Length)} long; mortise {figures.Both(tenon.MortiseDepth)} deep, middle {figures.Both(tenon.Depth)} from the {pair.Part.ReferenceFaceName} face.";
        var play = pair.Splice.Tenons.Max(t => t.Play);
        if (play > Length.Zero)
            yield return $"Tight: number {string.Join(", ", TightOnes(pair.Splice))}; others {figures.Main(play)} wide.";
    }

    private static IEnumerable<int> TightOnes(Splice splice) => SpliceFace.Holes(splice)
        .Select((hole, i) => (hole, Number: i + 1))
        .Where(x => x.hole.IsTenon && splice.Tenons.First(tenon => tenon.Offset == x.hole.Offset).Play == Length.Zero)
        .Select(x => x.Number);

    private static double DrawKey(Sketch sketch, PlanIndex index, SplicePair pair, Box area)
    {
        var y = Head(sketch, pair.Splice.KeyClass.Length > 0 ? $"Key {pair.Splice.KeyClass}" : "Match", area);
        if (pair.Splice.KeyMismatch is { } mismatch)
        {
            y += sketch.Paragraph(
                $"Spacing is unequal on purpose: a piece flipped, reversed or of another key is off by {index.Figures.Both(mismatch)} or more and does not close. Alike pairs: match the letter.",
                area.Left, y, area.Width, Lettering.Body);
        }
        else
        {
            y += sketch.Paragraph("Nothing but the triangle and the letter tells right from wrong here: mark both before you turn a piece.", area.Left, y, area.Width, Lettering.Body);
        }

        y += 2;
        y += sketch.Paragraph(
            "Carry on edge, two people when long. Do not lift flat by the ends before the glue has its strength: a joint this thin is weak flatwise.",
            area.Left, y, area.Width, Lettering.BodyStrong.Sized(10)) + 1;
        FindingSheet.DrawSign(sketch, Severity.Caution, area.Left + 2, y + 2.3, 3.8);
        return y + sketch.Paragraph(CautionStrip.Brief(Work.Gluing), area.Left + 6, y, area.Width - 6, Lettering.Body.Sized(9.5));
    }

    private static double DrawSteps(Sketch sketch, PlanIndex index, SplicePair pair, Box area)
    {
        var y = Head(sketch, "Do", area);
        foreach (var step in SpliceSteps.Of(pair, index))
        {
            Symbols.TickBox(sketch, area.Left, y + 0.3);
            y += Math.Max(5.1, sketch.Paragraph(step, area.Left + 6.5, y, area.Width - 6.5, Row.Sized(10)) + 0.5);
        }

        return y;
    }

    private static double DrawSurroundings(Sketch sketch, PlanIndex index, SplicePair pair, Box area)
    {
        var y = Head(sketch, "The joint", area);
        var part = pair.Part;
        var lines = new List<string> { $"{index.Figures.Both(pair.Splice.Position)} from {Words.EndsOf(part).Start}" };
        if (part.Place.AlongLength == Axis.Up)
            lines.Add($"{index.Figures.Both(part.Place.Origin.Y + pair.Splice.Position)} above the floor");
        lines.AddRange(NearTheJoint.Lines(part, pair.Splice, index));
        foreach (var piece in (Piece[])[pair.Near, pair.Far])
            lines.Add($"{piece.Id} from {piece.Stock}, sawn {index.Figures.Main(piece.Length)}");
        foreach (var line in lines)
            y += sketch.Paragraph(line, area.Left, y, area.Width, Lettering.Body.Sized(10)) + 0.4;
        return y;
    }

    private static ValueList<PageDraft> CoveredJoints(PlanIndex index, PaperSettings settings)
    {
        var joints = index.Plan.Cutting.Splices.Where(splice => splice.Method == SpliceMethod.CoveredButt).ToList();
        if (joints.Count == 0)
            return [];
        var flow = Drafting.Flow(
            DocumentKind.SpliceCards, settings, landscape: false, new("Joints of the backs", "butted on a shelf or behind a band; no tenons; square the ends, pin both to what carries them"),
            "Where the backs are joined and what carries the joint.", index.Figures.FootNote);
        Column[] columns =
        [
            new("Done", Fixed: 9),
            new("Back", 1, Lettering: Lettering.ListCode),
            new($"Joint from reference end {index.Figures.Unit}", 0.9, Anchor: Anchor.End, Lettering: Figure),
            new("Carried by", 1, Lettering: Lettering.ListCode),
            new("Pieces", 1.4),
        ];
        var rows = joints.Select(splice => Kit.Row.Of(
            Cell.TickBox, new(splice.Part), new(index.Figures.Main(splice.Position), Second: index.Figures.Other(splice.Position)),
            new(splice.CoveredBy ?? "–"), new(string.Join(", ", index.PiecesOf(index.Part(splice.Part)).Select(piece => $"{piece.Id} {index.Figures.Size(piece.Length, piece.Width)}")))));
        Table.Draw(flow, columns, [.. rows]);
        return flow.Finish();
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Every part that is cut out for an outlet or a register, seen on its reference face, each cut-out measured from the reference end and the
/// reference edge; a line under the drawing tells both of its edges each way.
/// </summary>
internal static class CutOutDrawings
{
    private const double Level = 22;
    private const double Margin = 8;

    private static readonly Lettering Figure = Lettering.Figure.Sized(12);

    /// <summary>One page for each part, parts cut alike together.</summary>
    public static IEnumerable<PageDraft> Pages(PlanIndex index, PaperSettings settings) => index.Plan.Parts
        .Where(part => part.Machining.OfType<CutOut>().Any())
        .GroupBy(part => (part.Role, part.Hand, part.Length, part.Width, part.Machining.OfType<CutOut>().ToValueList()))
        .Select(group => Page(index, [.. group], settings));

    private static PageDraft Page(PlanIndex index, IReadOnlyList<Part> parts, PaperSettings settings)
    {
        var part = parts[0];
        var upright = IsUpright(part);
        var heading = new PageHeading("Cut-outs: " + part.Name, $"{part.ReferenceFaceName} face · from the heavy lines", NameList.Of([.. parts.Select(p => p.Id)]));
        var page = Drafting.Page(
            DocumentKind.DrillingLayouts, settings, landscape: !upright, heading, $"Cut-outs of {part.Name}, measured from two edges.", index.Figures.FootNote, "cut:" + part.Id);
        var sketch = new Sketch();
        new CutOutView(index.Figures, part, page.Format.Body(heading.Height)).Draw(sketch);
        return page with { Body = sketch.Items };
    }

    private static bool IsUpright(Part part) => part.Place.AlongLength is Axis.Up or Axis.Down;

    /// <summary>One part with its cut-outs.</summary>
    private sealed class CutOutView
    {
        private readonly Figures _figures;
        private readonly Part _part;
        private readonly Box _body;
        private readonly CutOut[] _cuts;
        private readonly Box _outline;
        private readonly double _scale;
        private readonly bool _upright;
        private readonly bool _edgeAtStart;

        public CutOutView(Figures figures, Part part, Box body)
        {
            (_figures, _part, _body, _cuts) = (figures, part, body, [.. part.Machining.OfType<CutOut>()]);
            _upright = IsUpright(part);

            // Where the reference edge is drawn: at the left of an upright, at the foot of a level part.
            _edgeAtStart = _upright ? UprightMarks.ReferenceEdgeLeft(part, Face.Reference) : part.Place.AlongWidth != Axis.Down;
            var side = (_cuts.Length * Level) + Margin;
            var words = 12 + (_cuts.Length * 14);
            var (across, up) = _upright ? (part.Width, part.Length) : (part.Length, part.Width);
            _scale = Math.Min((body.Width - side - Margin) / PartBox.Mm(across), (body.Height - words - side - Margin) / PartBox.Mm(up));
            _outline = new(body.Left + side, body.Top + Margin, PartBox.Mm(across) * _scale, PartBox.Mm(up) * _scale);
        }

        public void Draw(Sketch sketch)
        {
            sketch.Rectangle(_outline, Pen.Thin, Tone.Sheet);
            foreach (var cut in _cuts)
                sketch.Rectangle(Area(cut), Pen.Object, Tone.Paper);
            DrawReference(sketch);
            for (var i = 0; i < _cuts.Length; i++)
                DrawDimensions(sketch, _cuts[i], i + 1);
            var y = _outline.Bottom + (_cuts.Length * Level) + Margin;
            foreach (var cut in _cuts)
                y += sketch.Paragraph(Words(cut), _body.Left, y, _body.Width, Lettering.Body) + 2;
        }

        private string Words(CutOut cut)
        {
            var (end, edge) = (Documents.Words.EndsOf(_part).Start.ToLowerInvariant(), Documents.Words.ReferenceEdgeOf(_part));
            return $"{cut.For}: {_figures.Both(cut.X)} to {_figures.Both(cut.X + cut.LengthX)} from the {end} end, {_figures.Both(cut.Y)} to {_figures.Both(cut.Y + cut.LengthY)} from the {edge} edge; {_figures.Size(cut.LengthX, cut.LengthY)}, right through.";
        }

        private void DrawReference(Sketch sketch)
        {
            var edge = _upright ? Across(Length.Zero) : Up(Length.Zero);
            if (_upright)
            {
                sketch.Line(edge, _outline.Top, edge, _outline.Bottom, Pen.Reference);
                sketch.Line(_outline.Left, _outline.Bottom, _outline.Right, _outline.Bottom, Pen.Reference);
            }
            else
            {
                sketch.Line(_outline.Left, edge, _outline.Right, edge, Pen.Reference);
                sketch.Line(_outline.Left, _outline.Top, _outline.Left, _outline.Bottom, Pen.Reference);
            }
        }

        // One line across below the part and one up at its left for each cut-out, further out for each.
        private void DrawDimensions(Sketch sketch, CutOut cut, int level)
        {
            var (alongAcross, alongUp) = _upright ? (cut.Y, cut.X) : (cut.X, cut.Y);
            var (zeroAcross, nearAcross) = Ordered(Across(Length.Zero), Across(alongAcross));
            var (zeroUp, nearUp) = Ordered(Up(Length.Zero), Up(alongUp));
            DimensionLine.Horizontal(sketch, zeroAcross, nearAcross, _outline.Bottom + (level * Level) - 12, _outline.Bottom, _figures.Main(alongAcross), Figure);
            DimensionLine.Vertical(sketch, zeroUp, nearUp, _outline.Left - (level * Level) + 12, _outline.Left, _figures.Main(alongUp), Figure);
        }

        private static (double Low, double High) Ordered(double a, double b) => (Math.Min(a, b), Math.Max(a, b));

        private double Across(Length at) => !_upright || _edgeAtStart ? _outline.Left + (PartBox.Mm(at) * _scale) : _outline.Right - (PartBox.Mm(at) * _scale);

        private double Up(Length at) => _upright || _edgeAtStart ? _outline.Bottom - (PartBox.Mm(at) * _scale) : _outline.Top + (PartBox.Mm(at) * _scale);

        private Box Area(CutOut cut)
        {
            var (a, b) = _upright ? (cut.Y, cut.X) : (cut.X, cut.Y);
            var (c, d) = _upright ? (cut.Y + cut.LengthY, cut.X + cut.LengthX) : (cut.X + cut.LengthX, cut.Y + cut.LengthY);
            return Box.Around([new(Across(a), Up(b)), new(Across(c), Up(d))]);
        }
    }
}

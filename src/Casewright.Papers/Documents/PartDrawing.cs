using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>One part lying, its reference end at the left, looked at from its reference face: blank, true outline, cuts and holes.</summary>
internal sealed class PartDrawing
{
    private const double TitleHeight = 13;
    private const double Above = 9;
    private const double Below = 15;
    private const double Beside = 16;
    private const double Most = 38;
    private const double Least = 3;
    private const double LineHeight = 4.6;

    private static readonly Lettering Code = Lettering.ListCode;
    private static readonly Lettering Figure = Lettering.Figure.Sized(11);
    private static readonly Lettering Note = Lettering.Body.Sized(9.5);

    private readonly PlanIndex _index;
    private readonly PartGroup _group;
    private readonly Part _part;
    private readonly bool _edgeAbove;
    private readonly IReadOnlyList<string> _words;

    public PartDrawing(PlanIndex index, PartGroup group)
    {
        (_index, _group, _part) = (index, group, group.First);
        _edgeAbove = SplicePair.IsRightHanded(_part.Place);
        _words = [.. Lines()];
    }

    /// <summary>Id of the part.</summary>
    public string Key => _part.Id;

    /// <summary>Height that it takes at a width.</summary>
    public double HeightIn(double width) => TitleHeight + Above + Tall(width) + Below + (_words.Count * LineHeight);

    /// <summary>Draws it and returns the height it took.</summary>
    public double Draw(Sketch sketch, Box area)
    {
        var codes = CodeList.Of(_group.Parts.Select(part => part.Id));
        sketch.Text(Fitting.Cut(codes, Code, area.Width), area.Left, area.Top + 4.6, Code);
        var size = _index.Figures.Size(_part.Length, _part.Width, _part.Thickness);
        var title = string.Create(
            CultureInfo.InvariantCulture, $"{Words.CommonName(_group.Parts)}{Hand()}: {_group.Parts.Count} of {size}, from the {_part.ReferenceFaceName} face");
        sketch.Text(Fitting.Cut(title, Lettering.BodyStrong, area.Width), area.Left, area.Top + 9.6, Lettering.BodyStrong);
        var scale = Scale(area.Width);
        var blank = new Box(area.Left + Beside, area.Top + TitleHeight + Above, Mm(_part.Length) * scale, Mm(_part.Width) * scale);
        sketch.Group("drawn:" + _part.Id, $"{_part.Name}, {_part.ReferenceFaceName} face", "part", group => DrawBody(group, blank, scale));
        DrawFigures(sketch, blank, scale);
        var y = blank.Bottom + Below;
        foreach (var line in _words)
        {
            sketch.Text(Fitting.Cut(line, Note, area.Width), area.Left, y, Note);
            y += LineHeight;
        }

        return HeightIn(area.Width);
    }

    private static double Mm(Length length) => (double)length.Millimetres;

    private double Scale(double width) => Math.Min((width - Beside - 6) / Mm(_part.Length), Most / Mm(_part.Width));

    private double Tall(double width) => Math.Max(Least, Mm(_part.Width) * Scale(width));

    private string Hand() => _part.Hand switch
    {
        Model.Parts.Hand.Left => ", left hand",
        Model.Parts.Hand.Right => ", right hand",
        _ => "",
    };

    private Point At(Box blank, double scale, FacePoint point) =>
        new(blank.Left + (Mm(point.X) * scale), _edgeAbove ? blank.Top + (Mm(point.Y) * scale) : blank.Bottom - (Mm(point.Y) * scale));

    private void DrawBody(Sketch sketch, Box blank, double scale)
    {
        var solid = PartSolid.Of(_part);
        sketch.Rectangle(blank, new(0.2, Tone.Graphite, Dash.Dashed));
        sketch.Area(solid.Reference.Select(p => At(blank, scale, p)), Pen.Object, Tone.Sheet);
        if (!solid.Opposite.SequenceEqual(solid.Reference))
            sketch.Area(solid.Opposite.Select(p => At(blank, scale, p)), Pen.Hidden);
        foreach (var bore in _part.Machining.OfType<Bore>())
        {
            var at = At(blank, scale, new(bore.X, bore.Y));
            var near = bore.Face == Face.Reference;
            sketch.Circle(at.X, at.Y, Math.Max(0.5, Mm(bore.Diameter) * scale / 2), near ? Pen.Thin : Pen.Hidden, near ? Tone.Paper : null);
        }

        var edge = solid.Reference.Where(p => p.Y == Length.Zero).Select(p => At(blank, scale, p)).OrderBy(p => p.X).ToList();
        if (edge.Count > 1)
            sketch.Line(edge[0].X, edge[0].Y, edge[^1].X, edge[^1].Y, Pen.Reference);
    }

    // The blank below and beside it; what each end loses above it.
    private void DrawFigures(Sketch sketch, Box blank, double scale)
    {
        var figures = _index.Figures;
        DimensionLine.Horizontal(sketch, blank.Left, blank.Right, blank.Bottom + 6, blank.Bottom + 1, figures.Main(_part.Length), Figure);
        DimensionLine.Vertical(sketch, blank.Top, blank.Bottom, blank.Left - 5, blank.Left - 1, figures.Main(_part.Width), Figure);
        var (first, last) = Words.EndsOf(_part);
        sketch.Text(first, blank.Left, blank.Bottom + 10.6, Lettering.Small);
        if (blank.Width > 30)
            sketch.Text(last, blank.Right, blank.Bottom + 10.6, Lettering.Small, Anchor.End);
        foreach (var (end, off) in Ends())
        {
            var (x0, x1) = end == PartEdge.Start ? (blank.Left, blank.Left + (Mm(off) * scale)) : (blank.Right - (Mm(off) * scale), blank.Right);
            var y = blank.Top - 3.4;
            foreach (var x in (double[])[x0, x1])
                sketch.Line(x, blank.Top - 1, x, y - 1.4, Pen.Dimension);
            sketch.Line(x0, y, x1, y, Pen.Dimension);
            sketch.Text(figures.Main(off), end == PartEdge.Start ? x0 : x1, y - 2.2, Figure, end == PartEdge.Start ? Anchor.Start : Anchor.End);
        }
    }

    /// <summary>What the cut of each end takes off the length.</summary>
    private IEnumerable<(PartEdge End, Length Off)> Ends() => _part.Machining
        .Select(work => work switch
        {
            Bevel { Edge: PartEdge.Start or PartEdge.End } bevel => (bevel.Edge, bevel.Setback),
            Clip clip => (clip.End, clip.AlongX),
            _ => (PartEdge.Reference, Length.Zero),
        })
        .Where(end => end.Item2 > Length.Zero)
        .GroupBy(end => end.Item1)
        .Select(end => (end.Key, end.Max(e => e.Item2)));

    private IEnumerable<string> Lines()
    {
        var figures = _index.Figures;
        var (start, end) = Words.EndsOf(_part);
        string Where(PartEdge edge) => (edge == PartEdge.Start ? start : end).ToLowerInvariant() + " end";
        foreach (var work in _part.Machining)
        {
            var words = work switch
            {
                Bevel { Edge: PartEdge.Start or PartEdge.End } bevel => $"{Where(bevel.Edge)}: bevel, {CutWords.Of(figures, _part, bevel)}",
                Clip clip => $"{Where(clip.End)}: raked cut, {CutWords.Of(figures, _part, clip)}",
                Bore bore => $"hole for {bore.For}: {figures.Main(bore.X)} from the {start.ToLowerInvariant()} end, {CutWords.Of(figures, _part, bore)}",
                _ => null,
            };
            if (words is not null)
                yield return words;
        }
    }
}

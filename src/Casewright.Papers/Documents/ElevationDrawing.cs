using System.Globalization;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>Draws the cases of one stretch of a run from the front.</summary>
internal sealed class ElevationDrawing
{
    private static readonly Lettering CaseCode = new(14, FontFamily.BarlowCondensed, FontWeight.Bold);
    private static readonly Lettering Figure = Lettering.Figure;
    private static readonly Lettering SightWords = new(10, FontFamily.BarlowCondensed, FontWeight.SemiBold, Tone.Chalk);
    private static readonly Lettering MarkNumber = new(10, FontFamily.BarlowCondensed, FontWeight.Bold);

    // More findings of one check than this share a single mark with their count.
    private const int MostMarks = 4;

    private readonly PlanIndex _index;
    private readonly Run _run;
    private readonly Wall _wall;
    private readonly IReadOnlyList<CaseBox> _cases;
    private readonly Elevation.Stretch _stretch;
    private readonly Sketch _sketch;
    private readonly RoomView _view;
    private readonly FreeSpace _space = new();

    public ElevationDrawing(
        PlanIndex index, Run run, Wall wall, IReadOnlyList<CaseBox> cases, Elevation.Stretch stretch, Sketch sketch, Box area, double divisor)
    {
        (_index, _run, _wall, _cases, _stretch, _sketch) = (index, run, wall, cases, stretch, sketch);
        var (left, above, _) = Elevation.Margins;
        var tallest = Length.Max(wall.Height, stretch.Top);
        _view = new(stretch.From, area.Top + above + ((double)tallest.Millimetres / divisor), area.Left + left, 1 / divisor);
    }

    private double LeftEdge => _view.X(_stretch.From);

    private double RightEdge => _view.X(_stretch.To);

    public void Draw()
    {
        DrawRoom();
        foreach (var part in Visible())
            PartPicture.Draw(_sketch, _view, part);
        foreach (var box in _cases)
            DrawCase(box);
        new RakeFigures(_index, _view, _sketch, _space).Draw(_wall, _cases);
        DrawWidths();
        DrawHeights();
        DrawSightLines();
        DrawFindings();
    }

    private void DrawRoom()
    {
        var floor = _view.FloorY;
        _sketch.Line(LeftEdge - 5, floor, RightEdge + 5, floor, Pen.Rule);
        var ceiling = _view.Ceiling(_wall, _stretch.From, _stretch.To).ToArray();
        _sketch.Chain([new(LeftEdge - 5, ceiling[0].Y), .. ceiling, new(RightEdge + 5, ceiling[^1].Y)], Pen.Thin);
    }

    private IEnumerable<Part> Visible()
    {
        var shown = _cases.Select(box => box.Id).ToHashSet(StringComparer.Ordinal);
        return _index.Plan.Parts
            .Where(part => part.Run == _run.Id && (shown.Contains(part.Case) || IsInside(part)))
            .OrderBy(part => part.HighCorner.Z);
    }

    private bool IsInside(Part part)
    {
        var low = part.LowCorner;
        var high = part.HighCorner;
        return _index.FindCase(part.Case) is null && low.X >= _stretch.From && high.X <= _stretch.To;
    }

    private void DrawCase(CaseBox box)
    {
        var area = new Box(_view.X(box.X), _view.Y(box.Y + box.Height), (double)box.Width.Millimetres * _view.Scale, (double)box.Height.Millimetres * _view.Scale);
        _sketch.Group("case:" + box.Id, "case " + box.Id, "case", group =>
        {
            group.Area(_view.Outline(box), Pen.Object);
            if (TextLayout.Width(box.Id, CaseCode) > area.Width - 2)
                return;
            var highest = _cases.Where(other => other.Column == box.Column).Max(other => other.Tier);
            var y = box.Tier == highest ? Math.Min(_view.Y(Length.Max(_wall.Height, _stretch.Top)), area.Top) - 2.4 : area.Top + CaseCode.CapHeight + 3;
            var item = new TextItem(box.Id, new(area.Centre.X, y), CaseCode, Anchor.Middle, Backed: box.Tier != highest);
            group.Add(item);
            _space.Take(item.Bounds.Inset(-0.5));
        });
    }

    private void DrawWidths()
    {
        var columns = _cases.GroupBy(box => box.Column).Select(group => group.First()).OrderBy(box => box.X).ToList();
        var y = _view.FloorY + 9;
        var turned = columns.Any(box => !FitsLevel(box));
        foreach (var box in columns)
            DrawWidth(_view.X(box.X), _view.X(box.X + box.Width), y, _view.FloorY + 1.5, box.Width, turned);
        var overall = y + (turned ? 15 : 13);
        DimensionLine.Horizontal(_sketch, LeftEdge, RightEdge, overall, overall - 3, _index.Figures.Both(_stretch.To - _stretch.From) + " overall", Figure.Sized(13));
    }

    private bool FitsLevel(CaseBox box)
    {
        var width = (double)box.Width.Millimetres * _view.Scale;
        return TextLayout.Width(_index.Figures.Main(box.Width), Figure) + 6 <= width && TextLayout.Width(_index.Figures.Other(box.Width), Lettering.SecondFigure) + 1.5 <= width;
    }

    private void DrawWidth(double x0, double x1, double y, double from, Length width, bool turned)
    {
        if (!turned)
        {
            DimensionLine.Horizontal(_sketch, x0, x1, y, from, _index.Figures.Main(width), Figure);
            _sketch.Text(_index.Figures.Other(width), (x0 + x1) / 2, y + 5.4, Lettering.SecondFigure, Anchor.Middle);
            return;
        }

        foreach (var x in (double[])[x0, x1])
            _sketch.Line(x, from + 1, x, y - 4, Pen.Dimension);
        _sketch.Line(x0, y - 5.5, x1, y - 5.5, Pen.Dimension);
        _sketch.Text(_index.Figures.Main(width), ((x0 + x1) / 2) + (Figure.CapHeight / 2), y - 3, Figure, Anchor.End, -90);
    }

    // Heights of the first column: floor, base, fixed shelves, tiers, ceiling.
    private void DrawHeights()
    {
        var first = _cases[0].Column;
        var column = _cases.Where(box => box.Column == first).ToList();
        var levels = new SortedSet<Length> { Length.Zero, _wall.CeilingAt(_stretch.From) };
        foreach (var box in column)
        {
            levels.Add(box.Y);
            levels.Add(box.Y + box.HeightAt(box.X));
        }

        foreach (var shelf in _index.Plan.Parts.Where(part => part.Role is PartRole.FixedShelf or PartRole.Bottom && column.Any(box => box.Id == part.Case)))
            levels.Add(shelf.HighCorner.Y);
        DrawLevels([.. levels]);
    }

    // Heights above the floor, each at its own line; where two would touch, the upper gives way upwards with a slanting leader.
    private void DrawLevels(IReadOnlyList<Length> levels)
    {
        var lettering = Figure;
        var pitch = lettering.CapHeight + 1.7;
        var last = double.PositiveInfinity;
        var leaderEnd = LeftEdge - 12;
        foreach (var level in levels)
        {
            var y = _view.Y(level);
            var at = Math.Min(y, last - pitch);
            last = at;
            _sketch.Line(LeftEdge - 2.5, y, LeftEdge - 7, y, Pen.Dimension);
            _sketch.Line(LeftEdge - 7, y, leaderEnd + 0.8, at, Pen.Dimension);
            var main = _index.Figures.Main(level);
            _sketch.TextCentred(main, leaderEnd, at, lettering, Anchor.End);
            var used = TextLayout.Width(main, lettering);
            var other = _index.Figures.Other(level);
            if (level > Length.Zero && used + TextLayout.Width(other, Lettering.SecondFigure) + 2 < leaderEnd - (LeftEdge - Elevation.Margins.Left))
                _sketch.TextCentred(other, leaderEnd - used - 2, at, Lettering.SecondFigure, Anchor.End);
        }

        _sketch.Text("above floor", LeftEdge - Elevation.Margins.Left, _view.FloorY + 6, Lettering.Small);
    }

    private void DrawSightLines()
    {
        var shown = Visible().Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var lines = _index.Plan.Cutting.Splices.Where(splice => splice.SightLine is not null && shown.Contains(splice.Part))
            .GroupBy(splice => splice.SightLine!.Value).OrderBy(group => group.Key).ToList();
        var last = double.PositiveInfinity;
        foreach (var line in lines)
        {
            var y = _view.Y(line.Key);
            _sketch.Group($"sight:{line.Key.Nanometres}", $"sight line {_index.Figures.Both(line.Key)}", "sight-line", group => group.Line(LeftEdge - 6.5, y, RightEdge + 9, y, Pen.SightLine));
            var at = Math.Min(y, last - 17);
            last = at;
            Symbols.KeyedMark(_sketch, RightEdge + 14, at, 3);
            _sketch.Text("sight line " + _index.Figures.Main(line.Key), RightEdge + 10, at - 3, SightWords.Sized(11));
            _sketch.Text(_index.Figures.Other(line.Key), RightEdge + 20, at + 1.2, SightWords);
            _sketch.Text(Words.Count(line.Count(), "splice", "splices"), RightEdge + 10, at + 6.4, SightWords);
        }
    }

    private void DrawFindings()
    {
        foreach (var marked in _index.Marked)
        {
            var here = marked.Findings.Select(finding => (Finding: finding, Centre: CentreOf(finding.Subject))).Where(place => place.Centre is not null).ToList();
            if (here.Count > MostMarks)
                DrawFinding(marked, here[0].Finding, here[0].Centre!.Value, here.Count);
            else
                here.ForEach(place => DrawFinding(marked, place.Finding, place.Centre!.Value, 1));
        }
    }

    private void DrawFinding(MarkedFinding marked, Finding finding, Point centre, int count)
    {
        const double Size = 4.6;
        var number = string.Create(CultureInfo.InvariantCulture, $"{marked.Number}{(count > 1 ? $" × {count}" : "")}");
        var width = Size + 1 + TextLayout.Width(number, MarkNumber);
        var places = Enumerable.Range(0, 40).Select(i => new Box(centre.X - (width / 2) + (i % 5 * (width + 0.6)), centre.Y - (Size / 2) + (i / 5 * (Size + 0.8)), width, Size));
        if (_space.TakeFirst(places.Where(place => place.Right < RightEdge && place.Bottom < _view.FloorY)) is not { } box)
            return;
        _sketch.Group($"finding:{marked.Number}:{finding.Subject}", $"{Words.Of(marked.Severity)} {number}: {finding.Message}", "finding", group =>
        {
            FindingSheet.DrawSign(group, marked.Severity, box.Left + (Size / 2), box.Centre.Y, Size);
            group.TextCentred(number, box.Left + Size + 1, box.Centre.Y, MarkNumber.In(marked.Severity == Severity.Stop ? Tone.Stop : Tone.Caution), backed: true);
        });
    }

    private Point? CentreOf(string subject)
    {
        var splice = _index.Plan.Cutting.Splices.FirstOrDefault(s => s.Id == subject);
        if (_index.FindPart(splice?.Part ?? subject) is { } part && part.Run == _run.Id)
            return Shown(splice?.SightLine is { } height ? _view.At(part).Centre with { Y = _view.Y(height) } : _view.At(part).Centre);
        if (_cases.FirstOrDefault(box => box.Id == subject) is { } caseBox)
            return Shown(new(_view.X(caseBox.X + (caseBox.Width / 2)), _view.Y(caseBox.Y + (caseBox.Height / 2))));
        return null;
    }

    private Point? Shown(Point point) => point.X >= LeftEdge && point.X <= RightEdge ? point : null;
}

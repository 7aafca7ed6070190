using System.Globalization;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>Figures of raked tops in an elevation, in the free space above the sloping ceiling: heights of both ends, and the slope.</summary>
internal sealed class RakeFigures(PlanIndex index, RoomView view, Sketch sketch, FreeSpace space)
{
    private static readonly Lettering Figure = Lettering.Figure.Sized(11);

    /// <summary>Draws them for the raked cases of a stretch.</summary>
    public void Draw(Wall wall, IReadOnlyList<CaseBox> cases)
    {
        var raked = cases.Where(box => box.Rake is not null).ToList();
        foreach (var (x, height) in raked.SelectMany(Ends).DistinctBy(end => end.X).OrderBy(end => end.X))
            DrawHeight(wall, x, height);
        foreach (var slope in raked.GroupBy(box => box.Rake!.Value))
            DrawSlope(wall, slope.Key, slope.Min(box => box.X), slope.Max(box => box.X + box.Width));
    }

    private static IEnumerable<(Length X, Length Height)> Ends(CaseBox box) =>
        new[] { box.X, box.X + box.Width }.Select(x => (x, box.Y + box.HeightAt(x)));

    private void DrawHeight(Wall wall, Length x, Length height)
    {
        var (at, ceiling) = (view.X(x), view.Y(wall.CeilingAt(x)));
        sketch.Line(at, view.Y(height) - 0.4, at, ceiling - 4, Pen.Dimension);
        Put(index.Figures.Main(height), at, ceiling - 5.2);
    }

    // The angle at the middle of what the slope covers, clear of the line.
    private void DrawSlope(Wall wall, Slope slope, Length from, Length to)
    {
        var middle = from + ((to - from) / 2);
        var words = string.Create(CultureInfo.InvariantCulture, $"{slope.Degrees:0.0}°, falls to the {(slope.Falls ? "right" : "left")}");
        Put(words, view.X(middle), view.Y(wall.CeilingAt(middle)) - 13);
    }

    // Above the sloping ceiling it is free towards the high side: a figure begins at its place and is moved up while something is there.
    private void Put(string words, double x, double y)
    {
        var width = TextLayout.Width(words, Figure);
        var places = Enumerable.Range(0, 12)
            .Select(i => new Box(x + 1, y - Figure.CapHeight - (i * (Figure.CapHeight + 1.2)), width, Figure.CapHeight).Inset(-0.3));
        if (space.TakeFirst(places) is { } box)
            sketch.Text(words, box.Left + 0.3, box.Bottom - 0.3, Figure);
    }
}

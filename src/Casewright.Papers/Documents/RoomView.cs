using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;

namespace Casewright.Papers.Documents;

/// <summary>Maps a wall seen from the front to paper: x along the wall, y up.</summary>
/// <param name="Left">Room x at the left of the drawing.</param>
/// <param name="FloorY">Paper y of the floor.</param>
/// <param name="PaperLeft">Paper x of <paramref name="Left"/>.</param>
/// <param name="Scale">Paper millimetres for a millimetre of the room.</param>
internal sealed record RoomView(Length Left, double FloorY, double PaperLeft, double Scale)
{
    public double X(Length x) => PaperLeft + ((double)(x - Left).Millimetres * Scale);

    public double Y(Length y) => FloorY - ((double)y.Millimetres * Scale);

    /// <summary>The outline of a part.</summary>
    public IEnumerable<Point> Outline(Part part) => PartSolid.SeenFromFront(part).Select(p => new Point(X(p.X), Y(p.Y)));

    /// <summary>The outline of a case, its top along the slope.</summary>
    public IEnumerable<Point> Outline(CaseBox box)
    {
        var (left, right) = (box.X, box.X + box.Width);
        return
        [
            new(X(left), Y(box.Y + box.HeightAt(left))), new(X(right), Y(box.Y + box.HeightAt(right))),
            new(X(right), Y(box.Y)), new(X(left), Y(box.Y)),
        ];
    }

    /// <summary>The line of the ceiling between two places along the wall.</summary>
    public IEnumerable<Point> Ceiling(Wall wall, Length from, Length to) => wall.CeilingLine(from, to).Select(p => new Point(X(p.X), Y(p.Height)));

    public Box At(Part part)
    {
        var low = part.LowCorner;
        var high = part.HighCorner;
        return new(X(low.X), Y(high.Y), X(high.X) - X(low.X), Y(low.Y) - Y(high.Y));
    }
}

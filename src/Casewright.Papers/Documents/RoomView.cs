using Casewright.Model.Measure;
using Casewright.Model.Parts;
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

    public Box At(Part part)
    {
        var low = part.LowCorner;
        var high = part.HighCorner;
        return new(X(low.X), Y(high.Y), X(high.X) - X(low.X), Y(low.Y) - Y(high.Y));
    }
}

using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>The raked top of one case: the straight line of its upper face along the wall.</summary>
/// <param name="Slope">The slope, counted to the right; never level.</param>
/// <param name="AtX">A place along the wall.</param>
/// <param name="AtHeight">Height of the upper face there, above the highest floor point.</param>
/// <param name="Lowered">How far it lies below the room asked for under the ceiling at most: where the ceiling breaks within the case, or was read lower than stated.</param>
internal sealed record RakeFigures(Slope Slope, Length AtX, Length AtHeight, Length Lowered)
{
    /// <summary>Whether its low end is on the right.</summary>
    public bool FallsRight => Slope.Falls;

    /// <summary>Height of the upper face at a place along the wall.</summary>
    public Length Top(Length x) => AtHeight + Slope.Over(x - AtX);

    /// <summary>Height of the underside of a top of a thickness.</summary>
    public Length Under(Length x, Length thickness) => Top(x) - Slope.Along(thickness);

    /// <summary>Where along the wall the underside has a height.</summary>
    public Length WhereUnder(Length height, Length thickness)
    {
        var down = Under(AtX, thickness) - height;
        var across = Slope.LevelFor(down.Abs());
        return down >= Length.Zero == FallsRight ? AtX + across : AtX - across;
    }

    /// <summary>The higher of two places along the wall.</summary>
    public Length Higher(Length left, Length right) => FallsRight ? left : right;

    /// <summary>The lower of two places along the wall.</summary>
    public Length Lower(Length left, Length right) => FallsRight ? right : left;
}

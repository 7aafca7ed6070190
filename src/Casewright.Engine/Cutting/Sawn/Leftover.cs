using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>What a sawn sheet or board left over and is worth keeping: stock that costs nothing more.</summary>
/// <param name="Place">Where it lies.</param>
/// <param name="Stock">Id of the stock that the sheet or board came from.</param>
/// <param name="Length">Size along the sheet's length; of a board its length, raw or sawn ends included.</param>
/// <param name="Width">Size across; zero for a board.</param>
internal sealed record Leftover(LeftoverPlace Place, string Stock, Length Length, Length Width)
{
    /// <summary>The same as an offcut in the list of its sheet.</summary>
    public KeptOffcut AsOffcut => new(Place.X, Place.Y, Length, Width);
}

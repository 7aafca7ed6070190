using Casewright.Model.Collections;
using Casewright.Model.Cutting;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>A kind of stock as the cutting engine sees it, and what it is in the job.</summary>
/// <param name="Stock">The entry of the job's stock.</param>
/// <param name="Bought">Whether it has to be bought.</param>
/// <param name="Price">What one costs the job: its price when bought, else nothing.</param>
internal sealed record StockLine<T>(T Stock, bool Bought, decimal Price)
{
    /// <summary>Where they lie, when they are what sawn sheets or boards left over; else empty.</summary>
    public ValueList<LeftoverPlace> Leftovers { get; init; } = [];
}

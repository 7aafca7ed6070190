using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>The pricers of all kinds of sheet, at every depth, each made when first asked for.</summary>
internal sealed class SheetPricers(ReducedProblem problem)
{
    private readonly Dictionary<PricingDepth, SheetPricer[]> _pricers = [];

    public SheetPricer[] this[PricingDepth depth]
    {
        get
        {
            if (!_pricers.TryGetValue(depth, out var made))
                _pricers.Add(depth, made = [.. problem.Sheets.Select(s => new SheetPricer(problem, s, depth))]);
            return made;
        }
    }
}

namespace Casewright.Engine.Cutting.Reduction;

/// <summary>
/// The largest step that divides every price. Prices become whole numbers of steps, so that costs compare exactly and a
/// lower bound may be rounded up to the next whole step.
/// </summary>
internal sealed class PriceLattice
{
    private PriceLattice(decimal step) => Step = step;

    public decimal Step { get; }

    /// <summary>Finds the step of the prices; 1 when all are 0.</summary>
    public static PriceLattice Of(IEnumerable<decimal> prices)
    {
        var step = 0m;
        foreach (var price in prices)
            step = GreatestCommonDivisor(step, price);
        return new PriceLattice(step == 0 ? 1 : step);
    }

    public long ToSteps(decimal price) => (long)(price / Step);

    public decimal ToPrice(long steps) => steps * Step;

    private static decimal GreatestCommonDivisor(decimal a, decimal b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}

namespace Casewright.Engine.Cutting.Bound;

/// <summary>A step function f on sizes with f(capacity) = <paramref name="Total"/>: sizes that fit the capacity together never exceed the total together.</summary>
internal readonly record struct DualFeasibleFunction(double[] Values, double Total);

/// <summary>
/// Families of dual feasible functions on given sizes: identity; rounding of large and small sizes (Martello and Vigo);
/// u^(k) (Fekete and Schepers); rounding by a divisor (Carlier, Clautiaux and Moukrim).
/// </summary>
internal static class DualFeasibleFunctions
{
    private const int LargestDivision = 12;

    public static List<DualFeasibleFunction> Of(long[] sizes, long capacity)
    {
        var functions = new List<DualFeasibleFunction> { Make(sizes, x => x, capacity) };
        var thresholds = sizes.Select(s => Math.Min(s, capacity - s)).Where(t => t > 0).Concat(sizes.Where(s => 2 * s <= capacity)).Distinct().Order().ToArray();
        foreach (var limit in Thin(thresholds, 60))
        {
            if (2 * limit <= capacity)
                functions.Add(Make(sizes, x => x > capacity - limit ? capacity : x < limit ? 0 : x, capacity));
            if (2 * limit <= capacity)
                functions.Add(Make(sizes, x => ByDivisor(x, capacity, limit), 2.0 * (capacity / limit)));
        }

        for (var k = 1; k <= LargestDivision; k++)
        {
            var parts = k;
            functions.Add(Make(
                sizes, x => (UInt128)(parts + 1) * (UInt128)x % (UInt128)capacity == 0 ? (double)x * parts : (double)(long)((UInt128)(parts + 1) * (UInt128)x / (UInt128)capacity) * capacity, (double)capacity * parts));
        }

        return functions;
    }

    private static double ByDivisor(long x, long capacity, long divisor)
    {
        if (2 * x > capacity)
            return 2.0 * ((capacity / divisor) - ((capacity - x) / divisor));
        return 2 * x == capacity ? capacity / divisor : 2.0 * (x / divisor);
    }

    private static DualFeasibleFunction Make(long[] sizes, Func<long, double> f, double total) => new([.. sizes.Select(s => f(s) / total)], 1);

    private static long[] Thin(long[] sorted, int limit) =>
        sorted.Length <= limit ? sorted : [.. Enumerable.Range(0, limit).Select(i => sorted[(long)i * sorted.Length / limit])];
}

using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>
/// Order of cutting: largest sheets first, so that the heaviest are broken down while there is most room; layouts of the
/// same first settings together, alike ones one after another, and fuller sheets before those with the larger rest.
/// </summary>
internal static class SheetOrder
{
    public static List<(int Sheet, LayoutTree Layout)> Sort(ReducedProblem problem, List<(int Sheet, LayoutTree Layout)> sheets)
    {
        var sorted = sheets.Select(s => (s.Sheet, s.Layout, Key: Key(s.Layout))).ToList();
        return [.. sorted
            .OrderByDescending(s => problem.Sheets[s.Sheet].Area).ThenBy(s => s.Sheet)
            .ThenBy(s => s.Layout.Axis).ThenByDescending(s => s.Key, KeyComparer.Instance)
            .Select(s => (s.Sheet, s.Layout))];
    }

    // Sizes from the first cuts down, in order of the tree.
    private static List<long> Key(LayoutTree tree)
    {
        var key = new List<long>();
        var queue = new Queue<LayoutTree>([tree]);
        while (queue.TryDequeue(out var next))
        {
            foreach (var part in next.Parts)
            {
                key.Add(part.Along(next.Axis));
                queue.Enqueue(part);
            }
        }

        return key;
    }

    private sealed class KeyComparer : IComparer<List<long>>
    {
        public static KeyComparer Instance { get; } = new();

        public int Compare(List<long>? x, List<long>? y)
        {
            for (var i = 0; i < Math.Min(x!.Count, y!.Count); i++)
            {
                if (x[i] != y[i])
                    return x[i].CompareTo(y[i]);
            }

            return x!.Count.CompareTo(y!.Count);
        }
    }
}

using Casewright.Engine.Cutting;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>
/// The least cost of a tiny problem by enumeration, written apart from the engine: every choice of options, every set of
/// pieces, every guillotine layout as the smallest boxes it can have.
/// </summary>
internal sealed class CuttingOracle
{
    private readonly CuttingProblem _problem;
    private readonly List<CuttingPiece> _pieces;
    private readonly Dictionary<(int Set, bool AlongX, int Stages), List<(long X, long Y)>> _rows = [];

    private CuttingOracle(CuttingProblem problem, List<CuttingPiece> pieces)
    {
        _problem = problem;
        _pieces = pieces;
    }

    /// <summary>Least cost, or null when nothing can be cut. At most about eight pieces in all.</summary>
    public static decimal? LeastCost(CuttingProblem problem)
    {
        decimal? best = null;
        foreach (var choice in Choices(problem, 0, 0, []))
        {
            var extra = choice.Sum(c => c.ExtraCost);
            var sheets = new CuttingOracle(problem, [.. choice.SelectMany(c => c.Pieces)]).LeastSheetCost();
            if (sheets is { } cost && (best is null || cost + extra < best))
                best = cost + extra;
        }

        return best;
    }

    private static IEnumerable<List<CuttingOption>> Choices(CuttingProblem problem, int demand, int copy, List<(string? Group, CuttingOption Option)> taken)
    {
        if (demand == problem.Demands.Count)
        {
            var broken = taken.Where(t => t.Group is not null && t.Option.SightLine is not null)
                .GroupBy(t => t.Group, StringComparer.Ordinal).Any(g => g.Select(t => t.Option.SightLine).Distinct().Count() > 1);
            if (!broken)
                yield return [.. taken.Select(t => t.Option)];
            yield break;
        }

        var current = problem.Demands[demand];
        if (copy == current.Count)
        {
            foreach (var choice in Choices(problem, demand + 1, 0, taken))
                yield return choice;
            yield break;
        }

        foreach (var option in current.Options)
        {
            taken.Add((current.SightLineGroup, option));
            foreach (var choice in Choices(problem, demand, copy + 1, taken))
                yield return choice;
            taken.RemoveAt(taken.Count - 1);
        }
    }

    // Cheapest way to cover the pieces with sheets: over all sets of pieces, each kind of sheet in turn.
    private decimal? LeastSheetCost()
    {
        var all = (1 << _pieces.Count) - 1;
        var best = new decimal?[all + 1];
        best[0] = 0;
        foreach (var sheet in _problem.Sheets)
        {
            var fits = new bool[all + 1];
            for (var set = 1; set <= all; set++)
                fits[set] = Fits(set, sheet);
            for (var used = 0; used < Math.Min(sheet.Available ?? int.MaxValue, _pieces.Count); used++)
            {
                var next = (decimal?[])best.Clone();
                for (var set = 1; set <= all; set++)
                {
                    for (var part = set; part > 0; part = (part - 1) & set)
                    {
                        if (fits[part] && best[set ^ part] is { } rest && (next[set] is null || rest + sheet.Cost < next[set]))
                            next[set] = rest + sheet.Cost;
                    }
                }

                best = next;
            }
        }

        return best[all];
    }

    private bool Fits(int set, SheetType sheet)
    {
        var rules = _problem.Rules;
        var (x, y) = (sheet.Length - (2 * rules.EdgeTrim), sheet.Width - (2 * rules.EdgeTrim));
        var stages = rules.Stages ?? _pieces.Count + 1;
        return (rules.FirstCut != FirstCut.Along && Row(set, true, stages).Exists(b => b.X <= x && b.Y <= y))
            || (rules.FirstCut != FirstCut.Across && Row(set, false, stages).Exists(b => b.X <= x && b.Y <= y));
    }

    // Smallest boxes of a set laid out as a row of parts along an axis, each part a piece or a row the other way.
    private List<(long X, long Y)> Row(int set, bool alongX, int stages)
    {
        if (_rows.TryGetValue((set, alongX, stages), out var known))
            return known;
        var boxes = new List<(long X, long Y)>();
        var lowest = set & -set;
        for (var part = set; part > 0; part = (part - 1) & set)
        {
            if ((part & lowest) == 0)
                continue;
            foreach (var box in Part(part, alongX, stages))
            {
                if (part == set)
                {
                    boxes.Add(box);
                    continue;
                }

                foreach (var rest in Row(set ^ part, alongX, stages))
                {
                    boxes.Add(alongX
                        ? (box.X + _problem.Rules.Kerf + rest.X, Math.Max(box.Y, rest.Y))
                        : (Math.Max(box.X, rest.X), box.Y + _problem.Rules.Kerf + rest.Y));
                }
            }
        }

        var smallest = boxes.Distinct().Where(b => !boxes.Exists(o => o != b && o.X <= b.X && o.Y <= b.Y)).ToList();
        _rows.Add((set, alongX, stages), smallest);
        return smallest;
    }

    private List<(long X, long Y)> Part(int set, bool alongX, int stages)
    {
        if ((set & (set - 1)) != 0)
            return stages > 1 ? Row(set, !alongX, stages - 1) : [];
        var piece = _pieces[System.Numerics.BitOperations.TrailingZeroCount(set)];
        return piece.MayTurn ? [(piece.Length, piece.Width), (piece.Width, piece.Length)] : [(piece.Length, piece.Width)];
    }
}

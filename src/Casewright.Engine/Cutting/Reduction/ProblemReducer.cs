using System.Globalization;
using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Reduction;

/// <summary>Checks a problem and reduces it, or says why nothing can be cut.</summary>
internal sealed class ProblemReducer
{
    private readonly CuttingProblem _problem;
    private readonly List<CuttingObstacle> _obstacles = [];
    private readonly Dictionary<(long, long, bool), int> _kindIndex = [];
    private readonly List<PieceKind> _kinds = [];
    private readonly SheetKind[] _sheets;
    private readonly PriceLattice _prices;

    private ProblemReducer(CuttingProblem problem)
    {
        _problem = problem;
        _prices = PriceLattice.Of(problem.Sheets.Select(s => s.Cost).Concat(problem.Demands.SelectMany(d => d.Options).Select(o => o.ExtraCost)));
        _sheets = [.. problem.Sheets.Select(Reduce).Where(s => s is { SizeX: > 0, SizeY: > 0, Available: > 0 })];
    }

    /// <summary>Reduces the problem; null with obstacles when some demand cannot be cut.</summary>
    /// <exception cref="ArgumentException">The problem breaks the range of a member.</exception>
    public static (ReducedProblem? Problem, ValueList<CuttingObstacle> Obstacles) Reduce(CuttingProblem problem)
    {
        RangeCheck.Check(problem);
        var reducer = new ProblemReducer(problem);
        var reduced = reducer.Run();
        return (reduced, reducer._obstacles.ToValueList());
    }

    private ReducedProblem? Run()
    {
        var groups = new SightLineGroups(_problem.Demands);
        var usable = _problem.Demands.Select(Usable).ToArray();
        if (_obstacles.Count > 0)
            return null;
        groups.KeepCommon(_problem.Demands, usable, _obstacles);
        if (_obstacles.Count > 0)
            return null;
        var demands = new List<ReducedDemand>();
        for (var d = 0; d < usable.Length; d++)
        {
            var demand = _problem.Demands[d];
            if (demand.Count == 0)
                continue;
            var options = usable[d].Select(o => new ReducedOption(
                o, [.. demand.Options[o].Pieces.Select(Kind)], _prices.ToSteps(demand.Options[o].ExtraCost), groups.LineOf(demand, o), demand.Options[o].Preference));
            demands.Add(new ReducedDemand(d, demand.Count, [.. options], groups.GroupOf(demand)));
        }

        return new ReducedProblem
        {
            Source = _problem,
            Sheets = _sheets,
            Kinds = [.. _kinds],
            Demands = [.. demands],
            SightLines = groups.LineCounts(),
            Prices = _prices,
            Stages = _problem.Rules.Stages ?? int.MaxValue,
            LongestRip = _problem.Rules.LongestRip is { } rip ? rip + _problem.Rules.Kerf : long.MaxValue,
        };
    }

    private SheetKind Reduce(SheetType sheet, int index)
    {
        var rules = _problem.Rules;
        var usableX = sheet.Length - (2 * rules.EdgeTrim);
        var usableY = sheet.Width - (2 * rules.EdgeTrim);
        var ripAllowed = rules.LongestRip is not { } rip || usableX <= rip;
        return new SheetKind(
            index,
            usableX > 0 ? usableX + rules.Kerf : 0,
            usableY > 0 ? usableY + rules.Kerf : 0,
            _prices.ToSteps(sheet.Cost),
            sheet.Available ?? int.MaxValue,
            ripAllowed);
    }

    private int Kind(CuttingPiece piece)
    {
        var kerf = _problem.Rules.Kerf;
        var mayTurn = piece.MayTurn && piece.Length != piece.Width;
        var (x, y) = (piece.Length + kerf, piece.Width + kerf);
        if (mayTurn && x < y)
            (x, y) = (y, x);
        if (!_kindIndex.TryGetValue((x, y, mayTurn), out var index))
        {
            index = _kinds.Count;
            _kindIndex.Add((x, y, mayTurn), index);
            _kinds.Add(new PieceKind(x, y, mayTurn));
        }

        return index;
    }

    private List<int> Usable(CuttingDemand demand)
    {
        if (demand.Count == 0)
            return [];
        var reasons = demand.Options.Select(o => WhyNot(demand, o)).ToArray();
        var usable = Enumerable.Range(0, reasons.Length).Where(o => reasons[o] is null).ToList();
        if (usable.Count == 0)
            _obstacles.Add(reasons.OfType<CuttingObstacle>().Last());
        return usable;
    }

    private CuttingObstacle? WhyNot(CuttingDemand demand, CuttingOption option)
    {
        var minimum = _problem.Rules.MinimumStrip ?? 0;
        foreach (var piece in option.Pieces)
        {
            if (Math.Min(piece.Length, piece.Width) < minimum)
            {
                return new CuttingObstacle(ObstacleKind.TooNarrow, demand.Id, string.Create(CultureInfo.InvariantCulture,
                    $"{demand.Id}: a piece of {piece.Length} by {piece.Width} is narrower than {minimum}, the least the saw may cut."));
            }

            if (!Array.Exists(_sheets, s => CanLie(s, piece)))
            {
                var sheets = string.Join(", ", _problem.Sheets.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Id} ({s.Length} by {s.Width})")));
                return new CuttingObstacle(ObstacleKind.FitsNoSheet, demand.Id, string.Create(CultureInfo.InvariantCulture,
                    $"{demand.Id}: a piece of {piece.Length} by {piece.Width}{(piece.MayTurn ? "" : ", not to be turned,")} fits no sheet on hand or on offer: {sheets}; {_problem.Rules.EdgeTrim} is trimmed off every edge."));
            }
        }

        return null;
    }

    private bool CanLie(SheetKind sheet, CuttingPiece piece) =>
        CanLie(sheet, piece.Length, piece.Width) || (piece.MayTurn && CanLie(sheet, piece.Width, piece.Length));

    private bool CanLie(SheetKind sheet, long x, long y)
    {
        var rules = _problem.Rules;
        if (x + rules.Kerf > sheet.SizeX || y + rules.Kerf > sheet.SizeY)
            return false;
        // A piece longer than the saw's longest rip must need no rip: it is as wide as the sheet.
        return rules.LongestRip is not { } rip || x <= rip || y + rules.Kerf == sheet.SizeY;
    }
}

using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Planning;
using Casewright.Model.Collections;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>
/// Cuts every piece from a sheet or board of its own and takes options by chance, so that tests see options of every kind and not
/// only the cheapest.
/// </summary>
internal sealed class OneByOneSolver(int seed) : ICutSolver
{
    private readonly Random _random = new(seed);

    public CuttingOutcome Solve(CuttingProblem problem, ICuttingProgress? progress, CancellationToken cancellation)
    {
        var choices = Choose(problem.Demands);
        var left = problem.Sheets.Select(s => s.Available ?? int.MaxValue).ToArray();
        var sheets = new List<SheetCut>();
        foreach (var (choice, index, piece) in Pieces(problem.Demands, choices))
        {
            var type = Enumerable.Range(0, left.Length).FirstOrDefault(s => left[s] > 0 && (Fits(problem, s, piece, false) || Fits(problem, s, piece, true)), -1);
            if (type < 0)
                return new(null, [new(ObstacleKind.StockRunsOut, problem.Demands[choice.Demand].Id, "no sheet left")]);
            left[type]--;
            sheets.Add(Cut(problem, type, choice, index, piece, !Fits(problem, type, piece, false)));
        }

        var cost = sheets.Sum(s => problem.Sheets[s.SheetType].Cost) + Labour(problem.Demands, choices);
        return new(new([.. sheets], choices, cost, 0, sheets.Count, 0, cost == 0, 1), []);
    }

    public BoardOutcome Solve(BoardProblem problem, ICuttingProgress? progress, CancellationToken cancellation)
    {
        var choices = Choose(problem.Demands);
        var left = problem.Boards.Select(b => b.Available ?? int.MaxValue).ToArray();
        var boards = new List<BoardCut>();
        foreach (var (choice, index, piece) in Pieces(problem.Demands, choices))
        {
            var type = Enumerable.Range(0, left.Length).FirstOrDefault(b => left[b] > 0 && piece.Length <= problem.Boards[b].Length - (2 * problem.EndTrim), -1);
            if (type < 0)
                return new(null, [new(ObstacleKind.StockRunsOut, problem.Demands[choice.Demand].Id, "no board left")]);
            left[type]--;
            boards.Add(new(type, [new(choice.Demand, choice.Copy, choice.Option, index, problem.EndTrim, piece.Length)], 0));
        }

        var cost = boards.Sum(b => problem.Boards[b.BoardType].Cost) + Labour(problem.Demands, choices);
        return new(new([.. boards], choices, cost, 0, boards.Count, 0, cost == 0, 1), []);
    }

    private static decimal Labour(ValueList<CuttingDemand> demands, ValueList<CopyChoice> choices) =>
        choices.Sum(c => demands[c.Demand].Options[c.Option].ExtraCost);

    private static IEnumerable<(CopyChoice Choice, int Index, CuttingPiece Piece)> Pieces(ValueList<CuttingDemand> demands, ValueList<CopyChoice> choices) =>
        from choice in choices
        from piece in demands[choice.Demand].Options[choice.Option].Pieces.Index()
        select (choice, piece.Index, piece.Item);

    /// <summary>Any option, but one common line in each group.</summary>
    private ValueList<CopyChoice> Choose(ValueList<CuttingDemand> demands)
    {
        var lines = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var group in demands.Where(d => d.SightLineGroup is not null).GroupBy(d => d.SightLineGroup!, StringComparer.Ordinal))
        {
            var bound = group.Where(d => d.Options.All(o => o.SightLine is not null)).ToArray();
            var common = (bound.Length > 0 ? bound : [.. group]).Select(d => d.Options.Select(o => o.SightLine).OfType<long>()).Aggregate((a, b) => a.Intersect(b)).Distinct().ToArray();
            if (common.Length > 0)
                lines.Add(group.Key, common[_random.Next(common.Length)]);
        }

        return
        [
            .. from demand in demands.Index()
               from copy in Enumerable.Range(0, demand.Item.Count)
               let open = demand.Item.Options.Index().Where(o =>
                   o.Item.SightLine is not { } line || demand.Item.SightLineGroup is not { } name || (lines.TryGetValue(name, out var kept) && kept == line)).ToArray()
               select new CopyChoice(demand.Index, copy, open[_random.Next(open.Length)].Index),
        ];
    }

    private static bool Fits(CuttingProblem problem, int sheet, CuttingPiece piece, bool turned)
    {
        var (x, y) = turned ? (piece.Width, piece.Length) : (piece.Length, piece.Width);
        var trim = 2 * problem.Rules.EdgeTrim;
        return (!turned || piece.MayTurn) && x <= problem.Sheets[sheet].Length - trim && y <= problem.Sheets[sheet].Width - trim;
    }

    /// <summary>The piece in the corner: edge trims, then a rip and a crosscut, or the other way about where crosscuts go first.</summary>
    private static SheetCut Cut(CuttingProblem problem, int type, CopyChoice choice, int index, CuttingPiece piece, bool turned)
    {
        var (sheet, trim) = (problem.Sheets[type], problem.Rules.EdgeTrim);
        var (right, top) = (sheet.Length - trim, sheet.Width - trim);
        var placed = new PlacedPiece(choice.Demand, choice.Copy, choice.Option, index, trim, trim, piece.Length, piece.Width, turned);
        var (endX, endY) = (trim + placed.SizeX, trim + placed.SizeY);
        var cuts = new List<SawCut>();
        if (trim > 0)
        {
            Rip(0, trim, 0, sheet.Length, trim);
            Rip(0, top, 0, sheet.Length, top - trim);
            Cross(0, trim, trim, top, trim);
            Cross(0, right, trim, top, right - trim);
        }

        var across = problem.Rules.FirstCut == FirstCut.Across;
        if (!across && endY < top)
            Rip(1, endY, trim, right, placed.SizeY);
        if (endX < right)
            Cross(across ? 1 : 2, endX, trim, across ? top : endY, placed.SizeX);
        if (across && endY < top)
            Rip(2, endY, trim, endX, placed.SizeY);
        return new(type, new(RegionKind.Piece, trim, trim, placed.SizeX, placed.SizeY, [], 0), [.. cuts], [placed], [.. Rests()]);

        void Rip(int stage, long y, long x0, long x1, long setting) => cuts.Add(new(cuts.Count + 1, stage, SawCutKind.Rip, x0, y, x1, y, setting));

        void Cross(int stage, long x, long y0, long y1, long setting) => cuts.Add(new(cuts.Count + 1, stage, SawCutKind.Crosscut, x, y0, x, y1, setting));

        IEnumerable<Offcut> Rests()
        {
            var (restX, restY) = (right - endX - problem.Rules.Kerf, top - endY - problem.Rules.Kerf);
            if (restX > 0)
                yield return new(endX + problem.Rules.Kerf, trim, restX, across ? top - trim : placed.SizeY);
            if (restY > 0)
                yield return new(trim, endY + problem.Rules.Kerf, across ? placed.SizeX : right - trim, restY);
        }
    }
}

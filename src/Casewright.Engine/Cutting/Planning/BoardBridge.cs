using System.Globalization;
using Casewright.Engine.Cutting.Sawn;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Stock;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>Between the boards of a job and the cutting engine.</summary>
internal sealed class BoardBridge
{
    private readonly SawRules _saw;
    private readonly Material _material;
    private readonly ValueList<PartDemand> _demands;
    private readonly ValueList<StockLine<BoardStock>> _stock;

    public BoardBridge(Job job, MaterialDemands demands, SawnMaterial sawn)
    {
        _saw = job.Shop.Saw;
        _material = demands.Material;
        _demands = demands.Demands;
        _stock =
        [
            .. job.Stock.Boards.Where(b => b.Material == _material.Id && b.Length > _saw.BoardEndTrim * 2).Select(sawn.Left).SelectMany(Lines),
            .. sawn.Leftovers.Where(l => l.Length > _saw.BoardEndTrim * 2).GroupBy(l => (l.Stock, l.Length)).Select(Line),
        ];
    }

    /// <summary>The problem for the engine.</summary>
    public BoardProblem Problem(long work) => new(
        [.. _stock.Select(Board)],
        CopyBook.ForEngine(_demands, (_, piece) => new CuttingPiece(piece.Length.Nanometres, piece.Width.Nanometres, MayTurn: false)),
        _saw.Kerf.Nanometres,
        _saw.BoardEndTrim.Nanometres,
        work);

    /// <summary>The engine's answer in the words of the job.</summary>
    /// <param name="solution">The answer.</param>
    /// <param name="number">Number of the first board's id.</param>
    public MaterialCut Read(BoardSolution solution, int number)
    {
        var copies = new CopyBook(_demands, solution.Choices);
        var boards = new List<BoardLayout>();
        var pieces = new List<Piece>();
        var taken = new Dictionary<int, int>();
        foreach (var cut in AlikeTogether(solution.Boards))
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"B{number + boards.Count}");
            var turn = taken[cut.BoardType] = taken.GetValueOrDefault(cut.BoardType, -1) + 1;
            boards.Add(Layout(id, cut) with { LeftOver = _stock[cut.BoardType].Leftovers.ElementAtOrDefault(turn) });
            pieces.AddRange(cut.Pieces.Select(p => copies.Piece(
                p.Demand, p.Copy, p.Piece, id, fromBoard: true, Length.FromNanometres(p.X), Length.Zero, rotated: false)));
        }

        var bounds = new CutBounds
        {
            Cost = solution.Cost,
            LowerBound = solution.LowerBound,
            Sheets = solution.BoardsUsed,
            SheetsLowerBound = solution.BoardsLowerBound,
            Proven = solution.Cost == solution.LowerBound,
        };
        return new(copies.Parts, pieces.ToValueList(), [], boards.ToValueList(), new MaterialBounds(_material.Id, bounds));
    }

    private static IEnumerable<StockLine<BoardStock>> Lines(BoardStock stock)
    {
        if (stock.OnHand > 0)
            yield return new(stock, false, 0);
        if (stock.Limit is null or > 0)
            yield return new(stock, true, stock.Price);
    }

    /// <summary>Lengths alike that sawn boards left over; they are trimmed at both ends again, for one of them is a raw end or a piece's.</summary>
    private StockLine<BoardStock> Line(IGrouping<(string Stock, Length Length), Leftover> alike) =>
        new(new BoardStock { Id = alike.Key.Stock, Material = _material.Id, Length = alike.Key.Length, Price = 0, OnHand = alike.Count(), Limit = 0 }, false, 0)
        {
            Leftovers = [.. alike.Select(l => l.Place)],
        };

    private static BoardType Board(StockLine<BoardStock> line) => new(
        line.Leftovers.Count > 0 ? $"{line.Stock.Id} left over by {line.Leftovers[0].Id}" : line.Bought ? line.Stock.Id : line.Stock.Id + " on hand",
        line.Stock.Length.Nanometres,
        line.Price,
        line.Bought ? line.Stock.Limit : line.Stock.OnHand,
        []);

    private BoardLayout Layout(string id, BoardCut cut)
    {
        var line = _stock[cut.BoardType];
        var ends = cut.Pieces.Select(p => Length.FromNanometres(p.X + p.Length)).Order().ToArray();
        var trim = _saw.BoardEndTrim;
        return new BoardLayout
        {
            Id = id,
            Stock = line.Stock.Id,
            Material = _material.Id,
            Length = line.Stock.Length,
            Trim = trim,
            Kerf = _saw.Kerf,
            Cost = line.Price,
            Bought = line.Bought,
            Cuts = [.. trim > Length.Zero ? [trim - _saw.Kerf] : Array.Empty<Length>(), .. ends.Where(e => e < line.Stock.Length)],
            Left = Length.Max(Length.Zero, line.Stock.Length - trim - ends[^1] - _saw.Kerf),
        };
    }

    private static IEnumerable<BoardCut> AlikeTogether(ValueList<BoardCut> boards) =>
        boards.GroupBy(b => (b.BoardType, Places: b.Pieces.Select(p => (p.X, p.Length)).ToValueList())).SelectMany(g => g);
}

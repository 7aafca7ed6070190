using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Splicing.Options;

/// <summary>What the stock of one material holds: how long a piece of a given width can be.</summary>
public sealed class StockFit
{
    private readonly List<Usable> _stock = [];
    private readonly bool _board;

    /// <summary>The stock of a material that can still be had: on hand, or bought within its limit.</summary>
    public StockFit(Job job, Material material)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(material);
        Material = material;
        _board = material.IsBoard;
        if (_board)
            AddBoards(job);
        else
            AddSheets(job);
    }

    /// <summary>The material.</summary>
    public Material Material { get; }

    /// <summary>Whether there is any stock.</summary>
    public bool Any => _stock.Count > 0;

    /// <summary>Whether a part of this grain may lie either way on its sheet.</summary>
    public bool MayTurn(Grain grain) => !_board && (!Material.HasGrain || grain == Grain.None);

    /// <summary>The different lengths that a part's piece of this width can have at most, longest first; empty when it is too wide.</summary>
    public ValueList<Length> LongestPieces(Length width, Grain grain) => Longest(_stock, width, grain);

    /// <summary>
    /// The same for the usual stock alone: the cheapest for its size that can be had without limit, or failing such the cheapest.
    /// A part that fits it is not spliced.
    /// </summary>
    public ValueList<Length> LongestUsualPieces(Length width, Grain grain) => Longest(UsualStock, width, grain);

    /// <summary>The greatest width that a piece of this length can have; null when it is too long.</summary>
    public Length? WidestPiece(Length length, Grain grain)
    {
        Length? widest = null;
        foreach (var (along, across) in _stock.SelectMany(s => Ways(s, grain)))
        {
            if (length <= along && (widest is null || across > widest))
                widest = across;
        }

        return widest;
    }

    private IEnumerable<Usable> UsualStock
    {
        get
        {
            var open = _stock.Where(s => s.Unlimited).ToArray();
            var choice = (open.Length > 0 ? open : [.. _stock]).OrderBy(s => s.PricePerSize).ThenByDescending(s => s.Along).ToArray();
            return choice.Take(1);
        }
    }

    private ValueList<Length> Longest(IEnumerable<Usable> stock, Length width, Grain grain) =>
    [
        .. stock.SelectMany(s => Ways(s, grain)).Where(way => width <= way.Across).Select(way => way.Along).Distinct().OrderDescending(),
    ];

    /// <summary>The ways a part's length and width can lie on the stock: usable size along its length and along its width.</summary>
    private IEnumerable<(Length Along, Length Across)> Ways(Usable stock, Grain grain)
    {
        if (_board)
        {
            yield return (stock.Along, stock.Across);
            yield break;
        }

        var turn = MayTurn(grain);
        if (turn || grain != Grain.AlongWidth)
            yield return (stock.Along, stock.Across);
        if (turn || grain == Grain.AlongWidth)
            yield return (stock.Across, stock.Along);
    }

    private void AddSheets(Job job)
    {
        foreach (var sheet in job.Stock.Sheets.Where(s => s.Material == Material.Id && (s.OnHand > 0 || s.Limit is null or > 0)))
        {
            var trim = sheet.IsOffcut ? Length.Zero : job.Shop.Saw.EdgeTrim * 2;
            var turned = Material.HasGrain && sheet.GrainAcross;
            var along = (turned ? sheet.Width : sheet.Length) - trim;
            var across = (turned ? sheet.Length : sheet.Width) - trim;
            if (along > Length.Zero && across > Length.Zero)
                _stock.Add(new Usable(along, across, sheet.Price / (along.Millimetres * across.Millimetres), sheet.Limit is null));
        }
    }

    private void AddBoards(Job job)
    {
        foreach (var board in job.Stock.Boards.Where(b => b.Material == Material.Id && (b.OnHand > 0 || b.Limit is null or > 0)))
        {
            var along = board.Length - (job.Shop.Saw.BoardEndTrim * 2);
            if (along > Length.Zero)
                _stock.Add(new Usable(along, Length.FromNanometres(long.MaxValue), board.Price / along.Millimetres, board.Limit is null));
        }
    }

    private sealed record Usable(Length Along, Length Across, decimal PricePerSize, bool Unlimited);
}

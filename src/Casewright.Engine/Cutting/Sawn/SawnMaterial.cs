using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Stock;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>One material of a job whose saw is already at work: what is kept, what is left to cut, and what there is to cut it from.</summary>
internal sealed class SawnMaterial
{
    private readonly SawRules _saw;
    private readonly MaterialDemands _demands;
    private readonly ValueList<SawnSheet> _sheets;
    private readonly ValueList<SawnBoard> _boards;
    private readonly KeptPieces _kept;

    public SawnMaterial(Job job, MaterialDemands demands)
    {
        _saw = job.Shop.Saw;
        _demands = demands;
        var id = demands.Material.Id;
        _sheets = [.. (job.Sawn?.Sheets ?? []).Where(s => s.Material == id)];
        _boards = [.. (job.Sawn?.Boards ?? []).Where(b => b.Material == id)];
        Pieces =
        [
            .. _sheets.SelectMany(s => s.Pieces.Select(p => new SawnAt(s.Id, FromBoard: false, p))),
            .. _boards.SelectMany(b => b.Pieces.Select(p => new SawnAt(b.Id, FromBoard: true, p))),
        ];
        _kept = KeptPieces.Of(demands, Pieces);
        Leftovers = [.. _sheets.SelectMany(Of), .. _boards.SelectMany(Of)];
    }

    /// <summary>Everything sawn of the material, lost pieces among it.</summary>
    public ValueList<SawnAt> Pieces { get; }

    /// <summary>Stock that the sawn sheets and boards left over.</summary>
    public ValueList<Leftover> Leftovers { get; }

    /// <summary>What is still to be cut.</summary>
    public MaterialDemands Rest => _demands with { Demands = _kept.Rest };

    /// <summary>Good pieces that no part wants any more.</summary>
    public IEnumerable<SawnAt> Spare
    {
        get
        {
            var kept = _kept.Pieces.Select(p => (p.Stock, p.FromBoard, p.X, p.Y)).ToHashSet();
            return Pieces.Where(s => !s.Piece.Lost && !kept.Contains((s.Stock, s.FromBoard, s.Piece.X, s.Piece.Y)));
        }
    }

    /// <summary>A sheet stock without those that are sawn.</summary>
    public SheetStock Left(SheetStock stock)
    {
        var (taken, bought) = Count(_sheets.Where(s => s.Stock == stock.Id && s.LeftOver is null).Select(s => s.Bought));
        return stock with { OnHand = Math.Max(0, stock.OnHand - taken), Limit = stock.Limit is { } limit ? Math.Max(0, limit - bought) : null };
    }

    /// <summary>A board stock without those that are sawn.</summary>
    public BoardStock Left(BoardStock stock)
    {
        var (taken, bought) = Count(_boards.Where(b => b.Stock == stock.Id && b.LeftOver is null).Select(b => b.Bought));
        return stock with { OnHand = Math.Max(0, stock.OnHand - taken), Limit = stock.Limit is { } limit ? Math.Max(0, limit - bought) : null };
    }

    /// <summary>What is sawn and what was planned for the rest, together.</summary>
    /// <param name="rest">The plan for the rest; null when nothing is left to cut.</param>
    public MaterialCut Joined(MaterialCut? rest)
    {
        if (rest is not null && Pieces.Count == 0 && _sheets.Count == 0 && _boards.Count == 0)
            return rest;
        var used = (rest?.Sheets.Select(s => s.LeftOver) ?? []).Concat(rest?.Boards.Select(b => b.LeftOver) ?? []).OfType<LeftoverPlace>().ToHashSet();
        var unused = Leftovers.Where(l => !used.Contains(l.Place)).ToLookup(l => l.Place.Id, StringComparer.Ordinal);
        var sunk = _sheets.Sum(s => s.Cost) + _boards.Sum(b => b.Cost) + _kept.Whole.Sum(w => w.Option.Labour);
        var count = _sheets.Count + _boards.Count;
        var bounds = rest?.Bounds.Bounds;
        var (cost, lower) = (sunk + (bounds?.Cost ?? 0), sunk + (bounds?.LowerBound ?? 0));
        return new MaterialCut(
            [.. _kept.Whole, .. rest?.Parts ?? []],
            [.. _kept.Pieces, .. rest?.Pieces ?? []],
            [.. _sheets.Select(s => SawnLayouts.Of(s, [.. unused[s.Id].Select(l => l.AsOffcut)])), .. rest?.Sheets ?? []],
            [.. _boards.Select(b => SawnLayouts.Of(b, unused[b.Id].Select(l => l.Length).DefaultIfEmpty(Length.Zero).Max())), .. rest?.Boards ?? []],
            new MaterialBounds(_demands.Material.Id, new CutBounds
            {
                Cost = cost,
                LowerBound = lower,
                Sheets = count + (bounds?.Sheets ?? 0),
                SheetsLowerBound = count + (bounds?.SheetsLowerBound ?? 0),
                Proven = cost == lower,
            }));
    }

    private static (int Taken, int Bought) Count(IEnumerable<bool> sawn)
    {
        var uses = sawn.ToList();
        return (uses.Count(bought => !bought), uses.Count(bought => bought));
    }

    private IEnumerable<Leftover> Of(SawnSheet sheet) =>
        Free(sheet.Id, SawnPanels.Of(sheet), [.. sheet.Pieces.Where(p => p.Lost).Select(p => SawnPanel.Of(p))], [.. _sheets.Select(s => s.LeftOver)], fromBoard: false)
            .Where(panel => panel.SizeX >= _saw.KeepLength && panel.SizeY >= _saw.KeepWidth)
            .OrderByDescending(panel => (Int128)panel.SizeX.Nanometres * panel.SizeY.Nanometres)
            .Select(panel => new Leftover(new(sheet.Id, panel.X0, panel.Y0), sheet.Stock, panel.SizeX, panel.SizeY));

    private IEnumerable<Leftover> Of(SawnBoard board) =>
        Free(board.Id, SawnPanels.Of(board), [.. board.Pieces.Where(p => p.Lost).Select(p => SawnPanel.Of(p, Length.Zero))], [.. _boards.Select(b => b.LeftOver)], fromBoard: true)
            .Where(panel => panel.SizeX >= _saw.KeepLength)
            .Select(panel => new Leftover(new(board.Id, panel.X0, Length.Zero), board.Stock, panel.SizeX, Length.Zero));

    /// <summary>Panels that are neither a piece kept, nor one lost, nor cut up further.</summary>
    private IEnumerable<SawnPanel> Free(string id, IEnumerable<SawnPanel> panels, HashSet<SawnPanel> lost, List<LeftoverPlace?> cutUp, bool fromBoard)
    {
        var kept = _kept.Pieces.Where(p => p.Stock == id && p.FromBoard == fromBoard).Select(p => (p.X, p.Y)).ToHashSet();
        return panels.Where(panel => !lost.Contains(panel) && !kept.Contains((panel.X0, panel.Y0)) && !cutUp.Contains(new(id, panel.X0, panel.Y0)));
    }
}

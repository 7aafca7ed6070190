using System.Globalization;
using Casewright.Engine.Cutting.Sawn;
using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Stock;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>Between the sheets of a job and the cutting engine: x of every layout runs along the grain of its material.</summary>
internal sealed class SheetBridge
{
    private readonly SawRules _saw;
    private readonly Material _material;
    private readonly ValueList<PartDemand> _demands;
    private readonly ValueList<StockLine<SheetStock>> _stock;

    public SheetBridge(Job job, MaterialDemands demands, SawnMaterial sawn)
    {
        _saw = job.Shop.Saw;
        _material = demands.Material;
        _demands = demands.Demands;
        _stock =
        [
            .. job.Stock.Sheets.Where(s => s.Material == _material.Id).Select(sawn.Left).SelectMany(Lines).Where(l => Fits(l.Stock)),
            .. sawn.Leftovers.GroupBy(l => (l.Stock, l.Length, l.Width)).Select(Line),
        ];
    }

    /// <summary>The problem for the engine.</summary>
    public CuttingProblem Problem(long work) => new(
        [.. _stock.Select(Sheet)],
        CopyBook.ForEngine(_demands, Rectangle),
        new CuttingRules(
            _saw.Kerf.Nanometres,
            _saw.EdgeTrim.Nanometres,
            _saw.Stages,
            _saw.FirstCut switch { Model.Shop.FirstCut.Rip => FirstCut.Along, Model.Shop.FirstCut.Crosscut => FirstCut.Across, _ => FirstCut.Either },
            _saw.NarrowestStrip?.Nanometres,
            _saw.LongestRip?.Nanometres),
        work);

    /// <summary>The engine's answer in the words of the job.</summary>
    /// <param name="solution">The answer.</param>
    /// <param name="number">Number of the first sheet's id.</param>
    public MaterialCut Read(CuttingSolution solution, int number)
    {
        var copies = new CopyBook(_demands, solution.Choices);
        var sheets = new List<SheetLayout>();
        var pieces = new List<Piece>();
        var taken = new Dictionary<int, int>();
        foreach (var cut in AlikeTogether(solution.Sheets))
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"S{number + sheets.Count}");
            var turn = taken[cut.SheetType] = taken.GetValueOrDefault(cut.SheetType, -1) + 1;
            sheets.Add(Layout(id, cut) with { LeftOver = _stock[cut.SheetType].Leftovers.ElementAtOrDefault(turn) });
            pieces.AddRange(cut.Pieces.Select(p => Piece(copies, id, cut, p)));
        }

        var bounds = new CutBounds
        {
            Cost = solution.Cost,
            LowerBound = solution.LowerBound,
            Sheets = solution.SheetsUsed,
            SheetsLowerBound = solution.SheetsLowerBound,
            Proven = solution.Cost == solution.LowerBound,
        };
        return new(copies.Parts, pieces.ToValueList(), sheets.ToValueList(), [], new MaterialBounds(_material.Id, bounds));
    }

    private static IEnumerable<StockLine<SheetStock>> Lines(SheetStock stock)
    {
        if (stock.OnHand > 0)
            yield return new(stock, false, 0);
        if (stock.Limit is null or > 0)
            yield return new(stock, true, stock.Price);
    }

    /// <summary>Panels of one size that sawn sheets left over: their edges are clean, and x runs along the grain already.</summary>
    private StockLine<SheetStock> Line(IGrouping<(string Stock, Length Length, Length Width), Leftover> alike)
    {
        var stock = new SheetStock
        {
            Id = alike.Key.Stock,
            Material = _material.Id,
            Length = alike.Key.Length,
            Width = alike.Key.Width,
            Price = 0,
            OnHand = alike.Count(),
            Limit = 0,
            IsOffcut = true,
        };
        return new(stock, false, 0) { Leftovers = [.. alike.Select(l => l.Place)] };
    }

    /// <summary>Whether anything is left of a sheet after trimming.</summary>
    private bool Fits(SheetStock stock) =>
        Length.Min(stock.Length, stock.Width) > (stock.IsOffcut ? Length.Zero : _saw.EdgeTrim * 2);

    private SheetType Sheet(StockLine<SheetStock> line)
    {
        var (along, across) = Size(line.Stock);
        var trimmed = Virtual(line.Stock) * 2;
        return new SheetType(
            line.Leftovers.Count > 0 ? $"{line.Stock.Id} left over by {line.Leftovers[0].Id}" : line.Bought ? line.Stock.Id : line.Stock.Id + " on hand",
            (along + trimmed).Nanometres,
            (across + trimmed).Nanometres,
            line.Price,
            line.Bought ? line.Stock.Limit : line.Stock.OnHand,
            line.Stock.IsOffcut ? 0 : line.Bought ? 2 : 1);
    }

    private (Length Along, Length Across) Size(SheetStock stock) =>
        _material.HasGrain && stock.GrainAcross ? (stock.Width, stock.Length) : (stock.Length, stock.Width);

    /// <summary>Trim that the engine takes off an offcut, whose edges are clean: it is shown so much larger.</summary>
    private Length Virtual(SheetStock stock) => stock.IsOffcut ? _saw.EdgeTrim : Length.Zero;

    private CuttingPiece Rectangle(PartDemand demand, PieceCut piece)
    {
        var mayTurn = MayTurn(demand);
        return LiesAcross(demand)
            ? new(piece.Width.Nanometres, piece.Length.Nanometres, mayTurn)
            : new(piece.Length.Nanometres, piece.Width.Nanometres, mayTurn);
    }

    private bool MayTurn(PartDemand demand) => !_material.HasGrain || demand.Parts[0].Grain == Grain.None;

    /// <summary>Whether the part's length has to lie across the sheet, so that its grain runs along the sheet's.</summary>
    private bool LiesAcross(PartDemand demand) => _material.HasGrain && demand.Parts[0].Grain == Grain.AlongWidth;

    private Piece Piece(CopyBook copies, string sheet, SheetCut cut, PlacedPiece placed)
    {
        var shift = Virtual(_stock[cut.SheetType].Stock);
        return copies.Piece(
            placed.Demand, placed.Copy, placed.Piece, sheet, fromBoard: false,
            Length.FromNanometres(placed.X) - shift, Length.FromNanometres(placed.Y) - shift,
            placed.Turned != LiesAcross(copies.Demand(placed.Demand)));
    }

    private SheetLayout Layout(string id, SheetCut cut)
    {
        var line = _stock[cut.SheetType];
        var shift = Virtual(line.Stock);
        var (along, across) = Size(line.Stock);
        return new SheetLayout
        {
            Id = id,
            Stock = line.Stock.Id,
            Material = _material.Id,
            Length = along,
            Width = across,
            Trim = line.Stock.IsOffcut ? Length.Zero : _saw.EdgeTrim,
            Kerf = _saw.Kerf,
            Cost = line.Price,
            Bought = line.Bought,
            Cuts = [.. cut.Cuts.Where(c => c.Stage > 0 || shift == Length.Zero).Index().Select(c => Cut(c.Item, c.Index + 1, shift))],
            Offcuts = [.. cut.Offcuts.Where(WorthKeeping).Select(o => Offcut(o, shift))],
        };
    }

    /// <summary>Every line of the plan runs at the low side of its kerf; the engine's trims of the first edges run at the high side.</summary>
    private Cut Cut(SawCut cut, int order, Length shift)
    {
        var rip = cut.Kind == SawCutKind.Rip;
        var firstEdge = cut.Stage == 0 && (rip ? cut.Y0 : cut.X0) == _saw.EdgeTrim.Nanometres;
        var back = firstEdge ? _saw.Kerf : Length.Zero;
        var (backX, backY) = rip ? (Length.Zero, back) : (back, Length.Zero);
        return new Cut(
            order,
            rip ? CutKind.Rip : CutKind.Crosscut,
            cut.Stage,
            Length.FromNanometres(cut.X0) - shift - backX,
            Length.FromNanometres(cut.Y0) - shift - backY,
            Length.FromNanometres(cut.X1) - shift - backX,
            Length.FromNanometres(cut.Y1) - shift - backY,
            Length.FromNanometres(cut.Setting));
    }

    private bool WorthKeeping(Offcut offcut) =>
        Length.FromNanometres(offcut.Length) >= _saw.KeepLength && Length.FromNanometres(offcut.Width) >= _saw.KeepWidth;

    private static KeptOffcut Offcut(Offcut offcut, Length shift) => new(
        Length.FromNanometres(offcut.X) - shift,
        Length.FromNanometres(offcut.Y) - shift,
        Length.FromNanometres(offcut.Length),
        Length.FromNanometres(offcut.Width));

    /// <summary>Sheets of one layout follow each other, in the order in which the first of each comes.</summary>
    private static IEnumerable<SheetCut> AlikeTogether(ValueList<SheetCut> sheets) =>
        sheets.GroupBy(s => (s.SheetType, s.Cuts, Places: s.Pieces.Select(p => (p.X, p.Y, p.SizeX, p.SizeY)).ToValueList())).SelectMany(g => g);
}

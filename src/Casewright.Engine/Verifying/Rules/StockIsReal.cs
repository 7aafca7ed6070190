using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Stock;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Every sheet and board is one that the job has on hand or can buy, at its true size, trim, kerf and price. Those that are sawn
/// already, and those cut from what these left over, are held to the record of the saw by another rule.
/// </summary>
internal sealed class StockIsReal : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Plan.Sheets.Where(sheet => !sheet.Sawn && sheet.LeftOver is null).SelectMany(sheet => Sheet(evidence, sheet))
            .Concat(evidence.Plan.Boards.Where(board => !board.Sawn && board.LeftOver is null).SelectMany(board => Board(evidence, board)));

    private static IEnumerable<Problem> Sheet(Evidence evidence, SheetLayout sheet)
    {
        var place = $"sheets[{sheet.Id}]";
        var stock = evidence.Job.Stock.Sheets.FirstOrDefault(candidate => candidate.Id == sheet.Stock);
        if (stock is null)
            return [new Problem($"{place}.stock", "The job has no such sheet.", sheet.Stock, "the id of a sheet of the job")];

        var saw = evidence.Job.Shop.Saw;
        return Same($"{place}.material", "The sheet is of another material.", sheet.Material, stock.Material)
            .Concat(Size(place, sheet, stock, evidence.Material(stock.Material)))
            .Concat(Same($"{place}.trim", "The edge trim is not the shop's (an offcut's clean edges take none).", sheet.Trim, stock.IsOffcut ? Length.Zero : saw.EdgeTrim))
            .Concat(Same($"{place}.kerf", "The kerf is not the saw's.", sheet.Kerf, saw.Kerf))
            .Concat(Price(place, sheet.Cost, sheet.Bought, stock.Price))
            .Concat(evidence.PiecesOn(sheet).Any() ? [] : [new Problem(place, "Nothing is cut from this sheet.", "no piece", "at least one")]);
    }

    /// <summary>The layout's x runs along the grain; a sheet whose face has none may be stated either way round.</summary>
    private static IEnumerable<Problem> Size(string place, SheetLayout sheet, SheetStock stock, Material? material)
    {
        var (along, across) = stock.GrainAcross ? (stock.Width, stock.Length) : (stock.Length, stock.Width);
        var fits = sheet.Length == along && sheet.Width == across;
        if (stock.GrainAcross && material is { HasGrain: false })
            fits |= sheet.Length == across && sheet.Width == along;
        return fits ? [] : [new Problem(place, "The sheet has another size.", $"{sheet.Length} × {sheet.Width}", $"{along} along the grain × {across}")];
    }

    private static IEnumerable<Problem> Board(Evidence evidence, BoardLayout board)
    {
        var place = $"boards[{board.Id}]";
        var stock = evidence.Job.Stock.Boards.FirstOrDefault(candidate => candidate.Id == board.Stock);
        if (stock is null)
            return [new Problem($"{place}.stock", "The job has no such board.", board.Stock, "the id of a board of the job")];

        var saw = evidence.Job.Shop.Saw;
        return Same($"{place}.material", "The board is of another material.", board.Material, stock.Material)
            .Concat(Same($"{place}.length", "The board has another length.", board.Length, stock.Length))
            .Concat(Same($"{place}.trim", "The end trim is not the shop's.", board.Trim, saw.BoardEndTrim))
            .Concat(Same($"{place}.kerf", "The kerf is not the saw's.", board.Kerf, saw.Kerf))
            .Concat(Price(place, board.Cost, board.Bought, stock.Price))
            .Concat(evidence.PiecesOn(board).Any() ? [] : [new Problem(place, "Nothing is cut from this board.", "no piece", "at least one")]);
    }

    private static IEnumerable<Problem> Price(string place, decimal cost, bool bought, decimal price) =>
        Same($"{place}.cost", bought ? "The cost is not the price." : "Stock on hand costs nothing more.", cost, bought ? price : 0m);

    private static IEnumerable<Problem> Same<T>(string place, string message, T found, T wanted)
        where T : notnull =>
        found.Equals(wanted) ? [] : [new Problem(place, message, $"{found}", $"{wanted}")];
}

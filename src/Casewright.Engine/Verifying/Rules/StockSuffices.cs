using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>No more is taken than is on hand or can be bought, and nothing is bought while the like of it lies in the rack.</summary>
internal sealed class StockSuffices : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Job.Stock.Sheets
            .SelectMany(stock => Count(stock.Id, stock.OnHand, stock.Limit, evidence.Plan.Sheets.Where(sheet => sheet.Stock == stock.Id).Select(sheet => sheet.Bought)))
            .Concat(evidence.Job.Stock.Boards
                .SelectMany(stock => Count(stock.Id, stock.OnHand, stock.Limit, evidence.Plan.Boards.Where(board => board.Stock == stock.Id).Select(board => board.Bought))));

    private static IEnumerable<Problem> Count(string stock, int onHand, int? limit, IEnumerable<bool> bought)
    {
        var uses = bought.ToList();
        var buys = uses.Count(isBought => isBought);
        var taken = uses.Count - buys;
        var place = $"stock[{stock}]";
        if (taken > onHand)
            yield return new(place, "More are taken from the rack than lie there.", $"{taken}", $"at most {onHand}");
        if (buys > limit)
            yield return new(place, "More are bought than can be had.", $"{buys}", $"at most {limit}");
        if (buys > 0 && taken < onHand)
            yield return new(place, "Some are bought while others lie unused in the rack.", $"{taken} of {onHand} used", "all on hand used first");
    }
}

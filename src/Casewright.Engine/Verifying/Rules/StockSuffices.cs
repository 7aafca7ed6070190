using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>No more is taken than is on hand or can be bought, and nothing is bought while the like of it lies in the rack.</summary>
internal sealed class StockSuffices : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Job.Stock.Sheets
            .SelectMany(stock => Count(stock.Id, stock.OnHand, stock.Limit, Sheets(evidence, stock.Id)))
            .Concat(evidence.Job.Stock.Boards.SelectMany(stock => Count(stock.Id, stock.OnHand, stock.Limit, Boards(evidence, stock.Id))));

    private static List<(bool Bought, bool Sawn)> Sheets(Evidence evidence, string stock) =>
        [.. evidence.Plan.Sheets.Where(sheet => sheet.Stock == stock && sheet.LeftOver is null).Select(sheet => (sheet.Bought, sheet.Sawn))];

    private static List<(bool Bought, bool Sawn)> Boards(Evidence evidence, string stock) =>
        [.. evidence.Plan.Boards.Where(board => board.Stock == stock && board.LeftOver is null).Select(board => (board.Bought, board.Sawn))];

    /// <summary>What is sawn already is gone from the rack and from what can be bought; it may exceed what the job states today.</summary>
    private static IEnumerable<Problem> Count(string stock, int stated, int? most, List<(bool Bought, bool Sawn)> uses)
    {
        var onHand = Math.Max(0, stated - uses.Count(use => use is { Sawn: true, Bought: false }));
        int? limit = most is { } number ? Math.Max(0, number - uses.Count(use => use is { Sawn: true, Bought: true })) : null;
        var buys = uses.Count(use => use is { Sawn: false, Bought: true });
        var taken = uses.Count(use => use is { Sawn: false, Bought: false });
        var place = $"stock[{stock}]";
        if (taken > onHand)
            yield return new(place, "More are taken from the rack than lie there.", $"{taken}", $"at most {onHand}");
        if (buys > limit)
            yield return new(place, "More are bought than can be had.", $"{buys}", $"at most {limit}");
        if (buys > 0 && taken < onHand)
            yield return new(place, "Some are bought while others lie unused in the rack.", $"{taken} of {onHand} used", "all on hand used first");
    }
}

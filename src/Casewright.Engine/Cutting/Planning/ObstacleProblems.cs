using Casewright.Engine.Splicing.Options;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>Says in the words of the job why its stock cannot be cut, and what would mend it.</summary>
internal sealed class ObstacleProblems(Job job, MaterialDemands demands)
{
    /// <summary>The problem of an obstacle.</summary>
    public Problem Of(CuttingObstacle obstacle)
    {
        var (material, kind) = (demands.Material, demands.Material.IsBoard ? "boards" : "sheets");
        var who = Who(obstacle.Subject);
        return obstacle.Kind switch
        {
            ObstacleKind.TooNarrow => new Problem("shop.saw.narrowestStrip", $"{who} would need a strip narrower than the saw may rip.",
                job.Shop.Saw.NarrowestStrip?.ToString() ?? "", "a narrower strip, or a wider part"),
            ObstacleKind.NoCommonSightLine => new Problem("shop.splicing.oneSightLine", $"There is no joint height that serves all {who}.",
                "true", "false, or longer stock"),
            ObstacleKind.StockRunsOut => new Problem($"stock.{kind}", $"The {kind} of {material.Name} on hand, and those that can be bought, do not suffice for the {Count()} parts made of it.{Whole()}",
                Stock(), $"more on hand, a higher limit, or another size of {kind}"),
            ObstacleKind.NothingFound => new Problem($"stock.{kind}", $"No way was found to cut the {Count()} parts of {material.Name} from the {kind} on hand and those that can be bought; they may not suffice.{Whole()}",
                Stock(), "more on hand, a higher limit, or a search with more effort"),
            _ => new Problem($"stock.{kind}", $"{who} cannot be cut from any of the {kind} of {material.Name} under the rules of the saw.",
                Stock(), $"larger {kind}, or other rules in shop.saw"),
        };
    }

    private string Who(string subject) => demands.Demands.FirstOrDefault(d => d.Id == subject) is { } demand
        ? Splicing.Words.Alike(demand.Parts[0].Name, demand.Parts.Count)
        : subject;

    /// <summary>Parts that nothing but longer stock serves, and why.</summary>
    private string Whole() => string.Concat(demands.Demands.Where(d => d.WhyWhole is not null).Select(d =>
        $" {Splicing.Words.Alike(d.Parts[0].Name, d.Parts.Count)} can only be made whole, from longer {(demands.Material.IsBoard ? "boards" : "sheets")}: {d.WhyWhole}."));

    private int Count() => demands.Demands.Sum(d => d.Parts.Count);

    private string Stock() => string.Join("; ", demands.Material.IsBoard
        ? job.Stock.Boards.Where(b => b.Material == demands.Material.Id).Select(b => Amount(b.Id, b.OnHand, b.Limit))
        : job.Stock.Sheets.Where(s => s.Material == demands.Material.Id).Select(s => Amount(s.Id, s.OnHand, s.Limit)));

    private static string Amount(string id, int onHand, int? limit) =>
        $"{id}: {onHand} on hand, {(limit is { } most ? $"{most} to buy at most" : "any number to buy")}";
}

using Casewright.Engine.Schemes;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Pricing;
using Casewright.Model.Stock;

namespace Casewright.Engine.Nudges;

/// <summary>
/// Cases that end lower while the crown keeps its upper edge, so that nothing opens under the ceiling: by less lap where there is enough of it,
/// else by a higher crown, one on offer before one that has to be had.
/// </summary>
internal sealed class CrownNudges(Job job, NudgeSizes sizes)
{
    /// <summary>The cases of a run that much lower under a crown that reaches as high as before; null without a crown.</summary>
    public NudgeCandidate? Lower(Run run, Length by)
    {
        if (run.Head.Crown is not { } id || job.Stock.Material(id) is not { BoardWidth: { } width } crown)
            return null;
        var lap = run.Head.CrownLap;
        if (lap - by >= sizes.LeastLap)
            return Change(job, run, $"cases of {run.Name} end {Text(by)} lower behind the same crown, which laps {Text(lap - by)}", by, id, lap - by);
        var least = width + by + Length.Min(sizes.LeastLap, lap) - lap;
        return OnOffer(crown, least) is { BoardWidth: { } wider } other
            ? Change(job, run, $"{other.Name} as the crown of {run.Name}, so that the cases end {Text(by)} lower", by, other.Id, lap + wider - width - by)
            : Made(run, crown, least.CeilingTo(sizes.Step), by);
    }

    /// <summary>Whether the cases can come down behind the crown as it is.</summary>
    public bool LapSuffices(Run run, Length by) => run.Head.Crown is not null && run.Head.CrownLap - by >= sizes.LeastLap;

    private NudgeCandidate Made(Run run, Material crown, Length width, Length by)
    {
        var id = crown.Id + "-higher";
        var boards = job.Stock.Boards.Where(b => b.Material == crown.Id).Select(b => b with
        {
            Id = b.Id + "-higher",
            Material = id,
            OnHand = 0,
            Price = MoneyText.Round(b.Price * width.Nanometres / crown.BoardWidth!.Value.Nanometres, job.Currency),
        });
        var stock = job.Stock with
        {
            Materials = job.Stock.Materials.Add(crown with { Id = id, Name = $"{crown.Name}, {Text(width)} high", BoardWidth = width }),
            Boards = [.. job.Stock.Boards, .. boards],
        };
        var words = $"crown of {run.Name} {Text(width - crown.BoardWidth!.Value)} higher, so that the cases end {Text(by)} lower";
        return Change(job with { Stock = stock }, run, words, by, id, run.Head.CrownLap + width - crown.BoardWidth!.Value - by);
    }

    /// <summary>The least high crown on offer that is high enough; it is of the same wood and not so high that it were another look.</summary>
    private Material? OnOffer(Material crown, Length least) => job.Stock.Materials
        .Where(m => m.Id != crown.Id && m.Kind == crown.Kind && m.Thickness == crown.Thickness && m.BoardWidth >= least && m.BoardWidth <= least + sizes.MostHeight)
        .Where(m => job.Stock.Boards.Any(b => b.Material == m.Id && (b.OnHand > 0 || b.Limit is null or > 0)))
        .MinBy(m => (m.BoardWidth!.Value, m.Id));

    private static NudgeCandidate Change(Job job, Run run, string words, Length by, string crown, Length lap) =>
        NudgeCandidate.Of(job, run, words, Crowned(Heads.Lower(run, by), crown, lap));

    private static Run Crowned(Run run, string crown, Length lap) => run with { Head = run.Head with { Crown = crown, CrownLap = lap } };

    private string Text(Length length) => LengthText.Of(length, job.Units);
}

/// <summary>Heads of runs brought down.</summary>
internal static class Heads
{
    /// <summary>The run with its cases ending so much lower.</summary>
    public static Run Lower(Run run, Length by) => run with
    {
        Head = run.Head.Height is { } height ? run.Head with { Height = height - by } : run.Head with { Gap = (run.Head.Gap ?? Length.Zero) + by },
    };
}

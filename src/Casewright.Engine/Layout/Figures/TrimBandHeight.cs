using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// Where the trim band of a tier lies: as high as the longest sheet reaches from the foot of the backs, which is furthest out of sight; moved down to clear fixed
/// shelves, nailers and the height at which the uprights are to be joined, since backs and uprights are not joined on one line. One height for the whole tier.
/// </summary>
internal sealed class TrimBandHeight(RunFigures run, ProblemList problems)
{
    /// <summary>Whether the case's backs are taller than any sheet on offer is long.</summary>
    public static bool NeedsJoint(CaseFigures box) => Reach(box) is { } reach && BackPanels.Height(box) > reach;

    /// <summary>Middle of the band; null where no back of the tier needs a joint or there is no band.</summary>
    public Length? Find(IReadOnlyList<CaseFigures> tier)
    {
        var joined = tier.Where(NeedsJoint).ToArray();
        if (run.Band is not { } band || joined.Length == 0)
            return null;
        var shortest = run.Job.Shop.Splicing.ShortestPiece;
        var half = band.BoardWidth!.Value / 2;
        var top = joined.Min(b => Length.Min(Foot(b) + Reach(b)!.Value, Foot(b) + BackPanels.Height(b) - shortest));
        var low = joined.Max(b => Length.Max(Foot(b) + shortest, Foot(b) + BackPanels.Height(b) - Reach(b)!.Value));
        var obstacles = joined.SelectMany(Obstacles).Concat(Wish(half)).OrderByDescending(o => o.High).ToArray();
        var middle = top.FloorTo(run.Job.Shop.Splicing.PositionStep);
        foreach (var (lowEdge, highEdge) in obstacles)
        {
            if (middle - half < highEdge && middle + half > lowEdge)
                middle = (lowEdge - half).FloorTo(run.Job.Shop.Splicing.PositionStep);
        }

        if (middle >= low)
            return middle;
        problems.Add(run.Path + ".trimBand", "Fixed shelves and nailers leave no height for a band that covers the joint of the backs.", joined[0].Id, $"a clear stretch between {problems.Say(low)} and {problems.Say(top)}, or the joint on a fixed shelf and no band");
        return null;
    }

    /// <summary>Keeps the middle of the band, where the backs are joined, clear of the joints wished for the uprights.</summary>
    private IEnumerable<(Length Low, Length High)> Wish(Length half)
    {
        var clear = run.Job.Shop.Splicing.ClearOfDado;
        if (run.Run.Splices.Height is { } wish)
            yield return (wish - clear + half, wish + clear - half);
    }

    private static Length Foot(CaseFigures box) => BackSpan.Foot(box);

    private static Length? Reach(CaseFigures box)
    {
        if (box.Run.Back is not { } material)
            return null;
        var sheets = UsableSheets.Of(box.Run.Job, material);
        var panels = box.BackPanels;
        return panels.Select(p => sheets.Reach(BackSpan.Of(box, p.First, p.Last).Exact)).Min();
    }

    /// <summary>What stands in front of the backs, lower and upper edge.</summary>
    private static IEnumerable<(Length Low, Length High)> Obstacles(CaseFigures box)
    {
        yield return (box.LowUnder, box.YEnd);
        foreach (var shelf in box.Fixed)
            yield return (shelf.Upper - box.Run.T, shelf.Upper);
        if (box.Run.Nailer is null || box.Run.NailersBehind)
            yield break;
        foreach (var upper in Nailers.UpperEdges(box))
            yield return (upper - box.Run.Run.Nailers!.Height, upper);
    }
}

using Casewright.Engine.Cutting.Reduction;
using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>Hands every piece of the layouts to a copy of a demand and writes the whole answer.</summary>
internal static class SolutionWriter
{
    public static CuttingSolution Write(
        ReducedProblem problem, IReadOnlyList<(int Sheet, LayoutTree Layout)> sheets, int[][] optionCounts, long costBound, int sheetBound, bool proven, long work)
    {
        var choices = new List<CopyChoice>();
        var waiting = Wait(problem, optionCounts, choices);
        var cuts = sheets.Select(s => SheetWriter.Write(problem.Source, problem.Sheets[s.Sheet].Index, s.Layout, kind => waiting[kind].Dequeue())).ToValueList();
        if (Array.Exists(waiting, q => q.Count > 0))
            throw new InvalidOperationException("The layouts do not hold every piece.");
        var cost = sheets.Sum(s => problem.Sheets[s.Sheet].Cost) + problem.ExtraCostOf(optionCounts);
        return new CuttingSolution(
            cuts, choices.ToValueList(), problem.Prices.ToPrice(cost), problem.Prices.ToPrice(costBound), cuts.Count, sheetBound, proven, work);
    }

    /// <summary>Queues every piece of every copy by its kind; notes which option each copy takes.</summary>
    public static Queue<PieceCopy>[] Wait(ReducedProblem problem, int[][] optionCounts, List<CopyChoice> choices)
    {
        var waiting = Enumerable.Range(0, problem.Kinds.Length).Select(_ => new Queue<PieceCopy>()).ToArray();
        for (var d = 0; d < problem.Demands.Length; d++)
        {
            var demand = problem.Demands[d];
            var copy = 0;
            for (var o = 0; o < demand.Options.Length; o++)
            {
                var option = demand.Options[o];
                var source = problem.Source.Demands[demand.Index].Options[option.Index];
                for (var n = 0; n < optionCounts[d][o]; n++, copy++)
                {
                    choices.Add(new CopyChoice(demand.Index, copy, option.Index));
                    for (var p = 0; p < option.Kinds.Length; p++)
                        waiting[option.Kinds[p]].Enqueue(new PieceCopy(demand.Index, copy, option.Index, p, source.Pieces[p].Length, source.Pieces[p].Width));
                }
            }
        }

        return waiting;
    }
}

using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Takes random regions out of random bins.</summary>
internal sealed class Ruin(ReducedProblem problem, SearchRandom random)
{
    private readonly int[] _removed = new int[problem.Kinds.Length];

    /// <summary>Takes out about <paramref name="regions"/> regions; bins left empty go.</summary>
    public void Apply(SearchState state, int regions, double tighten, long stamp, List<Bin> replaced, List<Bin> made)
    {
        for (var r = 0; r < regions && state.Bins.Count > 0; r++)
        {
            var index = random.Next(state.Bins.Count);
            var bin = Recreate.Own(state, index, stamp, replaced, made);
            var node = random.Next(bin.NodeLimit);
            while (bin.Nodes[node].Kind == BinNode.Unused)
                node = node + 1 == bin.NodeLimit ? 0 : node + 1;
            bin.Remove(node, problem.Kinds, _removed);
            if (bin.IsEmpty)
                state.DropBin(index);
        }

        Settle(state, tighten, made);
    }

    /// <summary>Closes the gaps left by removals and puts what was removed outside.</summary>
    public void Settle(SearchState state, double tighten, List<Bin> made)
    {
        foreach (var bin in made)
        {
            if (random.Chance(tighten))
                bin.Tighten();
            bin.Refresh(state.Limits);
        }

        TakeOut(state);
    }

    /// <summary>Makes pieces of one kind disappear: from outside first, else from some bin.</summary>
    public void Withdraw(SearchState state, int kind, long stamp, List<Bin> replaced, List<Bin> made)
    {
        if (state.Outside[kind] == 0)
            TakeFromBin(state, kind, stamp, replaced, made);
        state.Outside[kind]--;
        state.OutsideArea -= problem.Kinds[kind].Area;
    }

    private void TakeFromBin(SearchState state, int kind, long stamp, List<Bin> replaced, List<Bin> made)
    {
        var start = random.Next(state.Bins.Count);
        for (var i = 0; i < state.Bins.Count; i++)
        {
            var index = (start + i) % state.Bins.Count;
            var nodes = state.Bins[index].Nodes;
            for (var n = 0; n < nodes.Length; n++)
            {
                if (nodes[n].Kind != kind)
                    continue;
                var bin = Recreate.Own(state, index, stamp, replaced, made);
                bin.Remove(n, problem.Kinds, _removed);
                if (bin.IsEmpty)
                    state.DropBin(index);
                TakeOut(state);
                return;
            }
        }

        throw new InvalidOperationException("A piece is neither in a bin nor outside.");
    }

    /// <summary>Takes out a whole bin.</summary>
    public void DropBin(SearchState state, int index)
    {
        var bin = state.Bins[index];
        bin.Remove(0, problem.Kinds, _removed);
        state.DropBin(index);
        state.GiveSpare(bin);
        TakeOut(state);
    }

    private void TakeOut(SearchState state)
    {
        for (var k = 0; k < _removed.Length; k++)
        {
            if (_removed[k] == 0)
                continue;
            state.Outside[k] += _removed[k];
            state.OutsideArea += _removed[k] * problem.Kinds[k].Area;
            _removed[k] = 0;
        }
    }
}

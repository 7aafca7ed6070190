using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Patterns;

/// <summary>A kind of piece in one position, with its value. Run and depth are its sizes along and across the first strips.</summary>
internal readonly record struct PricedPiece(int Kind, bool Turned, long Run, long Depth, long Value)
{
    /// <summary>The positions of all kinds of value above 0 that fit a sheet.</summary>
    /// <param name="kinds">The kinds.</param>
    /// <param name="values">Value of every kind.</param>
    /// <param name="runX">Whether strips run along x.</param>
    /// <param name="run">Extent of the sheet along the strips.</param>
    /// <param name="depth">Extent across.</param>
    public static PricedPiece[] Of(PieceKind[] kinds, long[] values, bool runX, long run, long depth)
    {
        var pieces = new List<PricedPiece>();
        for (var k = 0; k < kinds.Length; k++)
        {
            if (values[k] <= 0)
                continue;
            Add(k, turned: false, kinds[k].SizeX, kinds[k].SizeY);
            if (kinds[k].MayTurn)
                Add(k, turned: true, kinds[k].SizeY, kinds[k].SizeX);
        }

        return [.. pieces];

        void Add(int kind, bool turned, long sizeX, long sizeY)
        {
            var (along, across) = runX ? (sizeX, sizeY) : (sizeY, sizeX);
            if (along <= run && across <= depth)
                pieces.Add(new PricedPiece(kind, turned, along, across, values[kind]));
        }
    }
}

/// <summary>The best layouts of one sheet for given values.</summary>
/// <param name="Value">Value of the best; an upper bound for every layout when there are no <paramref name="Layouts"/>.</param>
/// <param name="Layouts">The best, and others nearly as good that begin otherwise; empty when none were wanted.</param>
internal sealed record PricedLayout(long Value, IReadOnlyList<Layouts.LayoutTree> Layouts);

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>
/// One sheet's cuts as a tree without positions: a row of parts along an axis, or a piece. A part may be smaller across
/// than its row; what it lacks is trimmed off. Sizes carry one kerf.
/// </summary>
/// <param name="Kind">Kind of piece, or -1 for a row.</param>
/// <param name="Turned">Whether a piece lies turned.</param>
/// <param name="Axis">Axis of a row.</param>
/// <param name="SizeX">Extent along x.</param>
/// <param name="SizeY">Extent along y.</param>
/// <param name="Parts">Parts of a row.</param>
internal sealed record LayoutTree(int Kind, bool Turned, byte Axis, long SizeX, long SizeY, LayoutTree[] Parts)
{
    public static LayoutTree Piece(int kind, bool turned, long sizeX, long sizeY) => new(kind, turned, Layouts.Axis.X, sizeX, sizeY, []);

    public static LayoutTree Row(byte axis, long sizeX, long sizeY, LayoutTree[] parts) => new(-1, Turned: false, axis, sizeX, sizeY, parts);

    public bool IsPiece => Kind >= 0;

    public long Along(byte axis) => axis == Layouts.Axis.X ? SizeX : SizeY;

    /// <summary>The tree of a bin.</summary>
    public static LayoutTree Of(Bin bin) => Of(bin, 0);

    private static LayoutTree Of(Bin bin, int index)
    {
        var node = bin.Nodes[index];
        if (node.Kind >= 0)
            return Piece(node.Kind, node.Turned, node.SizeX, node.SizeY);
        var parts = new List<LayoutTree>();
        for (var part = node.First; part >= 0; part = bin.Nodes[part].Next)
            parts.Add(Of(bin, part));
        return Row(node.Axis, node.SizeX, node.SizeY, [.. parts]);
    }

    /// <summary>Adds the pieces to counts by kind.</summary>
    public void Count(int[] counts)
    {
        if (IsPiece)
        {
            counts[Kind]++;
            return;
        }

        foreach (var part in Parts)
            part.Count(counts);
    }

    /// <summary>The tree with other pieces in the places of some; a place may be larger than its new piece, never smaller.</summary>
    /// <param name="exchange">Told the kind of every piece in turn, gives the kind to take its place and that kind's sizes.</param>
    public LayoutTree With(Func<int, (int Kind, long SizeX, long SizeY)> exchange)
    {
        if (!IsPiece)
            return this with { Parts = [.. Parts.Select(p => p.With(exchange))] };
        var (kind, sizeX, sizeY) = exchange(Kind);
        return kind == Kind ? this : Turned ? Piece(kind, Turned, sizeY, sizeX) : Piece(kind, Turned, sizeX, sizeY);
    }

    /// <summary>The tree without the pieces that are counted as surplus; lowers the counts. Null when nothing stays.</summary>
    public LayoutTree? Without(int[] surplus)
    {
        if (IsPiece)
        {
            if (surplus[Kind] == 0)
                return this;
            surplus[Kind]--;
            return null;
        }

        LayoutTree[] parts = [.. Parts.Select(p => p.Without(surplus)).OfType<LayoutTree>()];
        return parts.Length == 0 ? null : this with { Parts = parts };
    }
}

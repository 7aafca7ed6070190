namespace Casewright.Engine.Cutting.Layouts;

/// <summary>
/// Shrinks rows to their contents, dissolves rows of one part, and puts equal settings side by side, widest first, so
/// that the free space of a sheet gathers in one offcut and the fence stays put.
/// </summary>
internal static class LayoutTidier
{
    public static LayoutTree Tidy(LayoutTree root)
    {
        var tidy = Shrink(root);
        // The root keeps its axis and its sheet even when it holds one part only.
        LayoutTree[] parts = tidy.IsPiece || tidy.Axis != root.Axis ? [tidy] : tidy.Parts;
        return Stretch(LayoutTree.Row(root.Axis, root.SizeX, root.SizeY, parts), root.SizeX, root.SizeY);
    }

    private static LayoutTree Shrink(LayoutTree tree)
    {
        if (tree.IsPiece)
            return tree;
        var parts = new List<LayoutTree>();
        foreach (var part in tree.Parts.Select(Shrink))
        {
            if (!part.IsPiece && part.Axis == tree.Axis)
                parts.AddRange(part.Parts);
            else
                parts.Add(part);
        }

        if (parts.Count == 1)
            return parts[0];
        var axis = tree.Axis;
        var across = (byte)(1 - axis);
        var along = parts.Sum(p => p.Along(axis));
        var width = parts.Max(p => p.Along(across));
        var sorted = parts
            .OrderByDescending(p => p.Along(axis)).ThenByDescending(p => p.Along(across)).ThenBy(p => p.Kind)
            .ToArray();
        return axis == Axis.X ? LayoutTree.Row(axis, along, width, sorted) : LayoutTree.Row(axis, width, along, sorted);
    }

    // Gives every row the size it is cut out at: that of its place in the row above.
    private static LayoutTree Stretch(LayoutTree tree, long sizeX, long sizeY)
    {
        if (tree.IsPiece)
        {
            if (tree.SizeX == sizeX && tree.SizeY == sizeY)
                return tree;
            var axis = tree.SizeY == sizeY ? Axis.X : Axis.Y;
            var trimmed = tree;
            if (tree.SizeX != sizeX && tree.SizeY != sizeY)
                trimmed = LayoutTree.Row(Axis.X, sizeX, tree.SizeY, [tree]);
            return LayoutTree.Row(axis, sizeX, sizeY, [trimmed]);
        }

        LayoutTree[] parts = [.. tree.Parts.Select(p => tree.Axis == Axis.X ? Stretch(p, p.SizeX, sizeY) : Stretch(p, sizeX, p.SizeY))];
        return LayoutTree.Row(tree.Axis, sizeX, sizeY, parts);
    }
}

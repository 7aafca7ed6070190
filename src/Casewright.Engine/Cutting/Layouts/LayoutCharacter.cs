using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>What a tidied layout asks of the person at the saw.</summary>
/// <param name="Settings">Distinct fence settings by direction, kerf included.</param>
/// <param name="Cuts">Number of cuts, edge trims not counted.</param>
/// <param name="RestWorth">Worth of the largest rest, from 0 to 999: the square of its part of the sheet.</param>
internal sealed record LayoutCharacter(IReadOnlyCollection<(byte Axis, long Setting)> Settings, int Cuts, long RestWorth)
{
    public static LayoutCharacter Of(LayoutTree tidied, SheetKind sheet)
    {
        var settings = new SortedSet<(byte, long)>();
        var (cuts, largest) = Walk(tidied, settings);
        var part = largest / sheet.Area;
        return new LayoutCharacter(settings, cuts, (long)(999 * part * part));
    }

    private static (int Cuts, double LargestRest) Walk(LayoutTree tree, SortedSet<(byte, long)> settings)
    {
        if (tree.IsPiece)
            return (0, 0);
        var cuts = 0;
        var largest = 0.0;
        var left = tree.Along(tree.Axis);
        foreach (var part in tree.Parts)
        {
            left -= part.Along(tree.Axis);
            if (left > 0)
                cuts++;
            // The last part of a full row falls off without a setting of its own.
            if (left > 0)
                settings.Add((tree.Axis, part.Along(tree.Axis)));
            var (inner, rest) = Walk(part, settings);
            cuts += inner;
            largest = Math.Max(largest, rest);
        }

        return (cuts, Math.Max(largest, (double)left * tree.Along((byte)(1 - tree.Axis))));
    }
}

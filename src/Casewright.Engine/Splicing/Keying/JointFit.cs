using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>The two ways in which the end of one piece can be laid against the end of another with their edges flush.</summary>
public enum EndPlacement
{
    /// <summary>Reference edges on the same side.</summary>
    EdgesTogether,

    /// <summary>Reference edges on opposite sides.</summary>
    EdgesOpposed,
}

/// <summary>
/// Whether two ends go together on loose tenons, from the places of their mortises alone. A rigid piece can be laid against
/// another in two ways; whether its faces then lie as on the other piece follows from which ends meet and of which hand the pieces
/// are. Both edges are tried for flush where widths differ, and both faces where thicknesses differ.
/// </summary>
public static class JointFit
{
    /// <summary>Whether all tenons enter both pieces.</summary>
    /// <param name="first">One end.</param>
    /// <param name="second">The other.</param>
    /// <param name="placement">How they are laid.</param>
    public static bool GoesTogether(PieceEnd first, PieceEnd second, EndPlacement placement)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Mortises.Count != second.Mortises.Count)
            return false;
        return Laid(first, second, placement).Any(laid => first.Mortises.Zip(laid).All(pair => TenonEnters(pair.First, pair.Second)));
    }

    /// <summary>
    /// How far the worst of the mortises is off, in the lie that comes nearest to fitting; null when the number of mortises differs,
    /// so that no lie comes near.
    /// </summary>
    /// <param name="first">One end.</param>
    /// <param name="second">The other.</param>
    /// <param name="placement">How they are laid.</param>
    public static Length? Mismatch(PieceEnd first, PieceEnd second, EndPlacement placement)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Mortises.Count != second.Mortises.Count || first.Mortises.Count == 0)
            return null;
        return Laid(first, second, placement).Min(laid => first.Mortises.Zip(laid).Max(pair =>
            Length.Max((pair.First.Offset - pair.Second.Offset).Abs(), (pair.First.Depth - pair.Second.Depth).Abs())));
    }

    /// <summary>Mortises of the second end as seen in the coordinates of the first, by offset, for every way of making edges and faces flush.</summary>
    private static IEnumerable<EndMortise[]> Laid(PieceEnd first, PieceEnd second, EndPlacement placement)
    {
        var sameWay = first.AtHead != second.AtHead;
        var sameHand = first.RightHanded == second.RightHanded;
        var edgesTogether = placement == EndPlacement.EdgesTogether;
        var facesTogether = edgesTogether == (sameWay == sameHand);
        return
            from acrossShift in Shifts(first.Width - second.Width)
            from depthShift in Shifts(first.Thickness - second.Thickness)
            select second.Mortises.Select(m => m with
            {
                Offset = (edgesTogether ? m.Offset : second.Width - m.Offset) + acrossShift,
                Depth = (facesTogether ? m.Depth : second.Thickness - m.Depth) + depthShift,
            }).OrderBy(m => m.Offset).ToArray();
    }

    private static Length[] Shifts(Length difference) => difference == Length.Zero ? [Length.Zero] : [Length.Zero, difference];

    /// <summary>The narrower tenon of the two must find its width in what both mortises leave open, at one depth and thickness.</summary>
    private static bool TenonEnters(EndMortise one, EndMortise other)
    {
        var low = Length.Max(one.Offset - (one.Width / 2), other.Offset - (other.Width / 2));
        var high = Length.Min(one.Offset + (one.Width / 2), other.Offset + (other.Width / 2));
        return high - low >= Length.Min(one.Tenon, other.Tenon)
            && (one.Depth - other.Depth).Abs() <= JointPractice.ThicknessPlay
            && (one.Thickness - other.Thickness).Abs() <= JointPractice.ThicknessPlay;
    }
}

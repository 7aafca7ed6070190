using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>Thickness of a tenon and its place in the thickness of a part.</summary>
/// <param name="Thickness">Thickness of tenon and cutter.</param>
/// <param name="Depth">From the reference face to its centre plane.</param>
internal sealed record TenonSize(Length Thickness, Length Depth)
{
    /// <summary>Measured panels run thin; a cutter this much over a third of them is still taken.</summary>
    private static readonly Length s_overThird = Length.FromNanometres(350_000);

    private static readonly Length[] s_metric = [.. new[] { 12, 10, 8, 6, 5, 4, 3 }.Select(mm => Length.FromMillimetres(mm))];
    private static readonly Length[] s_inches = [.. new[] { 8, 6, 5, 4, 3, 2 }.Select(sixteenths => Length.FromInches(0, sixteenths, 16))];

    /// <summary>
    /// The thickest cutter of the unit system within a third of the part. It lies at mid-thickness, or nearer the reference face where
    /// a third of the part is left beside it and the shift shows.
    /// </summary>
    public static TenonSize For(Length partThickness, UnitSystem units)
    {
        var cutters = units == UnitSystem.Inches ? s_inches : s_metric;
        var cutter = Array.Find(cutters, c => c <= (partThickness / 3) + s_overThird);
        if (cutter == Length.Zero)
            cutter = cutters[^1];
        var nearest = (partThickness / 3) + (cutter / 2);
        var middle = partThickness / 2;
        return new(cutter, (middle - nearest) * 2 >= JointPractice.LeastDepthMismatch ? nearest : middle);
    }
}

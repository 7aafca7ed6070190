using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Counters;

/// <summary>
/// Where the lengths of a counter meet when it is longer than a sheet: over uprights, as far as a sheet reaches each time; and in two layers
/// the joints of one stay 300 mm (12 in) away from those of the other (common practice, no source).
/// </summary>
internal static class CounterJoints
{
    /// <summary>Least distance of the joints of two layers.</summary>
    public static Length Apart(RunFigures run) => run.Job.Units == UnitSystem.Inches ? Length.FromInches(12) : Length.FromMillimetres(300);

    /// <summary>Ends and joints of a layer from left to right; null when no upright lies where a joint is needed.</summary>
    /// <param name="left">Left end of the counter.</param>
    /// <param name="right">Right end.</param>
    /// <param name="longest">Longest length that a sheet gives.</param>
    /// <param name="supports">Middles of the uprights under it.</param>
    /// <param name="taken">Joints of the other layer.</param>
    /// <param name="apart">Distance to keep from those.</param>
    public static IReadOnlyList<Length>? Find(Length left, Length right, Length longest, IReadOnlyList<Length> supports, IReadOnlyList<Length> taken, Length apart)
    {
        var points = new List<Length> { left };
        while (right - points[^1] > longest)
        {
            var from = points[^1];
            var fit = supports.Where(s => s > from && s - from <= longest && s < right && taken.All(t => (t - s).Abs() >= apart)).ToList();
            if (fit.Count == 0)
                return null;
            points.Add(fit.Max());
        }

        points.Add(right);
        return points;
    }
}

using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Figures;

/// <summary>What can be cut from the sheets of a material without a joint, edge trim taken off.</summary>
internal sealed class UsableSheets
{
    private readonly bool _hasGrain;
    private readonly (Length Along, Length Across)[] _sizes;

    private UsableSheets(bool hasGrain, (Length Along, Length Across)[] sizes)
    {
        _hasGrain = hasGrain;
        _sizes = sizes;
    }

    /// <summary>The sheets of a material that are on hand or can be bought.</summary>
    public static UsableSheets Of(Job job, Material material)
    {
        var trim = job.Shop.Saw.EdgeTrim * 2;
        var sizes = job.Stock.Sheets
            .Where(s => s.Material == material.Id && (s.OnHand > 0 || s.Limit is null or > 0))
            .Select(s => (s.GrainAcross ? s.Width : s.Length, s.GrainAcross ? s.Length : s.Width, s.IsOffcut ? Length.Zero : trim))
            .Select(s => (s.Item1 - s.Item3, s.Item2 - s.Item3));
        return new(material.HasGrain, [.. sizes]);
    }

    /// <summary>Whether no sheet is known, so that nothing can be said.</summary>
    public bool None => _sizes.Length == 0;

    /// <summary>Widest upright panel that any sheet gives; zero when none is known.</summary>
    public Length Widest => _sizes.Select(s => _hasGrain ? s.Across : Length.Max(s.Along, s.Across)).DefaultIfEmpty(Length.Zero).Max();

    /// <summary>
    /// Whether an upright panel of this width comes out of one sheet's width, or, without grain, turned and whole. It may still be
    /// taller than the sheet: that joint is the splicing stage's.
    /// </summary>
    public bool Covers(Length height, Length width) =>
        _sizes.Any(s => width <= s.Across || (!_hasGrain && width <= s.Along && height <= s.Across));

    /// <summary>The tallest piece of this width that one sheet gives; null when no sheet is wide enough. A panel without grain may be turned.</summary>
    public Length? Reach(Length width)
    {
        Length? best = null;
        foreach (var (along, across) in _sizes)
        {
            if (width <= across)
                best = Length.Max(best ?? along, along);
            if (!_hasGrain && width <= along)
                best = Length.Max(best ?? across, across);
        }

        return best;
    }
}

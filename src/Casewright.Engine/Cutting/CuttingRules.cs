namespace Casewright.Engine.Cutting;

/// <summary>Which way the first cuts of a sheet run.</summary>
public enum FirstCut
{
    /// <summary>The better of the two, sheet by sheet.</summary>
    Either,

    /// <summary>Rips first: the sheet falls into strips of its full length.</summary>
    Along,

    /// <summary>Crosscuts first: the sheet falls into sections of its full width.</summary>
    Across,
}

/// <summary>What the saw can do. All lengths in the unit of the sheets.</summary>
/// <param name="Kerf">Width of a saw cut, 0 or more; lies between all neighbours, not beyond a last piece that ends at the usable edge.</param>
/// <param name="EdgeTrim">Strip cut off each of the four edges before anything else, 0 or more; at 0 the raw edge is used.</param>
/// <param name="Stages">
/// Turns of cutting direction allowed, 2 or more; null without limit. One more turn is allowed where it only trims a
/// single piece to size (the non-exact case of the literature).
/// </param>
/// <param name="FirstCut">Direction of the first cuts.</param>
/// <param name="MinimumStrip">Narrowest width or length that may safely be cut; null without limit.</param>
/// <param name="LongestRip">Longest cut along the sheet that the saw takes; null without limit. Edge trimming does not count.</param>
public sealed record CuttingRules(
    long Kerf = 0,
    long EdgeTrim = 0,
    int? Stages = 3,
    FirstCut FirstCut = FirstCut.Either,
    long? MinimumStrip = null,
    long? LongestRip = null);

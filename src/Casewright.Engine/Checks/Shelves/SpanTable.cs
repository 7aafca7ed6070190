using Casewright.Engine.Checks.Materials;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>How the shelves of a span table are stiffened.</summary>
public enum SpanSupport
{
    /// <summary>The bare panel on pins or in dados.</summary>
    Plain,

    /// <summary>With a hardwood nosing along the front, top flush; the back edge hangs free.</summary>
    Nosed,

    /// <summary>With that nosing, and the back edge on a cleat along its whole length.</summary>
    NosedOnCleat,
}

/// <summary>Which limit a span table keeps.</summary>
public enum SpanLimit
{
    /// <summary>The shop's limits for fixed shelves: sag on the first day, sag after years where the climate is known, strength.</summary>
    Fixed,

    /// <summary>Sag that no eye sees, and the same strength.</summary>
    Unseen,

    /// <summary>The architectural woodwork standard's limit under its own load for books, without own weight and creep.</summary>
    Standard,
}

/// <summary>One row of a span table: a material and the longest clear span for each load, rounded down.</summary>
/// <param name="Material">The panel.</param>
/// <param name="Spans">Longest spans, in the order of the table's loads; zero where nothing passes.</param>
public sealed record SpanRow(Material Material, ValueList<Length> Spans);

/// <summary>Longest clear spans of shelves by material and load, as the shelf checks would pass them.</summary>
/// <param name="Support">How the shelves are stiffened.</param>
/// <param name="Limit">Which limit they keep.</param>
/// <param name="Loads">Loads in kg/m, the columns.</param>
/// <param name="Rows">One row for each material.</param>
public sealed record SpanTable(SpanSupport Support, SpanLimit Limit, ValueList<double> Loads, ValueList<SpanRow> Rows)
{
    /// <summary>Where the tables end: a span of this length may be longer still.</summary>
    public static readonly Length Longest = Length.FromMillimetres(3000);

    /// <summary>Height of the nosing that the tables reckon with: 1 1/2 in, 38 mm.</summary>
    public static readonly Length NosingHeight = Length.FromInches(1, 1, 2);

    /// <summary>
    /// The table for shelves of one depth. Plain or nosed, on pins or in dados, grain along.
    /// </summary>
    /// <param name="materials">Sheet materials, in order.</param>
    /// <param name="loads">Loads in kg/m, in order; the woodwork standard's limit brings its own load and ignores them.</param>
    /// <param name="depth">Depth of the shelves.</param>
    /// <param name="limits">The shop's limits.</param>
    /// <param name="climate">The room; null leaves creep out.</param>
    /// <param name="units">Spans are rounded down to 5 mm or 1/4 in.</param>
    /// <param name="support">How the shelves are stiffened.</param>
    /// <param name="limit">Which limit they keep.</param>
    public static SpanTable For(
        IEnumerable<Material> materials, ValueList<double> loads, Length depth, CheckLimits limits, Climate? climate, UnitSystem units,
        SpanSupport support = SpanSupport.Plain, SpanLimit limit = SpanLimit.Fixed)
    {
        ArgumentNullException.ThrowIfNull(materials);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(limits);
        var step = units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);
        var columns = limit == SpanLimit.Standard ? [limits.StandardLoad * depth.Metres / Shelf.Gravity] : loads;
        var rows = materials.Select(m => new SpanRow(m, columns.Select(load => LongestSpan(ShelfOf(m, load, depth, support), limit, limits, climate, step)).ToValueList()));
        return new(support, limit, columns, rows.ToValueList());
    }

    /// <summary>The shelf that a cell of a table speaks of, as one span of a metre.</summary>
    public static Shelf ShelfOf(Material material, double load, Length depth, SpanSupport support)
    {
        ArgumentNullException.ThrowIfNull(material);
        var shelf = new Shelf
        {
            Spans = [1],
            Depth = depth.Metres,
            Thickness = material.Thickness,
            Material = material,
            AlongGrain = true,
            LoadPerMetre = load,
        };
        return support == SpanSupport.Plain ? shelf : ShelfRemedies.WithNosing(shelf, NosingHeight) with { BackCarried = support == SpanSupport.NosedOnCleat };
    }

    /// <summary>Whether a shelf keeps a limit; creep only where the climate is known, and nothing passes where the material may not be used.</summary>
    public static bool Keeps(Shelf shelf, SpanLimit limit, CheckLimits limits, Climate? climate)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(limits);
        if (limit == SpanLimit.Standard)
            return StandardLoadCheck.Passes(shelf, limits);
        double? creep = climate is { } air ? ClimateFactors.CreepFactor(shelf.Material.Kind, air) : 0;
        if (creep is not { } factor)
            return false;
        return ShelfSagCheck.Passes(shelf, limit == SpanLimit.Unseen ? limits.VisibleSagRatio : limits.SagRatio)
            && (climate is null || FinalSagCheck.Final(shelf, factor, limits.SustainedShare) <= shelf.LongestSpan / limits.FinalSagRatio)
            && ShelfStrengthCheck.Stress(shelf, limits) <= ShelfStrengthCheck.Strength(shelf);
    }

    private static Length LongestSpan(Shelf shelf, SpanLimit limit, CheckLimits limits, Climate? climate, Length step)
    {
        var (good, bad) = (0L, (Longest / step) + 1);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            (good, bad) = Keeps(shelf with { Spans = [(step * middle).Metres] }, limit, limits, climate) ? (middle, bad) : (good, middle);
        }

        return step * good;
    }
}

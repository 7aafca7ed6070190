using Casewright.Engine.Checks.Materials;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>One row of a span table: a material and the longest clear span for each load, rounded down.</summary>
/// <param name="Material">The panel.</param>
/// <param name="Spans">Longest spans, in the order of the table's loads; zero where nothing passes.</param>
public sealed record SpanRow(Material Material, ValueList<Length> Spans);

/// <summary>Longest clear spans of plain shelves by material and load, as the shelf checks would pass them.</summary>
/// <param name="Loads">Loads in kg/m, the columns.</param>
/// <param name="Rows">One row for each material.</param>
public sealed record SpanTable(ValueList<double> Loads, ValueList<SpanRow> Rows)
{
    private static readonly Length Longest = Length.FromMillimetres(3000);

    /// <summary>
    /// The table for shelves of one depth under first-day sag, and sag after years when the climate is known. A plain shelf on pins or in
    /// dados, grain along, no nosing.
    /// </summary>
    /// <param name="materials">Sheet materials, in order.</param>
    /// <param name="loads">Loads in kg/m, in order.</param>
    /// <param name="depth">Depth of the shelves.</param>
    /// <param name="limits">The shop's limits.</param>
    /// <param name="climate">The room; null leaves creep out.</param>
    /// <param name="units">Spans are rounded down to 5 mm or 1/4 in.</param>
    public static SpanTable For(
        IEnumerable<Material> materials, ValueList<double> loads, Length depth, CheckLimits limits, Climate? climate, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(materials);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(limits);
        var step = units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);
        var rows = materials.Select(m => new SpanRow(m, loads.Select(load => LongestSpan(m, load, depth, limits, climate, step)).ToValueList()));
        return new(loads, rows.ToValueList());
    }

    private static Length LongestSpan(Material material, double load, Length depth, CheckLimits limits, Climate? climate, Length step)
    {
        var shelf = new Shelf
        {
            Spans = [1],
            Depth = depth.Metres,
            Thickness = material.Thickness,
            Material = material,
            AlongGrain = true,
            LoadPerMetre = load,
        };
        double? creep = climate is { } air ? ClimateFactors.CreepFactor(material.Kind, air) : 0;
        if (creep is not { } factor)
            return Length.Zero;
        bool Passes(Length span)
        {
            var at = shelf with { Spans = [span.Metres] };
            return ShelfSagCheck.Passes(at, limits.SagRatio)
                && (climate is null || FinalSagCheck.Final(at, factor, limits.SustainedShare) <= span.Metres / limits.FinalSagRatio)
                && ShelfStrengthCheck.Stress(at, limits) <= ShelfStrengthCheck.Strength(at);
        }

        var (good, bad) = (0L, (Longest / step) + 1);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            (good, bad) = Passes(step * middle) ? (middle, bad) : (good, middle);
        }

        return step * good;
    }
}

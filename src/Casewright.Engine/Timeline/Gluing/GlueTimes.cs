using Casewright.Model.Shop;

namespace Casewright.Engine.Timeline.Gluing;

/// <summary>The times of a glue at the temperature of the shop, in whole minutes: those that keep a joint waiting rounded up, the working time down.</summary>
/// <param name="Factor">On the times at 20 °C.</param>
/// <param name="Working">From the first spreading until the clamps must be tight.</param>
/// <param name="Clamp">Under clamps, for a splice.</param>
/// <param name="UnstressedClamp">Under clamps, for a housing or a nosing.</param>
/// <param name="Handle">Until the joint may be handled with care.</param>
/// <param name="Cure">Until it may be loaded or machined.</param>
public sealed record GlueTimes(double Factor, long Working, long Clamp, long UnstressedClamp, long Handle, long Cure)
{
    /// <summary>The times at a temperature.</summary>
    /// <param name="glue">The glue.</param>
    /// <param name="celsius">Temperature of wood, glue and shop, in °C; at least the glue's least.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is colder than the glue allows.</exception>
    public static GlueTimes At(GlueFacts glue, double celsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(celsius, glue.LeastTemperature);
        var factor = FactorAt(glue, celsius);

        // Warm glue skins over sooner; cold glue is not given more time than at 20 °C (judgement, on the safe side).
        var working = (glue.OpenMinutes + glue.ClosedMinutes) * Math.Min(1, factor);
        return new(
            factor,
            (long)Math.Floor(working + 1e-9),
            Up(glue.ClampMinutes * factor),
            Up(glue.UnstressedClampMinutes * factor),
            Up(glue.HandleHours * 60 * factor),
            Up(glue.CureHours * 60 * factor));
    }

    private static long Up(double minutes) => (long)Math.Ceiling(minutes - 1e-9);

    private static double FactorAt(GlueFacts glue, double celsius)
    {
        var table = glue.Factors;
        if (table.Count == 0)
            return 1;
        var above = 0;
        while (above < table.Count && table[above].Celsius < celsius)
            above++;
        if (above == 0)
            return table[0].Factor;
        if (above == table.Count)
            return table[^1].Factor;
        var (low, high) = (table[above - 1], table[above]);
        return low.Factor + ((high.Factor - low.Factor) * (celsius - low.Celsius) / (high.Celsius - low.Celsius));
    }
}

using Casewright.Model.Measure;

namespace Casewright.Engine.Checks;

/// <summary>Solves for the size at which a check just passes, by halving over whole steps.</summary>
internal static class Solving
{
    /// <summary>Largest size in whole steps, at most <paramref name="from"/> rounded up to one, that passes; null when not even one step does. Smaller must never be worse.</summary>
    public static Length? Largest(Length step, Length from, Func<Length, bool> passes)
    {
        var (good, bad) = (0L, (from.CeilingTo(step) / step) + 1);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            (good, bad) = passes(step * middle) ? (middle, bad) : (good, middle);
        }

        return good == 0 ? null : step * good;
    }

    /// <summary>Least size in whole steps above <paramref name="from"/> and up to <paramref name="most"/> that passes; null when none does. Larger must never be worse.</summary>
    public static Length? Least(Length step, Length from, Length most, Func<Length, bool> passes)
    {
        var (bad, good) = (from.FloorTo(step) / step, most.FloorTo(step) / step);
        if (good <= bad || !passes(step * good))
            return null;
        while (good - bad > 1)
        {
            var middle = (good + bad) / 2;
            (bad, good) = passes(step * middle) ? (bad, middle) : (middle, good);
        }

        return step * good;
    }
}

using System.Globalization;

namespace Casewright.Model.Measure;

/// <summary>
/// An exact length: a whole number of nanometres. One inch is 25 400 000 nm, so every dyadic fraction of an inch
/// down to 1/1 000 000 in and every micrometre is exact.
/// </summary>
/// <remarks>Range ±9.2·10⁹ m. Sums and whole multiples are checked and throw <see cref="OverflowException"/> outside it.</remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Nanometres in a millimetre.</summary>
    public const long NanometresPerMillimetre = 1_000_000;

    /// <summary>Nanometres in an inch (international inch, exactly 25.4 mm since 1959).</summary>
    public const long NanometresPerInch = 25_400_000;

    private Length(long nanometres) => Nanometres = nanometres;

    /// <summary>The length in nanometres; may be negative.</summary>
    public long Nanometres { get; }

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The length as exact decimal millimetres.</summary>
    public decimal Millimetres => Nanometres / (decimal)NanometresPerMillimetre;

    /// <summary>The length as decimal inches, to 28 digits.</summary>
    public decimal Inches => Nanometres / (decimal)NanometresPerInch;

    /// <summary>The length in metres, for engineering formulas only; rounded to the nearest double.</summary>
    public double Metres => Nanometres / 1e9;

    /// <summary>A length from whole nanometres.</summary>
    public static Length FromNanometres(long nanometres) => new(nanometres);

    /// <summary>A length from millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is finer than a nanometre or outside the range.</exception>
    public static Length FromMillimetres(decimal millimetres) => FromExact(millimetres, NanometresPerMillimetre, nameof(millimetres));

    /// <summary>A length from decimal inches.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is finer than a nanometre or outside the range.</exception>
    public static Length FromInches(decimal inches) => FromExact(inches, NanometresPerInch, nameof(inches));

    /// <summary>A length from whole inches and a fraction of an inch.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is not positive, or the fraction is no whole number of nanometres.</exception>
    public static Length FromInches(long whole, long numerator, long denominator)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(denominator);
        var (quotient, remainder) = Int128.DivRem((Int128)numerator * NanometresPerInch, denominator);
        ArgumentOutOfRangeException.ThrowIfNotEqual(remainder, Int128.Zero, nameof(denominator));
        return new(checked((long)(((Int128)whole * NanometresPerInch) + quotient)));
    }

    /// <summary>The smaller of two lengths.</summary>
    public static Length Min(Length left, Length right) => left <= right ? left : right;

    /// <summary>The larger of two lengths.</summary>
    public static Length Max(Length left, Length right) => left >= right ? left : right;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Nanometres));

    /// <summary>The nearest multiple of <paramref name="step"/>; halves go away from zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    public Length RoundTo(Length step)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step.Nanometres, nameof(step));
        var magnitude = ((Int128.Abs(Nanometres) * 2) + step.Nanometres) / ((Int128)step.Nanometres * 2) * step.Nanometres;
        return new(checked((long)(Nanometres < 0 ? -magnitude : magnitude)));
    }

    /// <summary>The largest multiple of <paramref name="step"/> not above this length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    public Length FloorTo(Length step)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step.Nanometres, nameof(step));
        var remainder = Nanometres % step.Nanometres;
        if (remainder < 0)
            remainder += step.Nanometres;
        return new(checked(Nanometres - remainder));
    }

    /// <summary>The smallest multiple of <paramref name="step"/> not below this length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    public Length CeilingTo(Length step) => -(-this).FloorTo(step);

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>Sum.</summary>
    public static Length operator +(Length left, Length right) => new(checked(left.Nanometres + right.Nanometres));

    /// <summary>Difference.</summary>
    public static Length operator -(Length left, Length right) => new(checked(left.Nanometres - right.Nanometres));

    /// <summary>The length with the opposite sign.</summary>
    public static Length operator -(Length value) => new(checked(-value.Nanometres));

    /// <summary>Whole multiple.</summary>
    public static Length operator *(Length value, long factor) => new(checked(value.Nanometres * factor));

    /// <summary>Whole multiple.</summary>
    public static Length operator *(long factor, Length value) => value * factor;

    /// <summary>Quotient rounded towards zero to a whole nanometre.</summary>
    public static Length operator /(Length value, long divisor) => new(value.Nanometres / divisor);

    /// <summary>How many times <paramref name="right"/> goes wholly into <paramref name="left"/>, towards zero.</summary>
    public static long operator /(Length left, Length right) => left.Nanometres / right.Nanometres;

    /// <summary>What is left after whole divisions; has the sign of <paramref name="left"/>.</summary>
    public static Length operator %(Length left, Length right) => new(left.Nanometres % right.Nanometres);

    /// <summary>Whether the left length is smaller.</summary>
    public static bool operator <(Length left, Length right) => left.Nanometres < right.Nanometres;

    /// <summary>Whether the left length is larger.</summary>
    public static bool operator >(Length left, Length right) => left.Nanometres > right.Nanometres;

    /// <summary>Whether the left length is not larger.</summary>
    public static bool operator <=(Length left, Length right) => left.Nanometres <= right.Nanometres;

    /// <summary>Whether the left length is not smaller.</summary>
    public static bool operator >=(Length left, Length right) => left.Nanometres >= right.Nanometres;

    /// <summary>Exact millimetres, for logs and debugging; papers and screens use the length formatter.</summary>
    public override string ToString() => Millimetres.ToString("0.######", CultureInfo.InvariantCulture) + " mm";

    private static Length FromExact(decimal value, long unit, string name)
    {
        decimal nanometres;
        try
        {
            nanometres = value * unit;
        }
        catch (OverflowException)
        {
            throw new ArgumentOutOfRangeException(name, value, "The length is out of range.");
        }

        if (nanometres != decimal.Truncate(nanometres) || Math.Abs(nanometres) > long.MaxValue)
            throw new ArgumentOutOfRangeException(name, value, "The length must be a whole number of nanometres within ±9.2e18.");
        return new((long)nanometres);
    }
}

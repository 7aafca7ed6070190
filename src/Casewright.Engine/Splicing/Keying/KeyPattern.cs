using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>Places of the tenons and connectors across a joint.</summary>
/// <param name="Tenons">Centres of the tenons from the reference edge, ascending.</param>
/// <param name="Connectors">Centres of the draw connectors, ascending; empty for methods without.</param>
/// <param name="Width">Width of the part.</param>
internal sealed record KeyPattern(ValueList<Length> Tenons, ValueList<Length> Connectors, Length Width)
{
    /// <summary>How far the worst tenon is off from its nearest mortise when a piece is turned over so that its edges change sides.</summary>
    public Length OwnMismatch => Off(Tenons, Mirrored(Tenons, Width));

    /// <summary>
    /// The same against another pattern, in the way that comes nearest. Where numbers differ, a mortise left empty is allowed for.
    /// </summary>
    public Length MismatchWith(KeyPattern other)
    {
        var mirrored = Mirrored(other.Tenons, other.Width);
        var shift = Width - other.Width;
        return new[]
        {
            Off(Tenons, other.Tenons),
            Off(Tenons, mirrored),
            Off(Tenons, Shifted(other.Tenons, shift)),
            Off(Tenons, Shifted(mirrored, shift)),
        }.Min();
    }

    private static Length Off(IReadOnlyList<Length> one, IReadOnlyList<Length> other) => one.Count == other.Count
        ? Length.Max(Worst(one, other), Worst(other, one))
        : one.Count < other.Count ? Worst(one, other) : Worst(other, one);

    private static Length Worst(IReadOnlyList<Length> tenons, IReadOnlyList<Length> mortises) =>
        tenons.Max(tenon => mortises.Min(mortise => (tenon - mortise).Abs()));

    private static Length[] Mirrored(IReadOnlyList<Length> places, Length width) => [.. places.Reverse().Select(p => width - p)];

    private static Length[] Shifted(IReadOnlyList<Length> places, Length by) => [.. places.Select(p => p + by)];
}

using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>What would make a shelf pass, each alone; null where nothing reasonable does.</summary>
public sealed record ShelfRemedies
{
    /// <summary>Thickest panel that is worth proposing: 50 mm, our judgement.</summary>
    public static readonly Length ThickestPanel = Length.FromMillimetres(50);
    private static readonly Length HighestNosing = Length.FromMillimetres(75);

    /// <summary>Thickness in the shelf's depth of the nosing that is proposed where there is none: 3/4 in.</summary>
    public static readonly Length NosingWidth = Length.FromInches(0, 3, 4);

    // Nobody buys by the twentieth of a millimetre.
    private static readonly Length MetricNosingWidth = Length.FromMillimetres(19);

    /// <summary>Longest clear span.</summary>
    public Length? Span { get; init; }

    /// <summary>Least thickness of the same material.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Least height of a top-flush hardwood nosing <see cref="NosingWidth"/> thick, the back edge as it is.</summary>
    public Length? Nosing { get; init; }

    /// <summary>Least height of such a nosing with the back edge on a cleat.</summary>
    public Length? NosingAndCleat { get; init; }

    /// <summary>Largest load in kg/m.</summary>
    public double? Load { get; init; }

    /// <summary>Hardwood of the proposed nosing.</summary>
    public static Material NosingMaterial { get; } = new()
    {
        Id = "hardwood nosing",
        Name = "hardwood nosing",
        Kind = MaterialKind.Hardwood,
        Nominal = NosingWidth,
        BoardWidth = Length.FromMillimetres(38),
        HasGrain = true,
    };

    /// <summary>Solves for each remedy; <paramref name="passes"/> must get no worse with shorter, thicker, stiffer and less loaded shelves.</summary>
    /// <param name="shelf">A shelf that fails.</param>
    /// <param name="passes">The check it failed.</param>
    /// <param name="units">Unit that sizes are rounded in, to the safe side.</param>
    public static ShelfRemedies For(Shelf shelf, Func<Shelf, bool> passes, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(passes);
        var (coarse, fine, width) = units == UnitSystem.Inches
            ? (Length.FromInches(0, 1, 8), Length.FromInches(0, 1, 16), NosingWidth)
            : (Length.FromMillimetres(5), Length.FromMillimetres(0.5m), MetricNosingWidth);
        return new()
        {
            Span = Solving.Largest(coarse, Length.FromNanometres((long)(shelf.LongestSpan * 1e9)), span => passes(WithSpan(shelf, span))),
            Thickness = Solving.Least(fine, shelf.Thickness, ThickestPanel, t => passes(shelf with { Thickness = t })),
            Nosing = shelf.Nosing is null ? Solving.Least(fine, shelf.Thickness, HighestNosing, h => passes(WithNosing(shelf, h, width))) : null,
            NosingAndCleat = shelf.Loose || (shelf.BackCarried && shelf.Nosing is not null)
                ? null
                : Solving.Least(fine, shelf.Thickness, HighestNosing, h => passes(WithNosing(shelf, h, width) with { BackCarried = true })),
            Load = LargestLoad(shelf, passes),
        };
    }

    /// <summary>The shelf as one span of this length.</summary>
    public static Shelf WithSpan(Shelf shelf, Length span)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var scale = span.Metres / shelf.LongestSpan;
        return shelf with { Spans = [.. shelf.Spans.Select(s => s * scale)] };
    }

    /// <summary>The shelf with the proposed nosing of this height; <paramref name="width"/> null for <see cref="NosingWidth"/>.</summary>
    public static Shelf WithNosing(Shelf shelf, Length height, Length? width = null)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return shelf with { Nosing = new(NosingMaterial, (width ?? NosingWidth).Metres, height.Metres, null) };
    }

    /// <summary>The remedies as one sentence of advice.</summary>
    public string Advice(Say say)
    {
        var ways = new List<string>();
        if (Span is { } span)
            ways.Add($"a clear span of {say.Size(span)} or less");
        if (Thickness is { } thickness)
            ways.Add($"a thickness of {say.Size(thickness)} or more");
        if (Nosing is { } nosing)
            ways.Add($"a hardwood nosing {Width(say)} × {say.Size(nosing)}, top flush");
        else if (NosingAndCleat is { } both)
            ways.Add($"a hardwood nosing {Width(say)} × {say.Size(both)}, top flush, with the back edge on a cleat");
        if (Load is { } load && load >= 1)
            ways.Add($"a load of {say.LoadAtMost(load)} or less");
        return ways.Count == 0 ? "Put an upright under it." : "Any of these passes: " + string.Join("; ", ways) + "; or put an upright under it.";
    }

    private static string Width(Say say) => say.Size(say.Units == UnitSystem.Inches ? NosingWidth : MetricNosingWidth);

    private static double? LargestLoad(Shelf shelf, Func<Shelf, bool> passes)
    {
        var (good, bad) = (0, (int)Math.Ceiling(shelf.LoadPerMetre * 10) + 1);
        if (!passes(shelf with { LoadPerMetre = 0 }))
            return null;
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            (good, bad) = passes(shelf with { LoadPerMetre = middle / 10.0 }) ? (middle, bad) : (good, middle);
        }

        return good / 10.0;
    }
}

using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>How a level part is held up.</summary>
public enum ShelfHold
{
    /// <summary>Over clear spans between uprights.</summary>
    Spans,

    /// <summary>Carried along its whole length by rails beneath it.</summary>
    Along,
}

/// <summary>Reads from the placed parts what holds each shelf up.</summary>
public static class ShelfReader
{
    private static readonly Length Touch = Length.FromMillimetres(1);
    private static readonly Length ShimGap = Length.FromMillimetres(25);

    /// <summary>Roles that may carry a load between uprights.</summary>
    public static readonly PartRole[] Roles = [PartRole.FixedShelf, PartRole.AdjustableShelf, PartRole.Top, PartRole.Bottom];

    /// <summary>Whether rails carry the part along its length.</summary>
    public static ShelfHold Hold(CheckContext context, Part shelf) =>
        shelf.Role == PartRole.Bottom && context.PartsOfRun(shelf.Run).Count(p => p.Role == PartRole.BaseRail && Beneath(p, shelf, ShimGap)) >= 2
            ? ShelfHold.Along
            : ShelfHold.Spans;

    /// <summary>The shelf with its spans, nosing and support, under the given load in kg/m.</summary>
    public static Shelf Read(CheckContext context, Part shelf, double loadPerMetre) => new()
    {
        Spans = ClearSpans(context, shelf),
        Depth = shelf.Width.Metres,
        Thickness = shelf.Thickness,
        Material = context.Material(shelf),
        AlongGrain = shelf.Grain != Grain.AlongWidth,
        Nosing = Nosing(context, shelf),
        BackCarried = BackCarried(context, shelf),
        Loose = shelf.Role == PartRole.AdjustableShelf,
        LoadPerMetre = loadPerMetre,
    };

    /// <summary>
    /// Clear spans in m between the uprights that carry the part; its whole length when fewer than two uprights are found, which is
    /// never the shorter.
    /// </summary>
    public static IReadOnlyList<double> ClearSpans(CheckContext context, Part shelf)
    {
        var supports = Supports(context, shelf);
        var spans = new List<double>();
        for (var i = 1; i < supports.Count; i++)
        {
            var clear = supports[i].Low - supports[i - 1].High;
            if (clear > Length.Zero)
                spans.Add(clear.Metres);
        }

        return spans.Count == 0 ? [shelf.Length.Metres] : spans;
    }

    /// <summary>Places along the wall where uprights or rungs carry the part, from left to right.</summary>
    public static IReadOnlyList<(Length Low, Length High)> Supports(CheckContext context, Part shelf)
    {
        var (low, high) = Box(shelf);
        var uprights = context.Together(shelf)
            .Where(p => p.Role is PartRole.Side or PartRole.Partition)
            .Where(p => Box(p).Low.Y < low.Y + Touch && Box(p).High.Y >= low.Y - Touch);
        var rungs = context.PartsOfRun(shelf.Run).Where(p => p.Role == PartRole.BaseRung && shelf.Role == PartRole.Bottom && Beneath(p, shelf, ShimGap));
        return [.. uprights.Concat(rungs)
            .Select(p => (Low: Box(p).Low.X, High: Box(p).High.X))
            .Where(x => x.High >= low.X - Touch && x.Low <= high.X + Touch)
            .OrderBy(x => x.Low).ThenBy(x => x.High)];
    }

    /// <summary>Whether the back edge lies on a nailer or cleat right beneath it.</summary>
    public static bool BackCarried(CheckContext context, Part shelf) =>
        context.Together(shelf).Any(p => p.Role == PartRole.Nailer && Beneath(p, shelf, Touch) && p.Length >= shelf.Length - (2 * shelf.Thickness));

    /// <summary>The box that a part fills in the room.</summary>
    public static (Point3 Low, Point3 High) Box(Part part) => (
        part.LowCorner,
        part.HighCorner);

    private static bool Beneath(Part carrier, Part shelf, Length gap)
    {
        var (low, high) = Box(carrier);
        var under = Box(shelf).Low;
        var over = Box(shelf).High;
        return high.Y <= under.Y + Touch && high.Y >= under.Y - gap && low.X <= over.X && high.X >= under.X;
    }

    private static ShelfNosing? Nosing(CheckContext context, Part shelf)
    {
        if (context.Part(shelf.Nosing) is not { } nosing)
            return null;
        var (low, high) = Box(nosing);
        var (panelLow, panelHigh) = Box(shelf);
        var offset = ((low.Y + high.Y) - (panelLow.Y + panelHigh.Y)).Metres / 2;
        return new(context.Material(nosing), nosing.Thickness.Metres, nosing.Width.Metres, offset);
    }
}

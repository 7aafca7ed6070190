using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>Shelves that sag or break, and what their checks say would pass.</summary>
public static class ShelfAdvice
{
    private static readonly SiteFacts Heated = new() { Climate = Climate.Heated };

    public static IEnumerable<AdviceCase> All =>
    [
        new("shelf-sag", "a fixed shelf", "F1", new() { Load = 60 }, t => Ways(t, new() { Load = 60 })),
        new("shelf-sag", "a long loose shelf", "S1", new() { Load = 45, Width = 1236 }, t => Ways(t, new() { Load = 45, Width = 1236 })),
        new("shelf-sag", "a nosed shelf", "S2", Nosed, t => Ways(t, Nosed)),
        new("shelf-sag", "a nosed shelf on a cleat", "F1", Nosed with { CleatUnderFixedShelf = true, Load = 150 }, t => Ways(t, Nosed with { CleatUnderFixedShelf = true, Load = 150 })),
        new("shelf-sag-in-time", "a fixed shelf", "F1", new() { Load = 60, Site = Heated }, t => Ways(t, new() { Load = 60, Site = Heated })),
        new("shelf-sag-in-time", "a loose shelf of board", "S1", Board, t => Ways(t, Board)),
        new("shelf-strength", "a shelf of board under a great load", "F1", Board with { Load = 120 }, t => Ways(t, Board with { Load = 120 })),
        new("loose-shelf-visible-sag", "a loose shelf", "S1", new() { Load = 40 }, t => Ways(t, new() { Load = 40 })),
        new("shelf-standard-load", "a long shelf", "F1", new() { Width = 1336 }, t => Ways(t, new() { Width = 1336 })),
        AdviceCase.One("board-shelf-span", "bare board", "F1", Board, t => Span(Board, t.Mm("Keep the bay to ", ","))),
        new("shelf-one-bay-loaded", "a long bottom", "B", TwoBays, t => Ways(t, TwoBays)),
        new("shelf-one-bay-loaded", "a bottom whose end lifts", "B", TwoBays with { Width = 1254, Load = 60 }, t => Ways(t, TwoBays with { Width = 1254, Load = 60 })),
        new("shelf-pins", "shallow holes", "S1", Shallow, t => Pins(t, Shallow)),
    ];

    private static Bookcase Nosed => new() { Load = 90, Width = 1336, Nosing = (19, 25) };

    private static Bookcase Board => new() { Load = 45, Kind = MaterialKind.Mdf, Site = Heated };

    private static Bookcase TwoBays => new() { Bays = 2, Width = 2654, Load = 20 };

    private static Bookcase Shallow => Holes(new() { Load = 60, Width = 1236 }, 6);

    /// <summary>The bookcase with other clear spans.</summary>
    public static Bookcase Span(Bookcase of, decimal clear) => of with { Width = (clear * of.Bays) + (of.Thickness * (of.Bays + 1)) };

    /// <summary>The bookcase of other panels, its clear spans kept.</summary>
    public static Bookcase Thick(Bookcase of, decimal thickness) => Span(of with { Thickness = thickness }, of.Clear) with { Thickness = thickness, Width = (of.Clear * of.Bays) + (thickness * (of.Bays + 1)) };

    private static Bookcase Holes(Bookcase of, decimal depth) => of with
    {
        Change = p => p with { Machining = [.. p.Machining.Select(m => m is PinRow row ? row with { Depth = Bookcase.Mm(depth) } : m)] },
    };

    private static IEnumerable<Bookcase> Pins(Told told, Bookcase of) =>
        [of with { Load = told.Load("keep the load to ") }, Holes(of, told.Mm("bore the holes ", " deep"))];

    private static IEnumerable<Bookcase> Ways(Told told, Bookcase of)
    {
        if (told.Says("a clear span of"))
            yield return Span(of, told.Mm("a clear span of ", " or less"));
        if (told.Says("a thickness of"))
            yield return Thick(of, told.Mm("a thickness of ", " or more"));
        if (told.Says("a hardwood nosing"))
        {
            var cleat = told.Says("with the back edge on a cleat");
            yield return of with { Nosing = (told.Mm("a hardwood nosing ", " ×"), told.Mm("× ", ", top flush")), CleatUnderFixedShelf = cleat || of.CleatUnderFixedShelf };
        }

        if (told.Says("a load of"))
            yield return of with { Load = told.Load("a load of ") };
    }
}

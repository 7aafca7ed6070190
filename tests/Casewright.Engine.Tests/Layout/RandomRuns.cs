using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using CsCheck;
using static Casewright.Engine.Tests.Layout.SampleRuns;

namespace Casewright.Engine.Tests.Layout;

/// <summary>Random jobs of one run, every feature of the layout in every mix, all of them possible to build.</summary>
internal static class RandomRuns
{
    private sealed record Choice(
        UnitSystem Units,
        Construction Construction,
        BackKind Back,
        BaseKind Base,
        EndKind Left,
        EndKind Right,
        int Bays,
        int PerCase,
        int Tiers,
        int Fixed,
        int Loose,
        int Flags,
        long BayWidth,
        long Height,
        long Depth,
        int Fronts);

    private static readonly Gen<Choice> Choices =
        from units in Gen.OneOf(UnitSystem.Millimetres, UnitSystem.Inches)
        from construction in Gen.OneOf(Construction.Frameless, Construction.FaceFrame)
        from back in Gen.OneOf(BackKind.Captured, BackKind.Rabbeted, BackKind.Overlaid, BackKind.None)
        from foot in Gen.OneOf(BaseKind.Plinth, BaseKind.SidesToFloor, BaseKind.None)
        from left in Gen.OneOf(EndKind.Wall, EndKind.Finished, EndKind.Neighbour)
        from right in Gen.OneOf(EndKind.Wall, EndKind.Finished, EndKind.Neighbour)
        from bays in Gen.Int[1, 7]
        from perCase in Gen.Int[1, 3]
        from tiers in Gen.Int[1, 2]
        from shelves in Gen.Int[0, 3]
        from loose in Gen.Int[0, 3]
        from flags in Gen.Int[0, 4095]
        from bay in Gen.Long[450_000_000, 800_000_000]
        from height in Gen.Long[1_900_000_000, 3_300_000_000]
        from depth in Gen.Long[260_000_000, 420_000_000]
        from fronts in Gen.Int[0, 5]
        select new Choice(units, construction, back, foot, left, right, bays, perCase, tiers, shelves, loose, flags, bay, height, depth, fronts);

    public static Gen<Job> Jobs { get; } = Choices.Select(Build);

    /// <summary>Only figures that both unit systems can write alike: the joinery is the metric one throughout.</summary>
    public static Gen<Job> MetricJobs { get; } = Choices.Select(c => Build(c with { Units = UnitSystem.Millimetres }));

    private static bool Has(Choice c, int bit) => (c.Flags >> bit & 1) == 1;

    private static Job Build(Choice c)
    {
        var framed = c.Construction == Construction.FaceFrame;
        var left = End(c.Left, c, 0);
        var right = End(c.Right, c, 1);
        var ends = Mm(200);
        var width = (Length.FromNanometres(c.BayWidth) * c.Bays) + (Mm(18) * (c.Bays * 2)) + ends;
        var fixedShelves = Math.Min(c.Fixed, c.Tiers == 1 ? 3 : 1);
        var front = Front(c, fixedShelves, framed);
        var interior = new Interior { Fixed = fixedShelves, Loose = front is { Kind: FrontKind.Drawers } ? 0 : Math.Min(c.Loose, 2), Fronts = front is null ? [] : [front] };
        var run = new Run
        {
            Id = "a",
            Name = "a",
            Wall = "north",
            Offset = Mm(300),
            Width = width,
            Construction = c.Construction,
            Material = "panel",
            Depth = Length.FromNanometres(c.Depth) + (front is { Kind: FrontKind.Drawers } ? Mm(100) : Length.Zero),
            Left = left,
            Right = right,
            Base = c.Base == BaseKind.None
                ? new() { Kind = BaseKind.None }
                : new() { Kind = c.Base, Height = Mm(100), Setback = Has(c, 2) ? Mm(60) : Length.Zero, ShimRoom = c.Base == BaseKind.Plinth ? Mm(10) : Length.Zero, Material = Has(c, 3) ? "base" : null, Mould = Has(c, 4) && (c.Base == BaseKind.Plinth || !Has(c, 2)) ? "crown" : null },
            Head = new() { Height = Length.FromNanometres(c.Height), Crown = Has(c, 4) ? "crown" : null, CrownLap = Has(c, 4) ? Mm(30) : Length.Zero },
            Back = new() { Kind = c.Back, Material = c.Back == BackKind.None ? null : "back", Inset = c.Back == BackKind.Captured ? Mm(Has(c, 5) ? 20 : 12) : Length.Zero },
            Joinery = Joinery.For(c.Units) with { TopOverSides = Has(c, 6), DadoDepth = Has(c, 7) ? Length.Zero : Joinery.For(c.Units).DadoDepth },
            Nailers = Has(c, 8) ? new() { Height = Mm(80) } : null,
            Nosing = Has(c, 9) ? new() { Shelves = Has(c, 10) ? "shelf-nosing" : null, Uprights = framed ? null : "upright-nosing" } : null,
            FaceFrame = framed ? new() { EndStile = "stile", MidStile = "mid-stile", TopRail = "rail", BottomRail = "stile", FinishedOverlap = Mm(6), JointStile = c.Depth % 2 == 0 ? null : "rail" } : null,
            TrimBand = Has(c, 11) && c.Back != BackKind.None ? new() { Material = "band" } : null,
            FrontGaps = FrontGaps.For(c.Units),
            Division = new() { Bays = c.Bays, BaysPerCase = c.PerCase },
            Tiers = c.Tiers == 1 ? [new() { Interior = interior }] : [new() { Height = Mm(900), Interior = new() { Fixed = 1 } }, new() { Interior = interior }],
        };
        return Job(c.Units, run);
    }

    /// <summary>Doors over one opening or all, overlaid or inset, single or in pairs; drawers; or nothing. A frame without mid rails has doors over all.</summary>
    private static FrontDesign? Front(Choice c, int fixedShelves, bool framed) => c.Fronts switch
    {
        1 or 2 => new() { Kind = FrontKind.Doors, Fit = c.Fronts == 1 ? FrontFit.Overlay : FrontFit.Inset, Material = "panel", Openings = fixedShelves + 1, Leaves = 1 + (c.Flags & 1) },
        3 when !framed => new() { Kind = FrontKind.Doors, Fit = FrontFit.Inset, Material = "panel", Opening = fixedShelves + 1, Hinged = HingeSide.Right },
        4 when !framed => new() { Kind = FrontKind.Drawers, Fit = (c.Flags & 1) == 0 ? FrontFit.Overlay : FrontFit.Inset, Material = "panel", Drawers = 2, BoxMaterial = "panel", BottomMaterial = "back" },
        _ => null,
    };

    /// <summary>In front where neither frame nor nosing covers the edge; behind where the back leaves wood for it.</summary>
    private static LippingDesign? Lipping(Choice c)
    {
        var front = c.Construction == Construction.Frameless && !Has(c, 9) && c.Depth % 2 == 0;
        var rear = c.Back == BackKind.None || (c.Back == BackKind.Captured && Has(c, 5));
        return front || rear ? new() { Front = front ? "upright-nosing" : null, Rear = rear ? "stile" : null } : null;
    }

    private static RunEnd End(EndKind kind, Choice c, int bit) => kind switch
    {
        EndKind.Wall => new() { Kind = kind, Filler = Mm(30) },
        EndKind.Finished => new() { Kind = kind, Panel = Has(c, bit) ? "panel" : null, Lipping = Has(c, bit) ? null : Lipping(c) },
        _ => new() { Kind = kind },
    };
}

using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks.Fixtures;

/// <summary>
/// One bookcase against a wall, built by hand in the part conventions: uprights run up from the foot, reference edge in front, reference
/// face inside; level parts run from the left, reference edge in front, reference face up.
/// </summary>
public sealed record Bookcase
{
    public UnitSystem Units { get; init; } = UnitSystem.Millimetres;

    public decimal Width { get; init; } = 936;

    public decimal Height { get; init; } = 2400;

    public decimal Depth { get; init; } = 300;

    /// <summary>Depth of the case with all that is glued to it; null for that of its panels.</summary>
    public decimal? CaseDepth { get; init; }

    public decimal Thickness { get; init; } = 18;

    public decimal Dado { get; init; } = 6;

    public int Bays { get; init; } = 1;

    public int FixedShelves { get; init; } = 1;

    public int LooseShelves { get; init; } = 4;

    public double? Load { get; init; } = 30;

    public decimal Ceiling { get; init; } = 2600;

    public bool Nailers { get; init; } = true;

    public bool Back { get; init; } = true;

    public bool CleatUnderFixedShelf { get; init; }

    public (decimal Width, decimal Height)? Nosing { get; init; }

    public MaterialKind Kind { get; init; } = MaterialKind.BirchPlywood;

    public double? Elasticity { get; init; }

    public Grain ShelfGrain { get; init; } = Grain.AlongLength;

    public CheckLimits Limits { get; init; } = new();

    public SiteFacts Site { get; init; } = new();

    /// <summary>Changes one part or another after they are made.</summary>
    public Func<Part, Part> Change { get; init; } = part => part;

    /// <summary>Changes the job after it is made.</summary>
    public Func<Job, Job> ChangeJob { get; init; } = job => job;

    /// <summary>How far the whole bookcase stands from its usual place, to the right.</summary>
    public decimal Shift { get; init; }

    /// <summary>Parts added as they are.</summary>
    public ValueList<Part> More { get; init; } = [];

    public decimal? SheetLength { get; init; } = 2440;

    public ValueList<Splice> Splices { get; init; } = [];

    public ValueList<SheetLayout> Sheets { get; init; } = [];

    public ValueList<Piece> Pieces { get; init; } = [];

    public decimal Clear => (Width - ((Bays + 1) * Thickness)) / Bays;

    public static Length Mm(decimal value) => Length.FromMillimetres(value);

    public Job Job => ChangeJob(Plain);

    private Job Plain => new()
    {
        Name = "a bookcase",
        Units = Units,
        Currency = "EUR",
        Site = Site,
        Walls = [new() { Id = "A", Name = "long wall", Width = Mm(Width + 60), Height = Mm(Ceiling) }],
        Runs =
        [
            new()
            {
                Id = "R",
                Name = "bookcase",
                Wall = "A",
                Construction = Construction.Frameless,
                Material = "panel",
                Depth = Mm(Depth),
                Left = new() { Kind = EndKind.Wall, Filler = Mm(30) },
                Right = new() { Kind = EndKind.Wall, Filler = Mm(30) },
                Base = new() { Kind = BaseKind.None },
                Head = new() { Height = Mm(Height) },
                Back = new() { Kind = Back ? BackKind.Rabbeted : BackKind.None, Material = Back ? "thin" : null },
                Joinery = Joinery.For(UnitSystem.Millimetres),
                Tiers = [new() { Interior = new() { Fixed = FixedShelves, Loose = LooseShelves, LoadPerMetre = Load } }],
            },
        ],
        Stock = new()
        {
            Materials =
            [
                new() { Id = "panel", Name = "panel", Kind = Kind, Nominal = Mm(Thickness), Measured = Mm(Thickness), HasGrain = true, Elasticity = Elasticity },
                new() { Id = "thin", Name = "thin back", Kind = MaterialKind.BirchPlywood, Nominal = Mm(6), Measured = Mm(6), HasGrain = true },
                new() { Id = "strip", Name = "maple strip", Kind = MaterialKind.Hardwood, Nominal = Mm(Nosing?.Width ?? 19), Measured = Mm(Nosing?.Width ?? 19), BoardWidth = Mm(Nosing?.Height ?? 38) },
            ],
            Sheets = SheetLength is { } length
                ? [new() { Id = "full", Material = "panel", Length = Mm(length), Width = Mm(1220), Price = 80, LeadDays = 3 }, new() { Id = "thin-full", Material = "thin", Length = Mm(2440), Width = Mm(1220), Price = 30 }]
                : [],
        },
        Shop = new()
        {
            Saw = new() { Kerf = Mm(3), EdgeTrim = Mm(5) },
            Splicing = SpliceRules.For(UnitSystem.Millimetres),
            HourlyRate = 60,
            Checks = Limits,
        },
    };

    public CaseBox Box => new()
    {
        Id = "C1",
        Run = "R",
        Wall = "A",
        Column = 0,
        Tier = 0,
        X = Mm(30 + Shift),
        Y = Length.Zero,
        Width = Mm(Width),
        Height = Mm(Height),
        Depth = Mm(CaseDepth ?? Depth),
        Bays = Bays,
        ClearBay = Mm(Clear),
    };

    public Casework Casework => new([Box], Parts().Select(Change).Concat(More).ToValueList(), []);

    public CutPlan Plan => new()
    {
        Pieces = Pieces,
        Splices = Splices,
        Sheets = Sheets,
        Boards = [],
        Bounds = Bounds,
        Materials = [],
    };

    public CheckContext Context => new(Job, Casework, Plan);

    /// <summary>A tenon splice in a part, three tenons spread over its width.</summary>
    public static Splice TenonSplice(string part, decimal position, decimal width = 300, decimal thickness = 18, decimal tenonThickness = 6, decimal tenonWidth = 40, decimal depth = 25) => new()
    {
        Id = part + "/1",
        Part = part,
        Position = Mm(position),
        Method = SpliceMethod.LooseTenons,
        Consumes = Length.Zero,
        Holding = HoldingMethod.EndClamps,
        PairLetter = "a",
        MarkOffset = Mm(width / 2),
        Tenons =
        [
            .. ((decimal[])[50, width / 2, width - 50]).Select(offset => new Tenon(
                Mm(offset), Mm(thickness / 2), Mm(tenonThickness), Mm(tenonWidth), Mm(2 * depth), Mm(depth + 1), Length.Zero)),
        ],
    };

    private static CutBounds Bounds => new() { Cost = 0, LowerBound = 0, Sheets = 0, SheetsLowerBound = 0, Proven = true };

    public static Part Upright(string id, PartRole role, decimal x, bool faceRight, Bookcase of, decimal foot, decimal length, params Machining[] machining) => new()
    {
        Id = id,
        Name = id,
        Case = "C1",
        Run = "R",
        Role = role,
        Material = "panel",
        Length = Mm(length),
        Width = Mm(of.Depth),
        Thickness = Mm(of.Thickness),
        Grain = Grain.AlongLength,
        Place = new("A", new(Mm(x), Mm(foot), Mm(of.Depth)), Axis.Up, Axis.In, faceRight ? Axis.Left : Axis.Right),
        ReferenceFace = Exposure.Shows,
        OppositeFace = role == PartRole.Partition ? Exposure.Shows : Exposure.Hidden,
        ReferenceFaceName = "inside",
        OppositeFaceName = "outside",
        Machining = machining.ToValueList(),
    };

    public static Part Level(string id, PartRole role, decimal x, decimal top, decimal length, decimal width, Bookcase of, double? load) => new()
    {
        Id = id,
        Name = id,
        Case = "C1",
        Run = "R",
        Role = role,
        Material = "panel",
        Length = Mm(length),
        Width = Mm(width),
        Thickness = Mm(of.Thickness),
        Grain = of.ShelfGrain,
        Place = new("A", new(Mm(x), Mm(top), Mm(of.Depth)), Axis.Right, Axis.In, Axis.Down),
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Shows,
        ReferenceFaceName = "upper",
        OppositeFaceName = "under",
        LoadPerMetre = load,
    };

    private IEnumerable<Part> Parts()
    {
        var t = Thickness;
        var dados = Enumerable.Range(1, FixedShelves)
            .Select(i => (Machining)new Dado($"F{i}", Face.Reference, Mm(FixedTop(i) - t), Mm(t), Mm(Dado), Mm(0), Mm(Depth))).ToArray();
        if (LooseShelves > 0)
            dados = [.. dados, new PinRow("shelf pins", Face.Reference, Mm(37), Mm(170), Mm(32), 20, Mm(5), Mm(10))];
        yield return Upright("L", PartRole.Side, 30 + t, true, this, 0, Height, dados);
        yield return Upright("R", PartRole.Side, 30 + Width - t, false, this, 0, Height, dados);
        for (var i = 1; i < Bays; i++)
        {
            var face = 30 + t + (i * (Clear + t));
            var both = dados.Concat(dados.OfType<Dado>().Select(d => d with { Face = Face.Opposite })).ToArray();
            yield return Upright($"P{i}", PartRole.Partition, face, true, this, 0, Height, both);
        }

        for (var bay = 0; bay < Bays; bay++)
        {
            var left = 30 + t + (bay * (Clear + t));
            var suffix = Bays == 1 ? "" : $".{bay + 1}";
            for (var i = 1; i <= FixedShelves; i++)
                yield return WithNosing(Level($"F{i}{suffix}", PartRole.FixedShelf, left - Dado, FixedTop(i), Clear + (2 * Dado), Depth, this, Load));
            for (var i = 1; i <= LooseShelves; i++)
                yield return WithNosing(Level($"S{i}{suffix}", PartRole.AdjustableShelf, left + 1, 300 * i, Clear - 2, Depth - 5, this, Load));
            if (Nosing is { } nosing)
            {
                foreach (var shelf in ((string, decimal)[])[.. Enumerable.Range(1, FixedShelves).Select(i => ($"F{i}{suffix}", FixedTop(i))), .. Enumerable.Range(1, LooseShelves).Select(i => ($"S{i}{suffix}", 300m * i))])
                    yield return Strip(shelf.Item1 + "-N", PartRole.Nosing, "strip", left, shelf.Item2, Clear, nosing.Height, nosing.Width, Depth + nosing.Width);
            }

            if (CleatUnderFixedShelf)
            {
                for (var i = 1; i <= FixedShelves; i++)
                    yield return Strip($"K{i}{suffix}", PartRole.Nailer, "panel", left, FixedTop(i) - t, Clear, 90, t, t);
            }

            if (Nailers)
                yield return Strip($"NT{suffix}", PartRole.Nailer, "panel", left, Height - t, Clear, 90, t, t);
        }

        yield return Level("T", PartRole.Top, 30 + t - Dado, Height, Width - (2 * t) + (2 * Dado), Depth, this, null);
        yield return Level("B", PartRole.Bottom, 30 + t - Dado, t, Width - (2 * t) + (2 * Dado), Depth, this, Load);
        if (Back)
            yield return BackPanel();
    }

    private decimal FixedTop(int i) => Height * i / (FixedShelves + 1);

    private Part WithNosing(Part shelf) => Nosing is null ? shelf : shelf with { Nosing = shelf.Id + "-N" };

    private Part BackPanel() => Upright("BK", PartRole.Back, 30 + 9, true, this, 0, Height) with
    {
        Material = "thin",
        Width = Mm(Width - 18),
        Thickness = Mm(6),
        Place = new("A", new(Mm(39), Mm(0), Mm(6)), Axis.Up, Axis.Right, Axis.In),
    };

    // A strip on edge: its length runs right, its width down, its thickness in from its front.
    private static Part Strip(string id, PartRole role, string material, decimal x, decimal top, decimal length, decimal height, decimal thick, decimal front) => new()
    {
        Id = id,
        Name = id,
        Case = "C1",
        Run = "R",
        Role = role,
        Material = material,
        Length = Mm(length),
        Width = Mm(height),
        Thickness = Mm(thick),
        Grain = Grain.AlongLength,
        Place = new("A", new(Mm(x), Mm(top), Mm(front)), Axis.Right, Axis.Down, Axis.In),
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Hidden,
        ReferenceFaceName = "front",
        OppositeFaceName = "rear",
    };
}

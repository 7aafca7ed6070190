using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Papers.Tests.Documents;

/// <summary>
/// A run of tall cases, every part, piece, splice and cut written down by simple rules: enough of a plan to print every paper from,
/// in either unit, with as many cases as a test likes. It is not the planner's and need not be clever.
/// </summary>
internal sealed class HandPlan
{
    private readonly UnitSystem _units;
    private readonly int _cases;
    private readonly string _jobName;

    private HandPlan(UnitSystem units, int cases, string jobName) => (_units, _cases, _jobName) = (units, cases, jobName);

    public static Plan Of(UnitSystem units = UnitSystem.Millimetres, int cases = 5, string jobName = "Reading room") => new HandPlan(units, cases, jobName).Build();

    private Length D(decimal millimetres, decimal inches) => _units == UnitSystem.Inches ? Length.FromInches(inches) : Length.FromMillimetres(millimetres);

    private Length T => D(18, 0.71875m);

    private Length CaseWidth => D(910.4m, 35.84375m);

    private Length High => D(2710, 106.6875m);

    private Length Deep => D(300, 11.8125m);

    private Length Joint => D(1975, 77.75m);

    private Length Kerf => D(3, 0.125m);

    private Length Trim => D(5, 0.25m);

    private Length SheetLength => D(2440, 96);

    private Length SheetWidth => D(1220, 48);

    private Plan Build()
    {
        var parts = Enumerable.Range(1, _cases).SelectMany(Parts).ToValueList();
        var splices = parts.Select(SpliceOf).OfType<Splice>().ToValueList();
        var pieces = parts.Where(part => part.Role != PartRole.Nosing).SelectMany(part => PiecesOf(part, splices)).ToList();
        var (sheets, placed) = Cut(pieces);
        var (boards, nosings) = Boards(parts.Where(part => part.Role == PartRole.Nosing));
        var bounds = new CutBounds { Cost = sheets.Sum(s => s.Cost) + boards.Sum(b => b.Cost), LowerBound = 300, Sheets = sheets.Count, SheetsLowerBound = sheets.Count - 1, Proven = false };
        return new()
        {
            Job = Job(),
            Cases = Enumerable.Range(1, _cases).Select(CaseOf).ToValueList(),
            Parts = parts,
            Cutting = new()
            {
                Pieces = placed.Concat(nosings).ToValueList(),
                Splices = splices,
                Sheets = sheets,
                Boards = boards,
                Bounds = bounds,
                Materials =
                [
                    new("ply18", bounds with { Sheets = sheets.Count(s => s.Material == "ply18"), SheetsLowerBound = sheets.Count(s => s.Material == "ply18") }),
                    new("ply6", bounds with { Sheets = sheets.Count(s => s.Material == "ply6"), SheetsLowerBound = 1 }),
                    new("nosing", bounds with { Sheets = boards.Count, SheetsLowerBound = boards.Count }),
                ],
            },
            Findings = Findings(),
        };
    }

    private Job Job() => new()
    {
        Name = _jobName,
        Client = "Mill Lane tool library",
        Date = new DateOnly(2026, 11, 25),
        Revision = 7,
        Units = _units,
        Currency = "EUR",
        Walls = [new() { Id = "north", Name = "north wall", Width = CaseWidth * _cases + D(80, 3), Height = D(2840, 112) }],
        Runs =
        [
            new()
            {
                Id = "R1",
                Name = "north wall bookcases",
                Wall = "north",
                Construction = Construction.Frameless,
                Material = "ply18",
                Depth = Deep,
                Left = new() { Kind = EndKind.Wall, Filler = D(40, 1.5m) },
                Right = new() { Kind = EndKind.Wall, Filler = D(40, 1.5m) },
                Base = new() { Kind = BaseKind.Plinth, Height = D(110, 4.375m) },
                Head = new() { Height = High },
                Back = new() { Kind = BackKind.Overlaid, Material = "ply6" },
                Joinery = Joinery.For(_units),
                Division = new() { Bays = _cases },
                Tiers = [new() { Interior = new() { Loose = 2 } }],
            },
        ],
        Stock = new()
        {
            Materials =
            [
                new() { Id = "ply18", Name = "birch plywood 18", Kind = MaterialKind.BirchPlywood, Nominal = T, HasGrain = true },
                new() { Id = "ply6", Name = "birch plywood 6", Kind = MaterialKind.BirchPlywood, Nominal = D(6, 0.25m), HasGrain = true },
                new() { Id = "nosing", Name = "beech nosing 10 × 40", Kind = MaterialKind.Hardwood, Nominal = D(10, 0.375m), BoardWidth = D(40, 1.5m) },
            ],
            Sheets =
            [
                new() { Id = "ply18-8", Material = "ply18", Length = SheetLength, Width = SheetWidth, Price = 78.5m, LeadDays = 3, OnHand = 1 },
                new() { Id = "ply6-8", Material = "ply6", Length = SheetLength, Width = SheetWidth, Price = 31 },
            ],
            Boards = [new() { Id = "beech-24", Material = "nosing", Length = D(2400, 96), Price = 9.8m, LeadDays = 5 }],
        },
        Shop = new()
        {
            Saw = new() { Kerf = Kerf, EdgeTrim = Trim },
            Splicing = SpliceRules.For(_units),
            HourlyRate = 45,
        },
    };

    private CaseBox CaseOf(int number) => new()
    {
        Id = $"C{number}",
        Run = "R1",
        Wall = "north",
        Column = number - 1,
        Tier = 0,
        X = Left(number),
        Y = D(110, 4.375m),
        Width = CaseWidth,
        Height = High,
        Depth = Deep,
        Bays = 1,
        ClearBay = CaseWidth - (2 * T),
    };

    private Length Left(int number) => D(40, 1.5m) + ((number - 1) * CaseWidth);

    private IEnumerable<Part> Parts(int number)
    {
        var (id, left, floor) = ($"C{number}", Left(number), D(110, 4.375m));
        var between = CaseWidth - (2 * T) + (2 * D(6, 0.25m));
        yield return Upright($"{id}-L", $"left side, case {number}", id, Hand.Left, left + T, Axis.Left, number == 1);
        yield return Upright($"{id}-R", $"right side, case {number}", id, Hand.Right, left + CaseWidth - T, Axis.Right, number == _cases);
        yield return Level($"{id}-B", $"bottom, case {number}", id, PartRole.Bottom, between, floor + T, left);
        yield return Level($"{id}-T", $"top, case {number}", id, PartRole.Top, between, floor + High, left);
        foreach (var (shelf, height) in ((int, Length)[])[(1, D(870, 34.25m)), (2, D(2010 + 110 + 18, 84.125m))])
        {
            yield return Level($"{id}-F{shelf}", $"fixed shelf {shelf}, case {number}", id, PartRole.FixedShelf, between, height, left) with { Nosing = $"{id}-F{shelf}N" };
            yield return Nosing($"{id}-F{shelf}N", $"nosing of shelf {shelf}, case {number}", id, between, height, left);
        }

        foreach (var (shelf, height) in ((int, Length)[])[(1, D(500, 20)), (2, D(1240, 49)), (3, D(1610, 63.5m))])
            yield return Level($"{id}-S{shelf}", $"loose shelf {shelf}, case {number}", id, PartRole.AdjustableShelf, CaseWidth - (2 * T) - D(2, 0.0625m), height, left);
        yield return Back(id, number, left, floor);
    }

    private Part Upright(string id, string name, string box, Hand hand, Length x, Axis into, bool shows) => Part(id, name, box, PartRole.Side, "ply18", High, Deep, T, new("north", new(x, D(110, 4.375m), Deep), Axis.Up, Axis.In, into)) with
    {
        Hand = hand,
        ReferenceFaceName = "inside",
        OppositeFaceName = "outside",
        ReferenceFace = Exposure.Shows,
        OppositeFace = shows ? Exposure.Shows : Exposure.Hidden,
        Machining =
        [
            new Dado("bottom", Face.Reference, Length.Zero, T, D(6, 0.25m), Length.Zero, Deep),
            new Dado("shelf", Face.Reference, D(2010, 79.125m), T, D(6, 0.25m), Length.Zero, Deep),
            new PinRow("loose shelves", Face.Reference, D(37, 1.5m), D(180, 7), D(32, 1), _units == UnitSystem.Inches ? 64 : 52, D(5, 0.25m), D(10, 0.375m)),
            new PinRow("loose shelves", Face.Reference, D(263, 10.3125m), D(180, 7), D(32, 1), _units == UnitSystem.Inches ? 64 : 52, D(5, 0.25m), D(10, 0.375m)),
            new HardwareZone("case screws", Face.Opposite, D(2060, 81.125m), D(2070, 81.5m)),
        ],
    };

    private Part Level(string id, string name, string box, PartRole role, Length length, Length top, Length left) =>
        Part(id, name, box, role, "ply18", length, Deep, T, new("north", new(left + ((CaseWidth - length) / 2), top, Deep), Axis.Right, Axis.In, Axis.Down)) with
        {
            ReferenceFaceName = "upper",
            OppositeFaceName = "under",
            LoadPerMetre = 30,
        };

    private Part Nosing(string id, string name, string box, Length length, Length top, Length left) =>
        Part(id, name, box, PartRole.Nosing, "nosing", length, D(40, 1.5m), D(10, 0.375m), new("north", new(left + T, top, Deep + D(10, 0.375m)), Axis.Right, Axis.Down, Axis.In)) with
        {
            ReferenceFaceName = "front",
            OppositeFaceName = "rear",
        };

    private Part Back(string box, int number, Length left, Length floor) =>
        Part($"{box}-K", $"back, case {number}", box, PartRole.Back, "ply6", High - D(2, 0.125m), CaseWidth - D(2, 0.125m), D(6, 0.25m), new("north", new(left + D(1, 0.0625m), floor + D(1, 0.0625m), D(6, 0.25m)), Axis.Up, Axis.Right, Axis.In)) with
        {
            ReferenceFaceName = "front",
            OppositeFaceName = "rear",
        };

    private static Part Part(string id, string name, string box, PartRole role, string material, Length length, Length width, Length thickness, Placement place) => new()
    {
        Id = id,
        Name = name,
        Case = box,
        Run = "R1",
        Role = role,
        Material = material,
        Length = length,
        Width = width,
        Thickness = thickness,
        Grain = Grain.AlongLength,
        Place = place,
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Shows,
        ReferenceFaceName = "one",
        OppositeFaceName = "other",
    };

    private Splice? SpliceOf(Part part) => part.Role switch
    {
        PartRole.Side => SideSplice(part),
        PartRole.Back => new()
        {
            Id = part.Id + "/1",
            Part = part.Id,
            Position = D(2018, 79.375m),
            Method = SpliceMethod.CoveredButt,
            Consumes = Length.Zero,
            Holding = HoldingMethod.Carried,
            PairLetter = "",
            MarkOffset = D(450, 18),
            CoveredBy = part.Case + "-F2",
        },
        _ => null,
    };

    private Splice SideSplice(Part part)
    {
        var hidden = part.OppositeFace == Exposure.Hidden;
        var number = int.Parse(part.Case[1..], System.Globalization.CultureInfo.InvariantCulture);
        return new()
        {
            Id = part.Id + "/1",
            Part = part.Id,
            Position = Joint,
            Method = hidden ? SpliceMethod.TenonsAndConnectors : SpliceMethod.LooseTenons,
            Consumes = D(6, 0.25m),
            AccessFace = hidden ? Face.Opposite : null,
            Tenons = Tenons([D(48, 1.875m), D(128, 5.0625m), D(262, 10.3125m)]),
            Connectors = hidden ? [new(D(92, 3.625m)), new(D(205, 8.0625m))] : [],
            Holding = hidden ? HoldingMethod.DrawConnectors : HoldingMethod.SpreaderAgainstStop,
            PairLetter = ((char)('A' + (((2 * number) - (part.Hand == Hand.Left ? 2 : 1)) % 26))).ToString(),
            KeyClass = part.Hand == Hand.Left ? "K1" : "K2",
            KeyMismatch = D(11, 0.4375m),
            MarkOffset = D(165, 6.5m),
            SightLine = D(110, 4.375m) + Joint,
        };
    }

    private ValueList<Tenon> Tenons(Length[] offsets) => offsets
        .Select((offset, i) => new Tenon(offset, T / 2, D(6, 0.25m), D(22, 0.875m), D(40, 1.5m), D(21, 0.8125m), i == 0 ? Length.Zero : D(2, 0.0625m))).ToValueList();

    private IEnumerable<Piece> PiecesOf(Part part, ValueList<Splice> splices)
    {
        var splice = splices.FirstOrDefault(s => s.Part == part.Id);
        if (splice is null)
            return [PieceOf(part, part.Id, Length.Zero, part.Length, Length.Zero, Length.Zero)];
        var (square, trim) = splice.Method == SpliceMethod.CoveredButt ? (Length.Zero, Length.Zero) : (D(3, 0.125m), D(10, 0.375m));
        return [PieceOf(part, part.Id + "/a", Length.Zero, splice.Position, Length.Zero, square), PieceOf(part, part.Id + "/b", splice.Position, part.Length, square, trim)];
    }

    private static Piece PieceOf(Part part, string id, Length from, Length to, Length start, Length end) => new()
    {
        Id = id,
        Part = part.Id,
        Stock = "",
        FromBoard = false,
        Length = to - from + start + end,
        Width = part.Width,
        X = Length.Zero,
        Y = Length.Zero,
        From = from,
        To = to,
        AllowanceStart = start,
        AllowanceEnd = end,
    };

    // Strips of one width, filled longest first; sheets filled strip by strip.
    private (ValueList<SheetLayout> Sheets, List<Piece> Pieces) Cut(List<Piece> pieces)
    {
        var (sheets, placed) = (new List<SheetLayout>(), new List<Piece>());
        foreach (var material in (string[])["ply18", "ply6"])
        {
            var mine = pieces.Where(piece => piece.Part.EndsWith("-K", StringComparison.Ordinal) == (material == "ply6")).OrderByDescending(piece => piece.Length).ToList();
            while (mine.Count > 0)
                sheets.Add(CutSheet($"S{sheets.Count + 1}", material, mine, placed));
        }

        return (sheets.ToValueList(), placed);
    }

    private SheetLayout CutSheet(string id, string material, List<Piece> left, List<Piece> placed)
    {
        var strips = new List<(Length Y, Length Width, List<Piece> Pieces)>();
        var y = Trim;
        while (left.Count > 0 && y + left[0].Width <= SheetWidth - Trim)
        {
            var (x, strip, width) = (Trim, new List<Piece>(), left[0].Width);
            foreach (var piece in left.Where(piece => piece.Width == width).ToList())
            {
                if (x + piece.Length > SheetLength - Trim)
                    continue;
                strip.Add(piece with { Stock = id, X = x, Y = y });
                left.Remove(piece);
                x += piece.Length + Kerf;
            }

            strips.Add((y, width, strip));
            y += width + Kerf;
        }

        placed.AddRange(strips.SelectMany(strip => strip.Pieces));
        return new()
        {
            Id = id,
            Stock = material + "-8",
            Material = material,
            Length = SheetLength,
            Width = SheetWidth,
            Trim = Trim,
            Kerf = Kerf,
            Cost = id == "S1" ? 0 : material == "ply18" ? 78.5m : 31,
            Bought = id != "S1",
            Cuts = Cuts(strips),
            Offcuts = Offcuts(strips, y),
        };
    }

    private ValueList<Cut> Cuts(List<(Length Y, Length Width, List<Piece> Pieces)> strips)
    {
        var cuts = new List<Cut>();
        void Add(CutKind kind, int stage, Length x0, Length y0, Length x1, Length y1, Length setting) => cuts.Add(new(cuts.Count + 1, kind, stage, x0, y0, x1, y1, setting));
        Add(CutKind.Rip, 0, Length.Zero, Trim - Kerf, SheetLength, Trim - Kerf, Trim);
        Add(CutKind.Rip, 0, Length.Zero, SheetWidth - Trim, SheetLength, SheetWidth - Trim, Trim);
        Add(CutKind.Crosscut, 0, Trim - Kerf, Trim, Trim - Kerf, SheetWidth - Trim, Trim);
        Add(CutKind.Crosscut, 0, SheetLength - Trim, Trim, SheetLength - Trim, SheetWidth - Trim, Trim);
        foreach (var (y, width, _) in strips)
            Add(CutKind.Rip, 1, Trim, y + width, SheetLength - Trim, y + width, width);
        foreach (var (y, width, pieces) in strips)
        {
            foreach (var piece in pieces)
                Add(CutKind.Crosscut, 2, piece.X + piece.Length, y, piece.X + piece.Length, y + width, piece.Length);
        }

        return cuts.ToValueList();
    }

    private ValueList<KeptOffcut> Offcuts(List<(Length Y, Length Width, List<Piece> Pieces)> strips, Length y)
    {
        var kept = strips.Select(strip => (X: strip.Pieces[^1].X + strip.Pieces[^1].Length + Kerf, strip.Y, strip.Width))
            .Select(end => new KeptOffcut(end.X, end.Y, SheetLength - Trim - end.X, end.Width))
            .Append(new(Trim, y, SheetLength - (2 * Trim), SheetWidth - Trim - y));
        return kept.Where(offcut => offcut.Length > D(300, 12) && offcut.Width > D(100, 4)).ToValueList();
    }

    private (ValueList<BoardLayout> Boards, List<Piece> Pieces) Boards(IEnumerable<Part> parts)
    {
        var (boards, pieces) = (new List<BoardLayout>(), new List<Piece>());
        foreach (var chunk in parts.Chunk(2))
        {
            var (id, x, cuts) = ($"B{boards.Count + 1}", D(10, 0.375m), new List<Length>());
            foreach (var part in chunk)
            {
                pieces.Add(PieceOf(part, part.Id, Length.Zero, part.Length, Length.Zero, Length.Zero) with { Stock = id, FromBoard = true, X = x });
                cuts.Add(x + part.Length);
                x += part.Length + Kerf;
            }

            boards.Add(new() { Id = id, Stock = "beech-24", Material = "nosing", Length = D(2400, 96), Trim = D(10, 0.375m), Kerf = Kerf, Cost = 9.8m, Bought = true, Cuts = cuts.ToValueList(), Left = D(2400, 96) - x });
        }

        return (boards.ToValueList(), pieces);
    }

    private static ValueList<Finding> Findings() =>
    [
        new()
        {
            Check = "tilt-up",
            Severity = Severity.Stop,
            Subject = "C2",
            Message = "the case does not stand up under the ceiling: its diagonal with the base is longer than the room is high.",
            Value = 2861.4,
            Limit = 2830,
            Unit = "mm",
            Formula = "√(h² + d²) + B + 10",
            Source = "geometry",
            Standing = Standing.Arithmetic,
            Advice = "Set the base first, then stand the case on it; or stack two cases.",
            Inputs = [new("case height h", "2710", "mm"), new("depth d", "300", "mm")],
        },
        new()
        {
            Check = "shelf-sag",
            Severity = Severity.Caution,
            Subject = "C1-S2",
            Message = "the shelf sags more than the eye forgives under books.",
            Value = 1.62,
            Limit = 1.46,
            Unit = "mm",
            Formula = "5 w L⁴ / (384 E I) × (1 + k)",
            Source = "Wood Handbook FPL-GTR-282, ch. 9",
            Standing = Standing.Published,
            Advice = "Add a nosing, or make the bay narrower.",
        },
        new()
        {
            Check = "anchorage",
            Severity = Severity.NotChecked,
            Subject = "C1",
            Message = "fixing to the wall is not checked.",
            Source = "none",
            Standing = Standing.CommonPractice,
            Advice = "State what the wall is made of.",
        },
        new()
        {
            Check = "splice-strength",
            Severity = Severity.Pass,
            Subject = "C1-L/1",
            Message = "the joint carries its bending with room to spare.",
            Value = 1.1,
            Limit = 4,
            Unit = "N/mm²",
            Source = "EN 1995-1-1",
            Standing = Standing.FromMemory,
        },
    ];
}

using Casewright.Engine.Tests.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Tests.Timeline;

/// <summary>A shop with people and stations, spliced uprights, and cutting made up for the purpose, for timetable tests.</summary>
internal static class SampleShop
{
    public static readonly DateOnly Monday = new(2026, 3, 2);

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static ValueList<Person> People(int count) => Enumerable.Range(1, count).Select(i => new Person { Id = "p" + i, Name = "person " + i }).ToValueList();

    public static ValueList<Station> Stations(params int[] lengths) =>
        lengths.Select((l, i) => new Station { Id = "bench" + (i + 1), Name = "bench " + (i + 1), Length = Mm(l) }).ToValueList();

    public static Job Job(int people, ValueList<Station> stations, double? celsius = 20)
    {
        var job = SampleRuns.Job(UnitSystem.Millimetres);
        return job with
        {
            StartOn = Monday,
            Shop = job.Shop with
            {
                People = People(people),
                Stations = stations,
                Temperature = celsius,
                Clamps = [new(ClampKind.LongBar, 4), new(ClampKind.Bar, 12), new(ClampKind.Spreader, 2)],
            },
        };
    }

    public static Part Upright(string id, Length length) => new()
    {
        Id = id,
        Name = id,
        Case = "a",
        Run = "a",
        Role = PartRole.Side,
        Material = "panel",
        Length = length,
        Width = Mm(300),
        Thickness = Mm(18),
        Grain = Grain.AlongLength,
        Place = new("north", new(Length.Zero, Length.Zero, Length.Zero), Axis.Up, Axis.In, Axis.Right),
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Hidden,
        ReferenceFaceName = "inside",
        OppositeFaceName = "outside",
    };

    public static Splice Splice(string part, int number, SpliceMethod method, HoldingMethod holding) => new()
    {
        Id = $"{part}/{number}",
        Part = part,
        Position = Mm(2000),
        Method = method,
        Consumes = Length.Zero,
        Holding = holding,
        PairLetter = "a",
        MarkOffset = Mm(150),
    };

    /// <summary>Uprights with one splice each and nothing else to do: no sheets, no cases.</summary>
    public static (Casework Casework, CutPlan Cutting) Splices(
        int count, int length, SpliceMethod method = SpliceMethod.LooseTenons, HoldingMethod holding = HoldingMethod.EndClamps, int joints = 1)
    {
        var parts = Enumerable.Range(0, count).Select(i => Upright(((char)('A' + i)).ToString(), Mm(length))).ToValueList();
        var splices = parts.SelectMany(p => Enumerable.Range(1, joints).Select(j => Splice(p.Id, j, method, holding))).ToValueList();
        return (new([], parts, []), Plan([], splices));
    }

    /// <summary>A made-up cutting: a sheet for every eight parts of a material, a rip and a crosscut for every part, uprights over the sheet spliced.</summary>
    public static CutPlan Cut(Casework casework, HoldingMethod holding = HoldingMethod.EndClamps)
    {
        var sheets = new List<SheetLayout>();
        var pieces = new List<Piece>();
        foreach (var group in casework.Parts.GroupBy(p => p.Material, StringComparer.Ordinal))
        {
            foreach (var some in group.Chunk(8))
            {
                var id = "S" + (sheets.Count + 1);
                sheets.Add(new()
                {
                    Id = id,
                    Stock = "stock-" + group.Key,
                    Material = group.Key,
                    Length = Mm(2440),
                    Width = Mm(1220),
                    Trim = Length.Zero,
                    Kerf = Mm(3),
                    Cost = 80,
                    Bought = true,
                    Cuts = some.SelectMany((p, i) => new[]
                    {
                        new Cut((2 * i) + 1, CutKind.Rip, 1, Length.Zero, Mm(i), Mm(2440), Mm(i), p.Width),
                        new Cut((2 * i) + 2, CutKind.Crosscut, 2, Mm(i), Length.Zero, Mm(i), p.Width, p.Length),
                    }).ToValueList(),
                });
                pieces.AddRange(some.Select(p => new Piece
                {
                    Id = p.Id,
                    Part = p.Id,
                    Stock = id,
                    FromBoard = false,
                    Length = p.Length,
                    Width = p.Width,
                    X = Length.Zero,
                    Y = Length.Zero,
                    From = Length.Zero,
                    To = p.Length,
                }));
            }
        }

        var spliced = casework.Parts.Where(p => p.Length > Mm(2430) && p.Role is PartRole.Side or PartRole.Partition);
        return Plan(sheets.ToValueList(), spliced.Select(p => Splice(p.Id, 1, SpliceMethod.LooseTenons, holding)).ToValueList()) with { Pieces = pieces.ToValueList() };
    }

    private static CutPlan Plan(ValueList<SheetLayout> sheets, ValueList<Splice> splices) => new()
    {
        Pieces = [],
        Splices = splices,
        Sheets = sheets,
        Boards = [],
        Bounds = new() { Cost = 0, LowerBound = 0, Sheets = sheets.Count, SheetsLowerBound = sheets.Count, Proven = true },
        Materials = [],
    };
}

using Casewright.Engine.Tests.Layout;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Jobs whose uprights and backs outrun the sheets.</summary>
internal static class TallJobs
{
    /// <summary>Cases of one bay, 2700 mm or 108 in high, from 2440 mm or 96 in sheets, with a fixed shelf near 2 m.</summary>
    public static Job Wall(UnitSystem units, int cases)
    {
        var metric = units == UnitSystem.Millimetres;
        var plain = SampleRuns.Plain(
            units,
            metric ? SampleRuns.Mm(900 * cases) : SampleRuns.In(36 * cases),
            metric ? SampleRuns.Mm(2700) : SampleRuns.In(108),
            metric ? SampleRuns.Mm(320) : SampleRuns.In(12.5m));
        var job = SampleRuns.Job(units, plain with
        {
            Division = new() { Bays = cases },
            Left = new() { Kind = EndKind.Finished },
            Tiers = [new() { Interior = new() { FixedAt = [metric ? SampleRuns.Mm(1100) : SampleRuns.In(44), metric ? SampleRuns.Mm(1980) : SampleRuns.In(78)], Loose = 4 } }],
        });
        return job with { Stock = Clear(job.Stock) };
    }

    /// <summary>A desk top 3000 long on four uprights, nothing else.</summary>
    public static (Job Job, Casework Casework) Desk() => Level(PartRole.Top, "panel", 3000, 600, [0, 1000, 2000, 2982]);

    /// <summary>A crown along uprights that stand every 900, nothing else.</summary>
    public static (Job Job, Casework Casework) Crowned(int length = 5400) =>
        Level(PartRole.Crown, "crown", length, 90, [.. Enumerable.Range(0, (length / 900) + 1).Select(i => i * 900)]);

    private static (Job Job, Casework Casework) Level(PartRole role, string material, int length, int width, int[] uprights)
    {
        var job = SampleRuns.Job(UnitSystem.Millimetres, SampleRuns.Plain(UnitSystem.Millimetres, SampleRuns.Mm(6000), SampleRuns.Mm(748), SampleRuns.Mm(600)));
        Part[] parts =
        [
            Part("top", role, material, length, width, Axis.Right, Axis.Down, 0, 748),
            .. uprights.Select((x, i) => Part($"upright-{i}", PartRole.Partition, "panel", 730, 600, Axis.Up, Axis.Right, x, 0)),
        ];
        return (job, new Casework([], [.. parts], []));
    }

    private static Part Part(string id, PartRole role, string material, int length, int width, Axis along, Axis into, int x, int y) => new()
    {
        Id = id,
        Name = id,
        Case = "a",
        Run = "a",
        Role = role,
        Material = material,
        Length = SampleRuns.Mm(length),
        Width = SampleRuns.Mm(width),
        Thickness = SampleRuns.Mm(18),
        Grain = Grain.AlongLength,
        Place = new("north", new(SampleRuns.Mm(x), SampleRuns.Mm(y), SampleRuns.Mm(600)), along, Axis.In, into),
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Hidden,
        ReferenceFaceName = "upper",
        OppositeFaceName = "under",
    };

    /// <summary>The same stock without grain on backs.</summary>
    private static StockRoom Clear(StockRoom stock) => stock with
    {
        Materials = [.. stock.Materials.Select(m => m.Id == "back" ? m with { HasGrain = false } : m)],
    };
}

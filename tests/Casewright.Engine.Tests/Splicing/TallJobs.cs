using Casewright.Engine.Tests.Layout;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
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

    /// <summary>The same stock without grain on backs.</summary>
    private static StockRoom Clear(StockRoom stock) => stock with
    {
        Materials = [.. stock.Materials.Select(m => m.Id == "back" ? m with { HasGrain = false } : m)],
    };
}

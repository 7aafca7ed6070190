using Casewright.Engine.Splicing.Options;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing;

/// <summary>How far the uprights of a run are from coming whole out of the sheet that the shop usually buys.</summary>
public static class SheetReach
{
    /// <summary>How much the longest upright outruns the usual sheet, negative when it is shorter; null without uprights or stock.</summary>
    /// <exception cref="KeyNotFoundException">A part names a material that is not there.</exception>
    public static Length? Overrun(Job job, Casework casework, string runId)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        Length? most = null;
        foreach (var kind in casework.Parts.Where(p => p.Run == runId && p.IsUpright() && p.Role is PartRole.Side or PartRole.Partition).GroupBy(p => (p.Material, p.Width, p.Grain)))
        {
            var usual = new StockFit(job, job.Stock.Material(kind.Key.Material)).LongestUsualPieces(kind.Key.Width, kind.Key.Grain);
            if (usual.Count == 0)
                continue;
            var over = kind.Max(p => p.Length) - usual[0];
            most = most is { } so ? Length.Max(so, over) : over;
        }

        return most;
    }
}

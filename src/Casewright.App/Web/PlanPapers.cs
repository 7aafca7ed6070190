using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Casewright.App.Packets;
using Casewright.Model.Plans;
using Casewright.Papers.Kit;

namespace Casewright.App.Web;

/// <summary>The papers of the plans that are open, drawn once each and let go with their plan.</summary>
public sealed class PlanPapers(TimeProvider clock)
{
    private readonly ConditionalWeakTable<Plan, ConcurrentDictionary<(PaperSize Size, DateOnly Date), Lazy<PacketFiles>>> _drawn = [];

    /// <summary>The papers of a plan; drawing the first pages takes a moment.</summary>
    public PacketFiles Of(Plan plan, PaperSize size)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return _drawn.GetOrCreateValue(plan).GetOrAdd((size, today), key => new(() => new PacketFiles(plan, key.Size, key.Date))).Value;
    }
}

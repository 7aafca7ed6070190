using System.Collections.Immutable;
using Casewright.Engine.Cutting.Sawn;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;
using Casewright.Store;

namespace Casewright.App.Web.Making;

/// <summary>What the ticks of the shop say of a plan: the job to go on with once wood is cut.</summary>
public static class SawnSoFar
{
    /// <summary>The job of a plan with a record of what is ticked off at the saw.</summary>
    /// <param name="plan">The plan that was followed.</param>
    /// <param name="ticks">What is ticked off.</param>
    /// <param name="lost">Ids of pieces that are spoiled or gone.</param>
    /// <returns>The job, the same one where nothing is ticked; or a problem for every lost piece that the plan does not know.</returns>
    public static Outcome<Job> Record(Plan plan, ImmutableDictionary<string, StoredTick> ticks, IReadOnlyCollection<string> lost)
    {
        var work = ShopWork.Of(plan, ticks);
        return SawnRecord.Of(plan, [.. work.Saw.SelectMany(s => s.Items).Where(i => i.Done).Select(i => i.Id)], lost);
    }

    /// <summary>Whether something is ticked off that the job has no record of yet.</summary>
    public static bool HasMore(Plan plan, ImmutableDictionary<string, StoredTick> ticks)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return ShopWork.Of(plan, ticks).Saw.Any(s => s.Items.Any(i => i.Done) && !(s.Sheet?.Sawn ?? plan.Cutting.Boards.FirstOrDefault(b => b.Id == s.Id)?.Sawn ?? false));
    }
}

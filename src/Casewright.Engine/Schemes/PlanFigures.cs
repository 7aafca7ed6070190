using Casewright.Engine.Checks.Materials;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Schemes;

/// <summary>Figures of a plan by which schemes and nudges are compared.</summary>
internal static class PlanFigures
{
    /// <summary>Joints that are work and may be seen: covered butts of backs are neither.</summary>
    public static IEnumerable<Splice> Splices(Plan plan) => plan.Cutting.Splices.Where(s => s.Method != SpliceMethod.CoveredButt);

    /// <summary>Cost of sheets and boards bought.</summary>
    public static decimal Material(Plan plan) =>
        plan.Cutting.Sheets.Where(s => s.Bought).Sum(s => s.Cost) + plan.Cutting.Boards.Where(b => b.Bought).Sum(b => b.Cost);

    /// <summary>Working days until the last of what is bought is there.</summary>
    public static int LeadDays(Plan plan)
    {
        var stock = plan.Job.Stock;
        var bought = plan.Cutting.Sheets.Where(s => s.Bought).Select(s => s.Stock).Concat(plan.Cutting.Boards.Where(b => b.Bought).Select(b => b.Stock)).ToHashSet(StringComparer.Ordinal);
        return stock.Sheets.Where(s => bought.Contains(s.Id)).Select(s => s.LeadDays)
            .Concat(stock.Boards.Where(b => bought.Contains(b.Id)).Select(b => b.LeadDays))
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>Heights of joints across faces that show, and lines between tiers, run by run.</summary>
    public static int LinesInView(Plan plan)
    {
        var shown = plan.Parts.Where(p => p.ReferenceFace == Exposure.Shows || p.OppositeFace == Exposure.Shows).ToDictionary(p => p.Id, StringComparer.Ordinal);
        var joints = Splices(plan)
            .Where(s => shown.ContainsKey(s.Part))
            .Select(s => (shown[s.Part].Run, Height: s.SightLine ?? s.Position + shown[s.Part].Place.Origin.Y))
            .Distinct()
            .Count();
        return joints + plan.Job.Runs.Sum(r => r.Tiers.Count - 1);
    }

    /// <summary>Mass of the heaviest case without its loose shelves, in kg.</summary>
    public static double HeaviestCase(Plan plan)
    {
        var density = plan.Job.Stock.Materials.ToDictionary(m => m.Id, m => MaterialTable.For(m).Density, StringComparer.Ordinal);
        var cases = plan.Cases.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        return plan.Parts
            .Where(p => cases.Contains(p.Case) && p.Role != PartRole.AdjustableShelf)
            .GroupBy(p => p.Case, StringComparer.Ordinal)
            .Select(g => g.Sum(p => p.Length.Metres * p.Width.Metres * p.Thickness.Metres * density[p.Material]))
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>Length of all shelves.</summary>
    public static Length ShelfLength(Plan plan) => plan.Parts
        .Where(p => p.Role is PartRole.FixedShelf or PartRole.AdjustableShelf or PartRole.Bottom)
        .Aggregate(Length.Zero, (sum, p) => sum + p.Length);

    /// <summary>What the job costs in the end: the price before tax, or the cutting without an estimate.</summary>
    public static decimal Money(Plan plan) => plan.Estimate?.Net ?? plan.Cutting.Bounds.Cost;
}

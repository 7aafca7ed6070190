using Casewright.Model.Findings;
using Casewright.Model.Plans;

namespace Casewright.App.Web.Sessions;

/// <summary>What a job comes to, as the foot line tells it.</summary>
public sealed record Tally(int Sheets, int SheetsBound, bool Proven, int Boards, int Splices, int SightLines, int Stops, int Cautions, int NotChecked, decimal Material)
{
    /// <summary>The tally of a plan.</summary>
    public static Tally Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var cutting = plan.Cutting;
        return new(
            cutting.Sheets.Count,
            cutting.Bounds.SheetsLowerBound,
            cutting.Bounds.Proven,
            cutting.Boards.Count,
            cutting.Splices.Count,
            cutting.Splices.Where(s => s.SightLine is not null).Select(s => s.SightLine).Distinct().Count(),
            plan.Findings.Count(f => f.Severity == Severity.Stop),
            plan.Findings.Count(f => f.Severity == Severity.Caution),
            plan.Findings.Count(f => f.Severity == Severity.NotChecked),
            cutting.ToBuy);
    }

    /// <summary>What is proven of the number of sheets.</summary>
    public string SheetWords =>
        Sheets == SheetsBound ? "none fewer possible"
        : Proven ? "cheapest possible"
        : $"at least {SheetsBound} needed";
}

using System.Globalization;
using Casewright.Model.Plans;

namespace Casewright.App.Web;

/// <summary>A figure of the foot line.</summary>
public sealed record FootFigure(string Value, string Name, string Note);

/// <summary>The figures of the foot line that come from stages beyond cutting and checks.</summary>
public static class FootFigures
{
    /// <summary>The figures of a plan; none for a stage that the plan lacks.</summary>
    public static IEnumerable<FootFigure> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Schedule is { } schedule)
        {
            yield return new(Shown.Hours(schedule.WorkMinutes), "work", plan.Job.Shop.People.Count == 1 ? "one person" : $"{plan.Job.Shop.People.Count} people");
            yield return new(schedule.Finish.ToString("d MMM", CultureInfo.InvariantCulture), "ready", schedule.Proven ? "cure nights counted, none sooner" : "cure nights counted");
        }

        if (plan.Estimate is { } estimate)
            yield return new(Shown.Money(estimate.Gross, estimate.Currency), "price", string.Create(CultureInfo.InvariantCulture, $"{estimate.MarginShare * 100:0} % margin"));
    }
}

using Casewright.Engine.Timeline;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Engine.Timeline.Work;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Pricing;

namespace Casewright.Engine.Pricing;

/// <summary>Hands-on hours of a job by stage, from the same tasks as the timetable, whether or not they can be scheduled.</summary>
internal static class LabourTime
{
    /// <summary>Hours by stage, in the order of the work.</summary>
    public static ValueList<PhaseHours> Of(Job job, Casework casework, CutPlan cutting)
    {
        var celsius = Math.Max(job.Shop.Temperature ?? TimelineStage.UsualTemperature, job.Shop.Glue.LeastTemperature);
        var context = new WorkContext(job, casework, cutting, job.StartOn ?? job.Date ?? DateOnly.MinValue, GlueTimes.At(job.Shop.Glue, celsius));
        return WorkBreakdown.Derive(context).Tasks
            .GroupBy(t => t.Phase)
            .OrderBy(g => g.Key)
            .Select(g => new PhaseHours(g.Key, g.Sum(t => t.Minutes(job.Shop.Times) * t.Hands) / 60m))
            .ToValueList();
    }

    /// <summary>Loads to the site and days on it.</summary>
    public static (int Loads, int Days) OnSite(Job job, Casework casework, CutPlan cutting)
    {
        var context = new WorkContext(job, casework, cutting, job.StartOn ?? job.Date ?? DateOnly.MinValue, GlueTimes.At(job.Shop.Glue, Math.Max(TimelineStage.UsualTemperature, job.Shop.Glue.LeastTemperature)));
        var site = WorkBreakdown.Derive(context).Tasks.Where(t => t.Phase == Model.Timeline.WorkPhase.Install).Sum(t => t.Minutes(job.Shop.Times));
        var day = Math.Max(1, job.Shop.Hours.Day.Sum(s => (decimal)(s.To - s.From).TotalMinutes));
        return (context.Lots.Count, (int)Math.Ceiling(site / day));
    }
}

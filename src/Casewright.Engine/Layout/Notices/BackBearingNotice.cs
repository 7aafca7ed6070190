using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>Whether backs that meet on a partition bear on it far enough, each side.</summary>
internal static class BackBearingNotice
{
    /// <summary>One finding where a case of the run has several backs.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        if (!cases.Any(c => c.BackPanels.Count > 1))
            yield break;
        var bearing = (run.T / 2) - (run.Joinery.BackPlay / 2);
        var least = run.Job.Shop.Splicing.BackBearing;
        var bare = bearing < least;
        yield return new()
        {
            Check = "back-bearing",
            Severity = bare ? Severity.Stop : Severity.Pass,
            Subject = run.Run.Id,
            Message = $"Backs of run {run.Run.Name} meet on partitions and bear {LengthFormat.Usual(bearing, run.Job.Units)} each.",
            Value = (double)bearing.Millimetres,
            Limit = (double)least.Millimetres,
            Unit = "mm",
            Formula = "t/2 − p/2",
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = bare ? "Give each case fewer bays, use wider sheets for the backs, or thicken the partitions." : "",
            Inputs = [LayoutNotices.Input("panel thickness t", run.T), LayoutNotices.Input("play of the back p", run.Joinery.BackPlay)],
        };
    }
}

using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>Whether a run meets a wall with a filler that can be scribed.</summary>
internal static class FillerNotice
{
    /// <summary>One finding for each end at a wall.</summary>
    public static IEnumerable<Finding> Of(RunFigures run) =>
        new[] { (End: run.Left, Side: "left"), (End: run.Right, Side: "right") }
            .Where(x => x.End.Kind == EndKind.Wall)
            .Select(x => At(run, x.End, x.Side));

    private static Finding At(RunFigures run, EndFigures end, string side)
    {
        var missing = end.Filler == Length.Zero;
        return new()
        {
            Check = "filler-at-wall",
            Severity = missing ? Severity.Caution : Severity.Pass,
            Subject = run.Run.Id,
            Message = missing
                ? $"Run {run.Run.Name} meets the wall on its {side} without a filler; no wall is straight and plumb."
                : $"Run {run.Run.Name} meets the wall on its {side} with a filler {LengthFormat.Usual(end.Filler, run.Job.Units)} wide.",
            Value = (double)end.Filler.Millimetres,
            Unit = "mm",
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = missing ? "Give the end a filler of 20 to 40 mm (3/4 to 1 1/2 in) and scribe it to the wall." : "",
        };
    }
}

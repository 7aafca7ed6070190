using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>Whether the crown of a run that is drawn up to the ceiling reaches it.</summary>
internal static class CeilingNotice
{
    /// <summary>One finding for a run with a crown and a gap under the ceiling.</summary>
    public static IEnumerable<Finding> Of(RunFigures run)
    {
        if (run.Crown is not { } crown || run.Run.Head.Gap is null)
            yield break;
        var left = run.Wall.Height - (run.Top - run.Run.Head.CrownLap + crown.BoardWidth!.Value);
        var open = left > Length.Zero;
        yield return new()
        {
            Check = "crown-at-ceiling",
            Severity = open ? Severity.Caution : Severity.Pass,
            Subject = run.Run.Id,
            Message = open
                ? $"The crown of run {run.Run.Name} stops {LengthFormat.Usual(left, run.Job.Units)} under the lowest ceiling."
                : $"The crown of run {run.Run.Name} meets the lowest ceiling.",
            Value = (double)left.Millimetres,
            Limit = 0,
            Unit = "mm",
            Formula = "ceiling − (top − lap + crown)",
            Source = "Plain arithmetic",
            Standing = Standing.Arithmetic,
            Advice = open ? "Use a wider crown, less lap or a smaller gap, unless the open line is wanted." : "",
        };
    }
}

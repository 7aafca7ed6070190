using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What becomes of the cornice over a run: cut back to it, or kept clear of.</summary>
internal static class CorniceNotice
{
    /// <summary>One finding for a run whose wall has a cornice that its cases reach, or that stays.</summary>
    public static IEnumerable<Finding> Of(RunFigures run)
    {
        if (run.Wall.Survey?.Cornice is not { } cornice)
            yield break;
        string Say(Length length) => LengthFormat.Usual(length, run.Job.Units);
        var lower = run.Wall.Height - cornice.Height;
        var reaches = run.Top > lower;
        var meets = reaches && cornice.Stays;
        yield return new()
        {
            Check = "cornice",
            Severity = meets ? Severity.Stop : Severity.Pass,
            Subject = run.Run.Id,
            Message = (reaches, meets) switch
            {
                (false, _) => $"Run {run.Run.Name} ends at {Say(run.Top)}, under the cornice at {Say(lower)}.",
                (_, false) => $"The cornice is cut back to run {run.Run.Name}, from {Say(run.FaceLeft)} to {Say(run.FaceRight)} along the wall.",
                _ => $"The cornice stays, its lower edge at {Say(lower)} and {Say(cornice.Projection)} out: the cases of run {run.Run.Name} end at {Say(run.Top)} and meet it.",
            },
            Value = (double)run.Top.Millimetres,
            Limit = (double)lower.Millimetres,
            Unit = "mm",
            Formula = "top of the cases ≤ ceiling − cornice",
            Source = "Plain geometry",
            Standing = Standing.Arithmetic,
            Advice = meets ? "End the cases under the cornice, or have it cut back to the run and returned." : "",
        };
    }
}

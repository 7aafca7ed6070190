using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>Whether tall cases have nailers, and high enough ones, to be fixed to the studs.</summary>
internal static class NailerNotice
{
    /// <summary>Least height of a nailer (75 mm, 3 in; common practice, no source).</summary>
    public static Length Least { get; } = Length.FromMillimetres(75);

    /// <summary>One finding for a run that has nailers or is tall enough to need them.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        var tallest = cases.Max(c => c.YEnd);
        var units = run.Job.Units;
        if (run.Run.Nailers is { } nailers)
        {
            var low = nailers.Height < Least;
            yield return Make(run, low ? Severity.Caution : Severity.Pass, $"Nailers of run {run.Run.Name} are {LengthFormat.Usual(nailers.Height, units)} high.", nailers.Height, low ? "Make nailers 75 to 100 mm (3 to 4 in) high, so that two screws fit over one another." : "");
        }
        else if (tallest >= Nailers.SecondFrom)
        {
            yield return Make(run, Severity.Caution, $"Run {run.Run.Name} is {LengthFormat.Usual(tallest, units)} high and has no nailers to fix it to the studs.", Length.Zero, "Add nailers, or name another fixing into the structure: a tall case that is not fixed can tip over.");
        }
    }

    private static Finding Make(RunFigures run, Severity severity, string message, Length height, string advice) => new()
    {
        Check = "nailers",
        Severity = severity,
        Subject = run.Run.Id,
        Message = message,
        Value = (double)height.Millimetres,
        Limit = (double)Least.Millimetres,
        Unit = "mm",
        Source = LayoutNotices.Practice,
        Standing = Standing.CommonPractice,
        Advice = advice,
    };
}

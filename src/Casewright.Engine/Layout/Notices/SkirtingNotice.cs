using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What becomes of the skirting behind a run: cut back to it, or stood over.</summary>
internal static class SkirtingNotice
{
    /// <summary>One finding for a run on the floor whose wall has a skirting.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        var lowest = cases.Where(c => c.Tier.Index == 0).ToList();
        if (run.Run.Base.Kind == BaseKind.Hung || run.Wall.Survey?.Skirting is not { } skirting || lowest.Count == 0)
            yield break;
        var units = run.Job.Units;
        string Say(Length length) => LengthFormat.Usual(length, units);
        var under = lowest.Min(c => c.BottomUnder);
        var meets = skirting.Stays && under < skirting.Height;
        var (message, advice) = (skirting.Stays, meets) switch
        {
            (false, _) => ($"The skirting is cut back to run {run.Run.Name}, from {Say(run.FaceLeft)} to {Say(run.FaceRight)} along the wall.", "Mark both cuts plumb before the base is set; keep the pieces for the ends."),
            (true, false) => ($"The skirting behind run {run.Run.Name} stays, {Say(skirting.Height)} high; bottoms lie at {Say(under)}. {Set(run, Say)}", ""),
            _ => ($"The skirting behind run {run.Run.Name} stays and is {Say(skirting.Height)} high: bottoms at {Say(under)} and backs would meet it.", "Make the base as high as the skirting, or have the skirting cut back to the run."),
        };
        yield return new()
        {
            Check = "skirting",
            Severity = meets ? Severity.Stop : Severity.Pass,
            Subject = run.Run.Id,
            Message = message,
            Value = (double)under.Millimetres,
            Limit = skirting.Stays ? (double)skirting.Height.Millimetres : null,
            Unit = "mm",
            Formula = skirting.Stays ? "underside of the bottoms ≥ height of the skirting" : "",
            Source = "Plain geometry",
            Standing = Standing.Arithmetic,
            Advice = advice,
        };
    }

    private static string Set(RunFigures run, Func<Length, string> say) => run.SidesToFloor
        ? "Sides are notched round it."
        : $"The ladder base stands {say(run.SkirtingRoom)} off the wall.";
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What is lost or left under a sloping ceiling: shelves left out, tops lowered, an open gap, bevels that a saw does not tilt to.</summary>
internal static class SlopeNotice
{
    /// <summary>The findings of a run's raked cases, in their order.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        CaseFigures[] raked = [.. cases.Where(c => c.Rake is not null)];
        if (raked.Length == 0)
            return [];
        return
        [
            .. raked.SelectMany(LeftOut),
            .. raked.Where(c => c.Rake!.Lowered > Length.Zero).Select(Lowered),
            .. Bevels(run, raked),
            .. Gap(run),
        ];
    }

    private static IEnumerable<Finding> LeftOut(CaseFigures box)
    {
        var rake = box.Rake!;
        for (var shelf = 0; shelf < box.Fixed.Count; shelf++)
        {
            for (var bay = 0; bay < box.Bays; bay++)
            {
                if (RakedShelves.Reach(box, shelf, bay) != ShelfReach.LeftOut)
                    continue;
                var usable = Length.Max(Length.Zero, RakedShelves.Usable(box, rake, shelf, bay));
                var units = box.Run.Job.Units;
                var where = box.Bays == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" in bay {bay + 1}");
                yield return Make(
                    "shelf-under-slope",
                    box.Id,
                    string.Create(CultureInfo.InvariantCulture, $"Fixed shelf {shelf + 1} of case {box.Number} is left out{where}: the slope leaves {LengthFormat.Usual(usable, units)} of it."),
                    usable,
                    RakedShelves.Shortest,
                    "usable width ≥ shortest shelf",
                    "Lower the shelf, or give the bay fewer of them.",
                    Standing.CommonPractice);
            }
        }
    }

    private static Finding Lowered(CaseFigures box) => Make(
        "rake-lowered",
        box.Id,
        $"The raked top of case {box.Number} lies {LengthFormat.Usual(box.Rake!.Lowered, box.Run.Job.Units)} lower than the room asked for under the slope.",
        box.Rake.Lowered,
        Length.Zero,
        "slope − gap − top",
        "The ceiling breaks within the case, or was read lower than stated: part the cases where the slope begins, or measure the slope again.",
        Standing.Arithmetic);

    /// <summary>A shelf cut short has an end 90° − θ off square.</summary>
    private static IEnumerable<Finding> Bevels(RunFigures run, CaseFigures[] raked)
    {
        var ends = raked.Where(c => Enumerable.Range(0, c.Fixed.Count).Any(s => Enumerable.Range(0, c.Bays).Any(b => RakedShelves.Reach(c, s, b) == ShelfReach.CutShort))).ToArray();
        if (ends.Length == 0)
            yield break;
        var flattest = ends.Min(c => c.Rake!.Slope.Degrees);
        if (90 - flattest <= SlopeProblems.Steepest)
            yield break;
        yield return new()
        {
            Check = "steep-bevel",
            Severity = Severity.Caution,
            Subject = run.Run.Id,
            Message = string.Create(CultureInfo.InvariantCulture, $"The ends of shelves that the slope cuts short in run {run.Run.Name} are bevelled up to {90 - flattest:0.0}° off square, more than saws tilt."),
            Value = 90 - flattest,
            Limit = SlopeProblems.Steepest,
            Unit = "°",
            Formula = "90° − θ",
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = "Saw them with the shelf standing on its end against a tall fence, the blade tilted by the slope's own angle, or with a wedge under the track. Clamp the work and keep hands clear.",
        };
    }

    private static IEnumerable<Finding> Gap(RunFigures run)
    {
        var gap = run.Run.Head.SlopeGap ?? run.Run.Head.Gap ?? Length.Zero;
        if (gap > Length.Zero && run.SlopeFiller is null)
            yield return Make("slope-gap", run.Run.Id, $"The gap of {LengthFormat.Usual(gap, run.Job.Units)} between the raked tops of run {run.Run.Name} and the ceiling stays open.", gap, Length.Zero, "gap, plumb", "Name a material for head.slopeFiller, unless the open line is wanted.", Standing.Arithmetic);
    }

    private static Finding Make(string check, string subject, string message, Length value, Length limit, string formula, string advice, Standing standing) => new()
    {
        Check = check,
        Severity = Severity.Caution,
        Subject = subject,
        Message = message,
        Value = (double)value.Millimetres,
        Limit = (double)limit.Millimetres,
        Unit = "mm",
        Formula = formula,
        Source = standing == Standing.Arithmetic ? "Plain arithmetic" : LayoutNotices.Practice,
        Standing = standing,
        Advice = advice,
    };
}

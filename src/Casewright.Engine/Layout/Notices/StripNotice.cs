using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Notices;

/// <summary>Whether shelves are just too long for one more from each full-length strip: L' = (u + k)/(n + 1) − k.</summary>
internal static class StripNotice
{
    /// <summary>One finding for each length of shelf and size of sheet where a little less would give one more.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<Part> parts)
    {
        var lengths = parts
            .Where(p => p.Role is PartRole.FixedShelf or PartRole.AdjustableShelf)
            .Select(p => (p.Role, p.Length))
            .Distinct()
            .ToArray();
        var usable = UsableSheets.Of(run.Job, run.Panel).LengthsAlong().Distinct().ToArray();
        return lengths.SelectMany(l => usable.SelectMany(u => Compare(run, l.Role, l.Length, u)));
    }

    private static IEnumerable<Finding> Compare(RunFigures run, PartRole role, Length shelf, Length usable)
    {
        var kerf = run.Job.Shop.Saw.Kerf;
        var now = (usable + kerf) / (shelf + kerf);
        if (now < 1)
            yield break;
        var better = ((usable + kerf) / (now + 1)) - kerf;
        var over = shelf - better;
        if (over <= Length.Zero || over > run.Job.Shop.Checks.JustOver)
            yield break;
        var units = run.Job.Units;
        yield return new()
        {
            Check = "bay-just-over",
            Severity = Severity.Caution,
            Subject = run.Run.Id,
            Message = string.Create(CultureInfo.InvariantCulture, $"{(role == PartRole.FixedShelf ? "Fixed" : "Loose")} shelves of run {run.Run.Name} are {LengthFormat.Usual(over, units)} too long for {now + 1} from a strip of {LengthFormat.Usual(usable, units)}; {now} come out of it."),
            Value = (double)shelf.Millimetres,
            Limit = (double)better.Millimetres,
            Unit = "mm",
            Formula = "L' = (u + k)/(n + 1) − k",
            Source = LayoutNotices.Practice,
            Standing = Standing.Arithmetic,
            Advice = $"Compare with bays {LengthFormat.Usual(over, units)} narrower.",
            Inputs = [LayoutNotices.Input("usable strip u", usable), LayoutNotices.Input("kerf k", kerf), LayoutNotices.Input("shelf L", shelf)],
        };
    }
}

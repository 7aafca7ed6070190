using Casewright.Engine.Layout.Notices;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>
/// The stool of a window over the tops of cases below it. A stool is taken as 32 mm (1 1/4 in) thick under the lower edge of the window, and as
/// long as the casing is wide (common practice, no source).
/// </summary>
internal static class StoolsOverTops
{
    /// <summary>One finding for each case whose top lies under a stool.</summary>
    public static IEnumerable<Finding> Find(Job job, Casework casework) =>
        from wall in job.Walls
        from window in wall.Survey?.Features ?? []
        where window is { Kind: FeatureKind.Window, Moves: false } && window.Stool > Length.Zero
        from box in casework.Cases
        where box.Wall == wall.Id && box.X < window.OuterRight && box.X + box.Width > window.OuterLeft && box.Y < window.Y
        let top = Top(box, casework)
        where top <= window.Y
        select Of(job, box, window, top);

    /// <summary>Thickness of a stool: 32 mm, in inches 1 1/4.</summary>
    public static Length Thickness(UnitSystem units) => units == UnitSystem.Inches ? Length.FromInches(1, 1, 4) : Length.FromMillimetres(32);

    /// <summary>Upper edge of the case, or of a counter on it.</summary>
    private static Length Top(CaseBox box, Casework casework) => casework.Parts
        .Where(p => p.Role == PartRole.Counter && p.Run == box.Run)
        .Select(p => (Low: p.LowCorner, High: p.HighCorner))
        .Where(p => p.Low.X < box.X + box.Width && p.High.X > box.X && p.Low.Y >= box.Y + box.Height)
        .Select(p => p.High.Y)
        .Append(box.Y + box.Height)
        .Max();

    private static Finding Of(Job job, CaseBox box, WallFeature window, Length top)
    {
        string Say(Length length) => LengthFormat.Usual(length, job.Units);
        var under = window.Y - Thickness(job.Units);
        var meets = top > under;
        return new()
        {
            Check = "window-stool",
            Severity = meets ? Severity.Caution : Severity.Pass,
            Subject = box.Id,
            Message = $"The top of case {box.Id} lies at {Say(top)}; the stool of {window.Name}, {Say(window.Stool)} out from the wall, ends at about {Say(under)} below.",
            Value = (double)top.Millimetres,
            Limit = (double)under.Millimetres,
            Unit = "mm",
            Formula = "top ≤ lower edge of the window − thickness of the stool",
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = meets ? $"Lower the run, have the stool cut back flush, or cut the top out round it, {Say(window.Stool)} deep." : "",
        };
    }
}

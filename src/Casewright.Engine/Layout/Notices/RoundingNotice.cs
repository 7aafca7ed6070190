using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Notices;

/// <summary>
/// Every finished part is rounded once, so alike cases are all built a little wide, or all a little narrow. Over a long run that adds
/// up; the scribe stock at the walls has to take it.
/// </summary>
internal static class RoundingNotice
{
    /// <summary>One finding where the cases as built differ from the run.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases, IReadOnlyList<Part> parts)
    {
        var lowest = cases.Where(c => c.Tier.Index == 0).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var drift = parts
            .Where(p => p.Role == PartRole.Bottom && lowest.Contains(p.Case))
            .Select(p => p.Derivations[0])
            .Aggregate(Length.Zero, (sum, d) => sum + (d.Result - d.Exact));
        if (drift == Length.Zero)
            yield break;
        var room = run.Step + (run.Joinery.ScribeAllowance * new[] { run.Left, run.Right }.Count(e => e.Kind == EndKind.Wall && e.Filler > Length.Zero));
        var over = drift.Abs() > room;
        var units = run.Job.Units;
        yield return new()
        {
            Check = "rounding-adds-up",
            Severity = over ? Severity.Caution : Severity.Pass,
            Subject = run.Run.Id,
            Message = $"Cut to whole steps of {LengthFormat.Usual(run.Step, units)}, the cases of run {run.Run.Name} come out {LengthFormat.Usual(drift.Abs(), units)} {(drift > Length.Zero ? "wider" : "narrower")} in all than drawn.",
            Value = (double)drift.Abs().Millimetres,
            Limit = (double)room.Millimetres,
            Unit = "mm",
            Formula = "Σ (rounded − exact) ≤ scribe stock at the walls + one step",
            Source = LayoutNotices.Practice,
            Standing = Standing.Arithmetic,
            Advice = over ? "Choose the width of the bays so that the bottom of a case is a whole number of steps, or leave a wider filler." : "",
        };
    }
}

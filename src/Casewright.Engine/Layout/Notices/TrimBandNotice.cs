using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;

namespace Casewright.Engine.Layout.Notices;

/// <summary>A trim band that has no joint to cover is left out, and this says so.</summary>
internal static class TrimBandNotice
{
    /// <summary>One finding for a run whose trim band covers nothing.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        if (run.Band is null || cases.Any(c => c.BandHeight is not null))
            yield break;
        yield return new()
        {
            Check = "trim-band",
            Severity = Severity.Caution,
            Subject = run.Run.Id,
            Message = $"Run {run.Run.Name} asks for a trim band, but its backs need no joint; the band is left out.",
            Source = "Plain arithmetic",
            Standing = Standing.Arithmetic,
            Advice = "Take the trim band off the design, or leave it for a change of stock.",
        };
    }
}

using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Design;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Seasons;

/// <summary>Swelling of a run of panels between two walls.</summary>
public sealed class RunMovementCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "run-movement",
        "Seasonal change of length of each run that stands between two walls.",
        "ΔL = L · 0.0002 per 10 % of relative humidity",
        "Panel trade figure for plywood (read second-hand); board swells more; the limit is our judgement",
        Standing.Published)
    {
        Limits = [new("change that fillers hide", l => (double)l.RunMovement.Millimetres, 2, "mm", "our judgement", Standing.Judgement)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Runs.Where(r => r.Left.Kind == EndKind.Wall && r.Right.Kind == EndKind.Wall).Select(r => One(context, r));
    }

    // A tenth of a micrometre: less than any floating point error of a run, far less than anyone measures.
    private const double Tenth = 1e-7;

    private Finding One(CheckContext context, Run run)
    {
        if (SeasonalMoisture.Of(context.Job.Site) is not { } season)
            return NotChecked(context, run.Id, "the room's temperature and its driest and dampest humidity are not known.", "Give them; 20 °C (68 °F), 35 % and 55 % are usual for heated rooms.");
        var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
        var width = cases.Count == 0 ? 0 : (cases.Max(c => c.X + c.Width) - cases.Min(c => c.X)).Metres;
        var change = Moisture.PlywoodChange(width, season.HumiditySwing);
        var limit = context.Limits.RunMovement.Metres;
        var say = context.Say;
        return Report(
            context,
            change > limit + Tenth ? Severity.Caution : Severity.Pass,
            run.Id,
            $"{run.Name} is {say.Size(width)} long between walls and moves {say.Fine(change)} between seasons; {say.Fine(limit)} is hidden by its fillers.",
            new(change * 1000, limit * 1000, "mm", []),
            $"Leave a reveal or an unglued overlap of {say.AtLeast(change)} at one filler instead of a tight butt.");
    }
}

using Casewright.Model.Design;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Room for the finish between loose shelves and uprights.</summary>
public sealed class FinishFilmCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "finish-film",
        "Side play left to loose shelves when both ends and both uprights are finished.",
        "play − 4 film ≥ least play",
        "Arithmetic; the play is common practice",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("film on one face", l => (double)l.FilmThickness.Millimetres, 0.1, "mm", "common practice, no source", Standing.CommonPractice),
            new("least play", l => (double)l.LeastShelfPlay.Millimetres, 1, "mm", "our judgement", Standing.Judgement),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Runs.Where(r => r.Tiers.Any(t => t.Interior.Loose > 0)).Select(r => One(context, r));
    }

    private Finding One(CheckContext context, Run run)
    {
        var (say, limits) = (context.Say, context.Limits);
        var left = run.Joinery.ShelfPlay - (4 * limits.FilmThickness);
        return Report(
            context,
            left < limits.LeastShelfPlay ? Severity.Caution : Severity.Pass,
            run.Id,
            $"Loose shelves of {run.Name} keep {say.Size(left)} of play when finished; {say.Size(limits.LeastShelfPlay)} is wanted. Mask dados and pin holes before spraying.",
            new((double)left.Millimetres, (double)limits.LeastShelfPlay.Millimetres, "mm", []),
            $"Give loose shelves {say.AtLeast((limits.LeastShelfPlay + (4 * limits.FilmThickness)).Metres)} of side play.");
    }
}

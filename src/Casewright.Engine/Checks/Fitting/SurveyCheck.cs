using Casewright.Engine.Surveying;
using Casewright.Model.Findings;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Readings of each wall that the plan does not hold.</summary>
public sealed class SurveyCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "survey-readings",
        "Which readings of each wall nobody has taken, and what they decide.",
        "",
        "Common practice: widths at three heights and two depths, plumb of both ends at four heights, floor every 600 mm from a level line",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Walls.SelectMany(wall => wall.Survey is null ? [Unsurveyed(context, wall)] : Surveyed(context, wall));
    }

    private Finding Unsurveyed(CheckContext context, Wall wall) => NotChecked(
        context,
        wall.Id,
        $"of {wall.Name} the plan holds the tightest width and the lowest ceiling; plumb, bow, floor level and outlets are not in it.",
        "Check widths at floor, middle and ceiling, front and back, against the plumb of both ends; set the base from the highest floor point; mark outlets and switches on the backs.");

    private IEnumerable<Finding> Surveyed(CheckContext context, Wall wall)
    {
        var missing = MissingReading.Of(context.Job, wall).ToList();
        return missing.Count == 0
            ? [Rule(context, Severity.Pass, wall.Id, $"The survey of {wall.Name} is complete.")]
            : missing.Select(m => NotChecked(context, wall.Id, $"of {wall.Name} nobody has read {m.What}.", $"It decides {m.Decides}."));
    }
}

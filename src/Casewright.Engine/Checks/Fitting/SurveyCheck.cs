using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Readings of each wall that the plan does not hold.</summary>
public sealed class SurveyCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "survey-readings",
        "Whether the plan knows more of each wall than its tightest width and its lowest ceiling.",
        "",
        "Common practice: widths at three heights and two depths, plumb of both ends at four heights, floor every 600 mm from a level line",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Walls.Select(wall => NotChecked(
            context,
            wall.Id,
            $"of {wall.Name} the plan holds the tightest width and the lowest ceiling; plumb, bow, floor level and outlets are not in it.",
            "Check widths at floor, middle and ceiling, front and back, against the plumb of both ends; set the base from the highest floor point; mark outlets and switches on the backs."));
    }
}

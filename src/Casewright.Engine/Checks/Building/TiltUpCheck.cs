using Casewright.Engine.Access;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>Standing each case up from lying under the ceiling.</summary>
public sealed class TiltUpCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "tilt-up",
        "Headroom needed to tilt each case up from lying on the floor.",
        "√(h² + d²) + play ≤ ceiling; from its face with a toe recess max(√(h² + (d − r)²), √((h − k)² + d²))",
        "Geometry: largest height of the end outline while it turns",
        Standing.Arithmetic)
    {
        Limits = [new("play", l => (double)l.TiltPlay.Millimetres, 10, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    private static ToeRecess? Toe(Run run, CaseBox box) => run.Base is { Kind: BaseKind.SidesToFloor } foot && box.Tier == 0 && foot.Setback > Length.Zero
        ? new(foot.Setback.Metres, foot.Height.Metres)
        : null;

    private Finding One(CheckContext context, CaseBox box)
    {
        if (context.Run(box.Run) is not { } run || context.Job.Walls.FirstOrDefault(w => w.Id == box.Wall) is not { } wall)
            return NotChecked(context, box.Id, "the ceiling height at this case is not known.", "Measure the lowest ceiling above the highest floor point.");
        var (say, play) = (context.Say, context.Limits.TiltPlay.Metres);
        var d = box.Depth.Metres;
        var ends = Headroom.Of(box, wall);
        var end = ends.MaxBy(e => TiltUp.Headroom(e.Height, d) - e.Ceiling);
        var (h, ceiling) = (end.Height, end.Ceiling);
        var need = TiltUp.Headroom(h, d) + play;
        var inputs = new Figures(need * 1000, ceiling * 1000, "mm", [new("height of the case", Say.Number(h * 1000, 1), "mm"), new("depth", Say.Number(d * 1000, 1), "mm")]);
        var found = $"Case {box.Id} needs {say.Size(need)}{end.Where} to be tilted up; the ceiling is at {say.Size(ceiling)}{(ends.Count > 1 ? " there" : "")}.";
        if (need <= ceiling)
            return Report(context, Severity.Pass, box.Id, found, inputs);
        if (Toe(run, box) is { } toe && ends.All(e => TiltUp.HeadroomFromFace(e.Height, d, toe) + play <= e.Ceiling))
            return Report(context, Severity.Caution, box.Id, found, inputs, "It goes up only from lying on its face, rolled over the toe recess: bring it in that way round.");
        var lower = box.Y == Length.Zero ? " A separate base set first takes its height off the case." : "";
        return Report(context, Severity.Stop, box.Id, found, inputs, $"Make the case {say.AtMost(TiltUp.TallestUnder(ceiling - play, d))} high or less{end.Where}, stack two cases, or assemble it standing.{lower}");
    }
}

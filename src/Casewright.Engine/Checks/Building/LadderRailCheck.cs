using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Splices;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>A library ladder on its rail: pull on the brackets, their distance, joints near them.</summary>
public sealed class LadderRailCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "ladder-rail",
        "Pull of a library ladder on the brackets of its rail, their distance from each other, and joints of uprights near the rail.",
        "F = m g · reach/height ≤ the pull for one bracket; brackets not farther apart than the limit; joint to rail ≥ the shop's clearance",
        "Moments about the ladder's foot; both limits are common practice, no source",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("pull for one bracket", l => l.LadderBracketForce, 1000, "N", "common practice, no source", Standing.CommonPractice),
            new("distance of brackets", l => (double)l.LadderBracketsApart.Millimetres, 900, "mm", "common practice, no source", Standing.CommonPractice),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var run in context.Job.Runs)
        {
            if (run.Ladder is { } ladder)
                yield return One(context, run, ladder);
        }
    }

    /// <summary>Level pull in N on the rail; one bracket may have to take all of it.</summary>
    public static double Pull(LadderRail ladder)
    {
        ArgumentNullException.ThrowIfNull(ladder);
        var height = ladder.Height.Metres;
        var reach = ladder.Reach?.Metres ?? (height / Math.Tan(75 * Math.PI / 180));
        return TipOver.LadderPull(ladder.Mass * Shelf.Gravity, reach, height);
    }

    private Finding One(CheckContext context, Run run, LadderRail ladder)
    {
        var limits = context.Limits;
        var (say, pull, clear) = (context.Say, Pull(ladder), context.Job.Shop.Splicing.ClearOfHardware);
        var apart = Apart(context, run, ladder.Height);
        var figures = new Figures(pull, limits.LadderBracketForce, "N",
        [
            new("person, load and ladder", Say.Number(ladder.Mass), "kg"),
            new("height of the rail", Say.Number(ladder.Height.Metres * 1000), "mm"),
            new("farthest from bracket to bracket", Say.Number(apart.Metres * 1000), "mm"),
        ]);
        var joints = SplicedPart.All(context).Where(s => Near(s, run, ladder.Height, clear)).ToList();
        var found = $"The ladder of {run.Name} pulls on its rail with {say.Force(pull)}, which one bracket may have to take alone; brackets stand {say.Size(apart)} apart at most.";
        if (joints.Count > 0)
            return Report(context, Severity.Stop, run.Id, $"{found} The rail lies on joints of {string.Join(", ", joints.Select(s => s.Part.Id).Distinct(StringComparer.Ordinal))}.", figures, Elsewhere(context, run, ladder.Height, clear));
        if (pull > limits.LadderBracketForce)
            return Report(context, Severity.Stop, run.Id, found, figures, $"Let the ladder's foot stand out {say.AtMost(limits.LadderBracketForce * ladder.Height.Metres / (ladder.Mass * Shelf.Gravity))} at most, or use brackets and blocking rated for that pull, as their maker says.");
        return apart > limits.LadderBracketsApart
            ? Report(context, Severity.Caution, run.Id, found, figures, $"Put a bracket every {say.AtMost(limits.LadderBracketsApart.Metres)} or less, on blocking where there is no upright.")
            : Report(context, Severity.Pass, run.Id, found, figures);
    }

    private static bool Near(SplicedPart joint, Run run, Length height, Length clear) =>
        joint.Part.Run == run.Id && joint.Upright && joint.Carries && (joint.Height - height).Abs() < clear;

    // The nearest heights below and above that keep clear of every joint.
    private static string Elsewhere(CheckContext context, Run run, Length height, Length clear)
    {
        var joints = SplicedPart.All(context).ToList();
        var (lower, upper) = (height, height);
        while (joints.Where(s => Near(s, run, lower, clear)).ToList() is { Count: > 0 } below)
            lower = below.Min(s => s.Height) - clear;
        while (joints.Where(s => Near(s, run, upper, clear)).ToList() is { Count: > 0 } above)
            upper = above.Max(s => s.Height) + clear;
        return $"Set the rail at {context.Say.AtMost(lower.Metres)} or at {context.Say.AtLeast(upper.Metres)}, or move the joints: {context.Say.AtLeast(clear.Metres)} or more must lie between.";
    }

    // From middle to middle of the uprights that reach the height of the rail; the whole width where there are none.
    private static Length Apart(CheckContext context, Run run, Length height)
    {
        var at = context.PartsOfRun(run.Id).Where(p => p.Role is PartRole.Side or PartRole.Partition)
            .Select(ShelfReader.Box).Where(box => box.Low.Y <= height && box.High.Y >= height)
            .Select(box => (box.Low.X + box.High.X) / 2).Distinct().Order().ToList();
        var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
        if (at.Count < 2)
            return cases.Count == 0 ? Length.Zero : cases.Max(c => c.X + c.Width) - cases.Min(c => c.X);
        return at.Zip(at.Skip(1), (a, b) => b - a).Max();
    }
}

using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Runs inside the tightest width of their wall.</summary>
public sealed class RunWidthCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "run-in-tightest-width",
        "Whether every case of a run stands inside the tightest width of its wall, with room for fillers.",
        "0 ≤ left of the first case, right of the last case ≤ tightest width",
        "Arithmetic; the wall's width is the tightest by its definition",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var run in context.Job.Runs)
        {
            var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
            if (cases.Count > 0 && context.Job.Walls.FirstOrDefault(w => w.Id == run.Wall) is { } wall)
                yield return One(context, run, wall, cases.Min(c => c.X), cases.Max(c => c.X + c.Width));
        }
    }

    private Finding One(CheckContext context, Run run, Wall wall, Length left, Length right)
    {
        var say = context.Say;
        var least = run.Left.Kind == EndKind.Wall ? run.Left.Filler : Length.Zero;
        var most = wall.Width - (run.Right.Kind == EndKind.Wall ? run.Right.Filler : Length.Zero);
        var outside = left < least || right > most;
        return Report(
            context,
            outside ? Severity.Stop : Severity.Pass,
            run.Id,
            $"{run.Name} takes {say.Size(right - left)} of {say.Size(wall.Width)}, from {say.Size(left)} to {say.Size(right)}.",
            new((double)right.Millimetres, (double)most.Millimetres, "mm", []),
            outside ? Advice(say, right - left, most - least, left - least) : "");
    }

    private static string Advice(Say say, Length taken, Length room, Length leftOver)
    {
        var how = taken > room
            ? $"Make the cases {say.AtLeast((taken - room).Metres)} narrower in all, or the fillers slimmer"
            : leftOver < Length.Zero
                ? $"Move the run {say.AtLeast(-leftOver.Metres)} to the right"
                : $"Move the run {say.AtLeast((leftOver + taken - room).Metres)} to the left";
        return how + "; check the width at floor, middle and ceiling, front and back.";
    }
}

using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Access;

/// <summary>Getting every case in and up: through each narrow place between the van and the room, and up under the ceiling; with what to do where it fails.</summary>
public static class AccessStage
{
    /// <summary>Lowest case that is worth building as one of several: 600 mm, our judgement. Below it the case is glued up in the room.</summary>
    public static Length LowestCase { get; } = Length.FromMillimetres(600);

    /// <summary>Every case of a job, in its order.</summary>
    public static ValueList<CaseAccess> Study(Job job, Casework casework)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var context = new CheckContext(job, casework, null);
        return casework.Cases.Select(box => Of(context, box)).ToValueList();
    }

    private static CaseAccess Of(CheckContext context, CaseBox box)
    {
        var run = context.Run(box.Run)!;
        var wall = context.Job.Walls.First(w => w.Id == box.Wall);
        var mass = UprightLoads.OwnMass(context, box) - context.PartsOf(box).Where(p => p.Role == PartRole.AdjustableShelf).Sum(context.Mass);
        var standing = StandingUp.Ways(box, run.Base, wall, context.Limits).ToValueList();
        var passages = context.Job.Site.Route?.Select(p => PassageGeometry.Fit(p, Sizes(box, context))).ToValueList();
        return new()
        {
            Case = box,
            Mass = mass,
            People = Math.Max(1, (int)Math.Ceiling(mass / context.Limits.MassPerPerson)),
            Standing = standing,
            Passages = passages,
            Advice = Advice(context, box, run, wall, standing, passages).ToValueList(),
        };
    }

    private static double[] Sizes(CaseBox box, CheckContext context)
    {
        var play = 2 * context.Limits.CarryPlay.Metres;
        return [box.Height.Metres + play, box.Width.Metres + play, box.Depth.Metres + play];
    }

    private static IEnumerable<string> Advice(
        CheckContext context, CaseBox box, Run run, Wall wall, ValueList<StandingUp> standing, ValueList<PassageFit>? passages)
    {
        var (say, play) = (context.Say, context.Limits.TiltPlay.Metres);
        var lowest = box.Height.Metres;
        if (!standing.Any(s => s.Passes))
        {
            var tallest = Headroom.Of(box, wall).Min(end => box.Height.Metres - end.Height + Math.Min(
                TiltUp.TallestUnder(end.Ceiling - play, box.Depth.Metres),
                box.Y > Length.Zero ? end.Ceiling - box.Y.Metres - context.Limits.LiftRoom.Metres : double.MaxValue));
            if (run.Base.Kind == BaseKind.SidesToFloor && box.Tier == 0 && box.Height.Metres - run.Base.Height.Metres <= tallest)
                yield return "Deliver the base apart: on a ladder base of its own the case is " + say.Size(run.Base.Height) + " lower and goes up.";
            lowest = Math.Min(lowest, tallest);
        }

        foreach (var leaf in (passages ?? []).Where(p => !p.Passes && p.Passage.Leaf > Length.Zero).Select(p => p.Passage))
        {
            if (PassageGeometry.Fit(leaf with { Leaf = Length.Zero }, Sizes(box, context)).Passes)
                yield return $"Take the leaf of {leaf.Name} off its hinges: that gives {say.AtMost(leaf.Leaf.Metres)}, and it gets in.";
        }

        foreach (var fit in passages?.Where(p => !p.Passes) ?? [])
            lowest = Math.Min(lowest, Narrowed(context, box, fit.Passage));
        if (lowest >= box.Height.Metres)
            yield break;
        if (lowest >= LowestCase.Metres)
            yield return $"Split the case: cases up to {say.AtMost(lowest)} high get in and up, so {(int)Math.Ceiling(box.Height.Metres / lowest)} of them one above the other.";
        yield return "Glue it up in the room: carry the parts in and assemble the case standing, where it will stand or on its base.";
    }

    /// <summary>Height of a case of this width and depth that passes.</summary>
    private static double Narrowed(CheckContext context, CaseBox box, Passage passage)
    {
        var sizes = Sizes(box, context);
        return Math.Max(0, PassageGeometry.Longest(passage, sizes[0], sizes[1], sizes[2]) - (2 * context.Limits.CarryPlay.Metres));
    }
}

using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Site;

namespace Casewright.Engine.Access;

/// <summary>Where a case is stood up.</summary>
public enum StandingPlace
{
    /// <summary>On the floor, where it stays.</summary>
    Floor,

    /// <summary>On the floor beside its base, rolled over the toe recess from its face.</summary>
    FloorFromFace,

    /// <summary>On the floor, then lifted onto what it stands on.</summary>
    FloorThenLifted,

    /// <summary>On top of its base.</summary>
    OnBase,
}

/// <summary>One way to stand a case up under the ceiling.</summary>
/// <param name="Place">Where.</param>
/// <param name="Need">Headroom it needs, play included, in metres above the highest floor point.</param>
/// <param name="Have">Lowest ceiling, in metres.</param>
public sealed record StandingUp(StandingPlace Place, double Need, double Have)
{
    /// <summary>Whether it goes up.</summary>
    public bool Passes => Need <= Have;

    /// <summary>Height of the case where it comes nearest to the ceiling, in metres.</summary>
    public double CaseHeight { get; init; }

    /// <summary>The ways for a case, the easiest first, each where it comes nearest to the ceiling.</summary>
    internal static IEnumerable<StandingUp> Ways(CaseBox box, BaseDesign foot, Wall wall, CheckLimits limits)
    {
        var ends = Headroom.Of(box, wall).Select(end => Ways(box, foot, end, limits).Select(w => w with { CaseHeight = end.Height }).ToArray()).ToArray();
        return ends[0].Select((_, way) => ends.Select(end => end[way]).MaxBy(w => w.Need - w.Have)!);
    }

    private static IEnumerable<StandingUp> Ways(CaseBox box, BaseDesign foot, Headroom end, CheckLimits limits)
    {
        var (h, d, y, have, play) = (end.Height, box.Depth.Metres, box.Y.Metres, end.Ceiling, limits.TiltPlay.Metres);
        if (box.Y == Length.Zero)
        {
            yield return new(StandingPlace.Floor, TiltUp.Headroom(h, d) + play, have);
            if (foot is { Kind: BaseKind.SidesToFloor } && foot.Setback > Length.Zero)
                yield return new(StandingPlace.FloorFromFace, TiltUp.HeadroomFromFace(h, d, new(foot.Setback.Metres, foot.Height.Metres)) + play, have);
            yield break;
        }

        yield return new(StandingPlace.FloorThenLifted, Math.Max(TiltUp.Headroom(h, d) + play, h + y + limits.LiftRoom.Metres), have);
        if (box.Tier == 0)
            yield return new(StandingPlace.OnBase, TiltUp.HeadroomOnBase(h, d, y) + play, have);
    }
}

using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Runs;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Layout.Counters;

/// <summary>
/// Runs that hang over a door: their underside clears the casing by 12 mm (1/2 in), they are screwed through both neighbours and, where
/// asked, rest on a cleat on the wall (common practice, no source).
/// </summary>
internal static class Bridges
{
    private static readonly Length s_fromEdge = Length.FromMillimetres(75);
    private static readonly Length s_half = Length.FromMillimetres(15);

    /// <summary>What is kept clear over a casing.</summary>
    public static Length Clearance(UnitSystem units) => units == UnitSystem.Inches ? Length.FromInches(0, 1, 2) : Length.FromMillimetres(12);

    /// <summary>Notes a bridge that does not clear the casing.</summary>
    public static void Check(RunFigures run, ProblemList problems)
    {
        if (run.Run.Bridge is not { } bridge)
            return;
        if (run.Run.Base.Kind != BaseKind.Hung)
        {
            problems.Add(run.Path + ".base.kind", "A bridge hangs over a door.", run.Run.Base.Kind.ToString(), "hung");
            return;
        }

        problems.Least(run.Path + ".bridge.cleat", "height of the cleat", bridge.Cleat, Length.Zero);
        if (Casing(run) is not { } casing)
        {
            problems.Add(run.Path + ".bridge.casing", "Nobody says how high the casing of the door is.", "nothing, and no door surveyed there", "the top of the casing above the highest floor point");
            return;
        }

        var hangs = Length.Max(bridge.Cleat, run.LightRail?.BoardWidth ?? Length.Zero);
        var low = run.BaseHeight - hangs;
        if (low < casing + Clearance(run.Job.Units))
            problems.Add(run.Path + ".base.height", "The bridge, its cleat or its light rail is too near the casing of the door.", low, $"{problems.Say(casing + Clearance(run.Job.Units) + hangs)} or more");
    }

    /// <summary>Top of the highest door casing under the run; null when nobody said.</summary>
    public static Length? Casing(RunFigures run) => run.Run.Bridge?.Casing ?? (run.Wall.Survey?.Features ?? [])
        .Where(f => f.Kind == FeatureKind.Door && f.OuterLeft < run.XEnd && f.OuterRight > run.X)
        .Select(f => (Length?)f.OuterTop)
        .Max();

    /// <summary>The cleat on the wall under the bottoms of the run.</summary>
    public static IEnumerable<Part> Cleat(RunFigures run)
    {
        if (run.Run.Bridge is not { Cleat: var height } || height == Length.Zero)
            yield break;
        var left = run.CasesLeft + LightRailParts.Takes(run, run.Left);
        var length = Rule.Of(new DerivationInput("l", "from end to end of the cases, between the returns of a light rail", run.CasesRight - LightRailParts.Takes(run, run.Right) - left))
            .Down(Dimensions.Length, run.Step);
        var width = Rule.Of(new DerivationInput("y", $"height of the cleat ({run.Path}.bridge.cleat)", height)).Nearest(Dimensions.Width, run.Step);
        var place = Pose.StripFromAbove(run.Wall.Id, left, run.BaseHeight, run.T);
        yield return PartMaker.InRun(run, run.Letters + "-Y", $"wall cleat, run {run.Run.Name}", PartRole.Cleat, run.Panel, new(length, width, PartMaker.Thickness(run.Panel)), place, FaceView.FrontOnly);
    }

    /// <summary>Keeps the places where bridges are screwed to sides free of joints: on the bridge's own sides and on those of its neighbours.</summary>
    public static IReadOnlyList<Part> WithFixings(IReadOnlyList<Part> parts, Job job)
    {
        var hung = job.Runs.Where(r => r.Base.Kind == BaseKind.Hung).Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var sides = parts.Where(p => p.Role == PartRole.Side).Select(Spot.Of).ToList();
        var fixings = new Dictionary<string, List<Machining>>(StringComparer.Ordinal);
        foreach (var mine in sides.Where(s => hung.Contains(s.Part.Run)))
        {
            foreach (var other in sides.Where(o => o.Part.Run != mine.Part.Run && o.Part.Place.Wall == mine.Part.Place.Wall && o.Part.Hand != mine.Part.Hand && o.Outside == mine.Outside))
            {
                foreach (var height in new[] { mine.Low + s_fromEdge, mine.High - s_fromEdge }.Where(h => h - s_half > other.Low && h + s_half < other.High))
                {
                    Add(fixings, mine, other.Part.Run, height);
                    Add(fixings, other, mine.Part.Run, height);
                }
            }
        }

        return [.. parts.Select(p => fixings.TryGetValue(p.Id, out var zones) ? p with { Machining = [.. p.Machining, .. zones] } : p)];
    }

    private static void Add(Dictionary<string, List<Machining>> fixings, Spot side, string run, Length height)
    {
        if (!fixings.TryGetValue(side.Part.Id, out var zones))
            fixings.Add(side.Part.Id, zones = []);
        zones.Add(new HardwareZone($"screws to run {run}", Face.Opposite, height - side.Low - s_half, height - side.Low + s_half));
    }

    private sealed record Spot(Part Part, Length Low, Length High, Length Outside)
    {
        public static Spot Of(Part side)
        {
            var (low, high) = (side.LowCorner, side.HighCorner);
            return new(side, low.Y, high.Y, side.Hand == Hand.Left ? low.X : high.X);
        }
    }
}

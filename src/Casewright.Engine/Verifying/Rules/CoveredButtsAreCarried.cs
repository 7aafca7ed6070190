using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// A covered butt is really carried or covered. In a back: a fixed shelf or an upright with bearing, or a trim band with overlap,
/// lies against it along the whole joint line, from one edge to the other, and the part named is one of them. In a strip of trim: the
/// upright or rung named stands behind the joint.
/// </summary>
internal sealed class CoveredButtsAreCarried : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from joint in evidence.Joints()
        from problem in joint.Splice.Method == SpliceMethod.CoveredButt
            ? Covered(evidence, joint.Splice, joint.Part)
            : Bare(joint.Splice)
        select problem;

    private static IEnumerable<Problem> Bare(Splice splice) => splice.CoveredBy is null
        ? []
        : [new Problem($"splices[{splice.Id}].coveredBy", $"{splice.Method} needs no cover.", splice.CoveredBy, "nothing")];

    private static IEnumerable<Problem> Covered(Evidence evidence, Splice splice, Part back)
    {
        var place = $"splices[{splice.Id}].coveredBy";
        if (splice.CoveredBy is null || evidence.Part(splice.CoveredBy) is not { } named)
        {
            yield return new(place, "Nothing carries or covers the joint.", "nothing", "a fixed shelf, an upright or a trim band");
            yield break;
        }

        var rules = evidence.Job.Shop.Splicing;
        var line = JointLine.Of(splice, back);
        if (back.Role != PartRole.Back)
        {
            if (!line.HasBehind(named))
                yield return new(place, "The part named does not stand behind the joint.", named.Id, "an upright or rung of the run that spans the joint");
            yield break;
        }

        if (!line.IsHeldBy(named, rules))
            yield return new(place, "The part named does not carry or cover the joint.", named.Id, "a fixed shelf or upright with bearing on both sides, or a trim band with overlap, against the back");

        var holders = evidence.Casework.Parts.Where(part => part.Run == back.Run && line.IsHeldBy(part, rules));
        if (line.FirstGap(holders) is { } gap)
            yield return new(place, "Part of the joint line is neither carried nor covered.", $"open from {gap.From} to {gap.To}", "cover from edge to edge of the back");
    }

    /// <summary>The line of a back's joint in the room.</summary>
    private sealed record JointLine(string Wall, Box Back, Axis3 Along, Axis3 Across, Axis3 Into, Length At)
    {
        public static JointLine Of(Splice splice, Part back)
        {
            var place = back.Place;
            var along = Box.AxisOf(place.AlongLength);
            var origin = Box.Coordinate(place.Origin, along);
            var at = place.AlongLength is Axis.Left or Axis.Down or Axis.In ? origin - splice.Position : origin + splice.Position;
            return new(place.Wall, Box.Of(back), along, Box.AxisOf(place.AlongWidth), Box.AxisOf(place.IntoThickness), at);
        }

        public bool IsHeldBy(Part part, SpliceRules rules)
        {
            Length? least = part.Role switch
            {
                PartRole.TrimBand => rules.BandOverlap,
                PartRole.FixedShelf or PartRole.Partition or PartRole.Side => rules.BackBearing,
                _ => null,
            };
            if (least is not { } margin || part.Place.Wall != Wall)
                return false;

            var box = Box.Of(part);
            return box.Low(Along) <= At - margin && At + margin <= box.High(Along)
                && box.Low(Across) < Back.High(Across) && Back.Low(Across) < box.High(Across)
                && Touches(box);
        }

        /// <summary>Whether an upright or rung spans the joint line with bearing on both sides.</summary>
        public bool HasBehind(Part part)
        {
            var box = Box.Of(part);
            return part.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel or PartRole.BaseRung
                && part.Place.Wall == Wall
                && box.Low(Along) <= At - Practice.TrimBearing && At + Practice.TrimBearing <= box.High(Along);
        }

        /// <summary>The first stretch along the joint line, edge to edge of the back, that no holder reaches; null when there is none.</summary>
        public (Length From, Length To)? FirstGap(IEnumerable<Part> holders)
        {
            var reached = Back.Low(Across);
            foreach (var box in holders.Select(Box.Of).OrderBy(box => box.Low(Across)))
            {
                if (box.Low(Across) > reached + Practice.Touching)
                    return (reached, Length.Min(box.Low(Across), Back.High(Across)));
                reached = Length.Max(reached, box.High(Across));
                if (reached >= Back.High(Across))
                    return null;
            }

            return reached + Practice.Touching < Back.High(Across) ? (reached, Back.High(Across)) : null;
        }

        /// <summary>A shelf or band lies against a face of the back; an upright may also hold it in its groove or rabbet.</summary>
        private bool Touches(Box box) =>
            box.Low(Into) <= Back.High(Into) + Practice.Touching && Back.Low(Into) - Practice.Touching <= box.High(Into);
    }
}

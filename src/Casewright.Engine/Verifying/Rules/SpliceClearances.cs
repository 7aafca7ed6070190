using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Joint lines keep clear of dados, pin holes, hardware, notches and cut-outs of their part by the shop's rules, and the mortises,
/// laps and bevels around them do not reach into any.
/// </summary>
internal sealed class SpliceClearances : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from joint in evidence.Joints()
        from machining in joint.Part.Machining
        from problem in Machining(evidence.Job.Shop.Splicing, joint.Part, joint.Splice, machining)
        select problem;

    private static IEnumerable<Problem> Machining(SpliceRules rules, Part part, Splice splice, Machining machining)
    {
        var joint = Zone.Of(splice);
        var reach = splice.Tenons.Aggregate(Length.Zero, (most, tenon) => Length.Max(most, tenon.MortiseDepth));
        return machining switch
        {
            Dado dado => Keep(splice, machining, "dado", joint.DistanceTo(dado.X, dado.X + dado.Width), Length.Max(rules.ClearOfDado, reach)),
            PinRow row => Keep(splice, machining, "pin hole", NearestHole(joint, row), rules.ClearOfPinHole),
            HardwareZone zone => Keep(splice, machining, "hardware", joint.DistanceTo(zone.FromX, zone.ToX), rules.ClearOfHardware),
            Notch notch => Keep(splice, machining, "notch", joint.DistanceTo(notch.X, notch.X + notch.LengthX), reach),
            CutOut cutOut => Keep(splice, machining, "cut-out", joint.DistanceTo(cutOut.X, cutOut.X + cutOut.LengthX), reach),
            Bevel bevel => Keep(splice, machining, "bevelled end", FromEnd(joint, part, bevel.Edge, bevel.Setback), reach),
            Clip clip => Keep(splice, machining, "raked cut", FromEnd(joint, part, clip.End, clip.AlongX), reach),
            Bore bore => Keep(splice, machining, "bored hole", joint.DistanceTo(bore.X - (bore.Diameter / 2), bore.X + (bore.Diameter / 2)), reach),
            _ => [],
        };
    }

    private static Length FromEnd(Zone joint, Part part, PartEdge end, Length size) =>
        end == PartEdge.Start ? joint.DistanceTo(Length.Zero, size) : joint.DistanceTo(part.Length - size, part.Length);

    private static IEnumerable<Problem> Keep(Splice splice, Machining machining, string what, Length distance, Length least)
    {
        // Inside counts as below zero, so that even a rule of zero keeps the joint out.
        return distance >= least
            ? []
            : [new Problem(
                $"splices[{splice.Id}].position",
                $"The joint comes too near a {what} ({machining.For}).",
                distance < Length.Zero ? $"joint at {splice.Position}, within it" : $"joint at {splice.Position}, {distance} away",
                $"at least {least}")];
    }

    private static Length NearestHole(Zone joint, PinRow row)
    {
        var nearest = joint.DistanceTo(row.FirstX, row.FirstX);
        for (var i = 1; i < row.Count; i++)
        {
            var x = row.FirstX + (row.Pitch * i);
            nearest = Length.Min(nearest, joint.DistanceTo(x, x));
        }

        return nearest;
    }

    /// <summary>The stretch of the part that the joint itself fills: a line, or the length of a lap or scarf.</summary>
    private readonly record struct Zone(Length From, Length To)
    {
        public static Zone Of(Splice splice)
        {
            if (Practice.OverlapInThicknesses(splice.Method).Most == 0)
                return new(splice.Position, splice.Position);

            var half = splice.Consumes / 2;
            return new(splice.Position - half, splice.Position + half);
        }

        /// <summary>Distance to a stretch; negative when the two overlap.</summary>
        public Length DistanceTo(Length from, Length to) => Length.Max(From - to, from - To);
    }
}

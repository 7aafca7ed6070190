using Casewright.Engine.Splicing.Methods;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Where one method may join a part, and what it uses up.</summary>
/// <param name="Method">The method.</param>
/// <param name="Allowed">Places of the joint line along the part, ascending.</param>
/// <param name="AtJoint">Sawn beyond the joint line on each piece: squaring and half an overlap.</param>
/// <param name="AtEnd">Sawn beyond the outer end opposite the datum, trimmed after the cure.</param>
internal sealed record JointRoom(SpliceMethod Method, ValueList<Stretch> Allowed, Length AtJoint, Length AtEnd)
{
    /// <summary>The room of a method whose joint lies in the given places.</summary>
    public static JointRoom Of(SpliceTechnique technique, ValueList<Stretch> allowed, Length thickness, SpliceRules rules) =>
        technique.Method == SpliceMethod.CoveredButt
            ? new(technique.Method, allowed, Length.Zero, Length.Zero)
            : new(technique.Method, allowed, rules.SquaringAllowance + (technique.Overlap(thickness) / 2), rules.EndAllowance);
}

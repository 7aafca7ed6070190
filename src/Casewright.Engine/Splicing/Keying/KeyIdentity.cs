using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>
/// What makes the pieces of one joint interchangeable with those of another: the same part in all that is made of it, joined at the
/// same place in the same way.
/// </summary>
internal sealed record KeyIdentity(
    string Material,
    Length Length,
    Length Width,
    Length Thickness,
    Hand Hand,
    bool RightHanded,
    Exposure ReferenceFace,
    Exposure OppositeFace,
    ValueList<Machining> Machining,
    ValueList<Length> Joints,
    int Joint,
    SpliceMethod Method)
{
    /// <summary>The identity of a joint.</summary>
    /// <param name="part">The part.</param>
    /// <param name="joints">All its joint lines.</param>
    /// <param name="joint">Which of them, from 0.</param>
    /// <param name="method">How it is made.</param>
    public static KeyIdentity Of(Part part, ValueList<Length> joints, int joint, SpliceMethod method) => new(
        part.Material,
        part.Length,
        part.Width,
        part.Thickness,
        part.Hand,
        PieceEnd.IsRightHanded(part),
        part.ReferenceFace,
        part.OppositeFace,
        [.. part.Machining.Select(work => work with { For = "" })],
        joints,
        joint,
        method);
}

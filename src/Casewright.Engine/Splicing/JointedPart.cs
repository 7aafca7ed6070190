using Casewright.Engine.Splicing.Options;
using Casewright.Model.Parts;

namespace Casewright.Engine.Splicing;

/// <summary>A part with the option that it is made by.</summary>
/// <param name="Part">The part.</param>
/// <param name="Option">The option; parts without joints may be among them.</param>
/// <param name="KeepsLine">Whether its joints keep a sight line with other parts.</param>
public sealed record JointedPart(Part Part, PartOption Option, bool KeepsLine);

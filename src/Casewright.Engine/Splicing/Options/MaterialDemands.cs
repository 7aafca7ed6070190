using Casewright.Model.Collections;
using Casewright.Model.Stock;

namespace Casewright.Engine.Splicing.Options;

/// <summary>All that is cut from one material.</summary>
/// <param name="Material">The material.</param>
/// <param name="Demands">Groups of alike parts, in the order of their first parts.</param>
public sealed record MaterialDemands(Material Material, ValueList<PartDemand> Demands);

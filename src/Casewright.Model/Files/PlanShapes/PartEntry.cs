using Casewright.Model.Parts;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>A part with the ids of its pieces and splices.</summary>
internal sealed record PartEntry(Part Part, IReadOnlyList<string> Pieces, IReadOnlyList<string> Splices)
{
    /// <summary>Corner of the part nearest the wall's left end, the floor and the wall.</summary>
    public Point3 Corner { get; } = Part.LowCorner;
}

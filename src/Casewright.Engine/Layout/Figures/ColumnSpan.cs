using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Figures;

/// <summary>A place along the run where one case, or cases above one another, stand.</summary>
internal sealed record ColumnSpan
{
    /// <summary>Position in the run, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>Left edge along the wall.</summary>
    public required Length X { get; init; }

    /// <summary>Outer width.</summary>
    public required Length Width { get; init; }

    /// <summary>Number of bays.</summary>
    public required int Bays { get; init; }

    /// <summary>Clear width of a bay. The last bay of a column may be wider by nanometres that do not divide.</summary>
    public required Length Clear { get; init; }

    /// <summary>Where it is said in the job file.</summary>
    public required string Path { get; init; }

    /// <summary>The column as designed; null where the run is divided equally.</summary>
    public ColumnDesign? Design { get; init; }

    /// <summary>Whether its lowest tier is a knee space.</summary>
    public bool Open => Design is { Open: true };

    /// <summary>Whether a knee space lies to the left of its lowest case.</summary>
    public bool OpenOnLeft { get; init; }

    /// <summary>Whether a knee space lies to the right of its lowest case.</summary>
    public bool OpenOnRight { get; init; }

    /// <summary>Where width and clear bay came from.</summary>
    public required ValueList<Derivation> Derivations { get; init; }
}

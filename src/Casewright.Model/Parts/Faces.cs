namespace Casewright.Model.Parts;

/// <summary>Handedness of a part.</summary>
public enum Hand
{
    /// <summary>Left and right are alike.</summary>
    None,

    /// <summary>Left hand, seen from the front.</summary>
    Left,

    /// <summary>Right hand, seen from the front.</summary>
    Right,
}

/// <summary>Which way the face grain of a part runs.</summary>
public enum Grain
{
    /// <summary>Along the part's length.</summary>
    AlongLength,

    /// <summary>Across, along its width.</summary>
    AlongWidth,

    /// <summary>No direction to follow.</summary>
    None,
}

/// <summary>The two faces of a part.</summary>
public enum Face
{
    /// <summary>The face measured from: z = 0.</summary>
    Reference,

    /// <summary>The face opposite: z = thickness.</summary>
    Opposite,
}

/// <summary>The four edges of a part.</summary>
public enum PartEdge
{
    /// <summary>The long edge measured from: y = 0; the front edge of uprights and shelves.</summary>
    Reference,

    /// <summary>The long edge opposite: y = width.</summary>
    Opposite,

    /// <summary>The end measured from: x = 0; the foot of uprights, the left end of level parts.</summary>
    Start,

    /// <summary>The end opposite: x = length.</summary>
    End,
}

/// <summary>Who sees a face when the job is finished.</summary>
public enum Exposure
{
    /// <summary>Hidden against a wall, a neighbour or other parts: it may take holes.</summary>
    Hidden,

    /// <summary>Stays visible: it takes none.</summary>
    Shows,
}

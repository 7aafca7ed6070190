namespace Casewright.Model.Splices;

/// <summary>How a splice is made.</summary>
public enum SpliceMethod
{
    /// <summary>Loose tenons, closed with clamps while the glue cures; no mark on either face.</summary>
    LooseTenons,

    /// <summary>Loose tenons, closed by draw connectors reached from one hidden face.</summary>
    TenonsAndConnectors,

    /// <summary>A full-width loose tongue.</summary>
    Spline,

    /// <summary>Halves lapped over a length.</summary>
    HalfLap,

    /// <summary>A long bevel glued face to face.</summary>
    Scarf,

    /// <summary>Butt joint with a glued backing plate on one hidden face.</summary>
    BackedButt,

    /// <summary>Butt joint of a thin back, carried on a fixed shelf or covered by a trim band, or of a strip of trim over an upright; no tenons.</summary>
    CoveredButt,
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>What closes the front of a bay.</summary>
public enum FrontKind
{
    /// <summary>One door or a pair, on concealed hinges.</summary>
    Doors,

    /// <summary>Drawers above one another, each a box on a pair of side slides with a front screwed to it.</summary>
    Drawers,
}

/// <summary>How a front sits against the case.</summary>
public enum FrontFit
{
    /// <summary>Over the edges of the case, or over its face frame.</summary>
    Overlay,

    /// <summary>Within the opening, flush with the front of the case.</summary>
    Inset,
}

/// <summary>Which edge of a single door the hinges are on, seen from the front.</summary>
public enum HingeSide
{
    /// <summary>The left edge.</summary>
    Left,

    /// <summary>The right edge.</summary>
    Right,
}

/// <summary>Doors or drawers in front of openings of every bay. An opening lies between two of the bottom, the fixed shelves and the top.</summary>
public sealed record FrontDesign
{
    /// <summary>Doors or drawers.</summary>
    public required FrontKind Kind { get; init; }

    /// <summary>How they sit.</summary>
    public required FrontFit Fit { get; init; }

    /// <summary>Sheet material of doors and drawer fronts.</summary>
    public required string Material { get; init; }

    /// <summary>The lowest opening that they close, counted from 1 at the bottom of the case.</summary>
    public int Opening { get; init; } = 1;

    /// <summary>Number of openings that they close; at least 1. Drawers close one.</summary>
    public int Openings { get; init; } = 1;

    /// <summary>Leaves of a door: 1, or 2 for a pair.</summary>
    public int Leaves { get; init; } = 1;

    /// <summary>Edge with the hinges of a single door.</summary>
    public HingeSide Hinged { get; init; }

    /// <summary>Number of drawers above one another; at least 1.</summary>
    public int Drawers { get; init; } = 1;

    /// <summary>Heights of drawer fronts from the bottom up; those not given share what is left equally.</summary>
    public ValueList<Length> Heights { get; init; } = [];

    /// <summary>Sheet material of drawer boxes; needed for drawers.</summary>
    public string? BoxMaterial { get; init; }

    /// <summary>Sheet material of drawer bottoms; needed for drawers.</summary>
    public string? BottomMaterial { get; init; }
}

/// <summary>Working gaps of doors and drawers; defaults are common practice, no source.</summary>
public sealed record FrontGaps
{
    /// <summary>From the edge of an overlaid front to the outline of its case: half of what shows between two cases.</summary>
    public required Length Edge { get; init; }

    /// <summary>Between two overlaid fronts, and between the leaves of a pair.</summary>
    public required Length Between { get; init; }

    /// <summary>Round an inset front, and between the leaves of an inset pair.</summary>
    public required Length Inset { get; init; }

    /// <summary>How far an overlaid front laps over a face frame, each side.</summary>
    public required Length FrameLap { get; init; }

    /// <summary>Between the case and the rear face of an overlaid front: buffers.</summary>
    public required Length Buffer { get; init; }

    /// <summary>What a pair of side slides takes of the opening's width.</summary>
    public required Length Slides { get; init; }

    /// <summary>What a drawer box is lower than its opening.</summary>
    public required Length Headroom { get; init; }

    /// <summary>Left free behind a drawer box.</summary>
    public required Length BehindBox { get; init; }

    /// <summary>From the free edge of a door to its pull.</summary>
    public required Length PullInset { get; init; }

    /// <summary>From hole to hole of a pull; zero for a knob with one hole.</summary>
    public required Length PullSpacing { get; init; }

    /// <summary>Usual figures of the unit system.</summary>
    public static FrontGaps For(UnitSystem units) => units == UnitSystem.Inches
        ? new()
        {
            Edge = Length.FromInches(0, 1, 16),
            Between = Length.FromInches(0, 1, 8),
            Inset = Length.FromInches(0, 3, 32),
            FrameLap = Length.FromInches(0, 1, 2),
            Buffer = Length.FromInches(0, 1, 16),
            Slides = Length.FromInches(1),
            Headroom = Length.FromInches(1, 1, 4),
            BehindBox = Length.FromInches(0, 3, 8),
            PullInset = Length.FromInches(1, 1, 2),
            PullSpacing = Length.FromInches(5),
        }
        : new()
        {
            Edge = Length.FromMillimetres(1.5m),
            Between = Length.FromMillimetres(3),
            Inset = Length.FromMillimetres(2.5m),
            FrameLap = Length.FromMillimetres(12),
            Buffer = Length.FromMillimetres(2),
            Slides = Length.FromMillimetres(26),
            Headroom = Length.FromMillimetres(30),
            BehindBox = Length.FromMillimetres(10),
            PullInset = Length.FromMillimetres(40),
            PullSpacing = Length.FromMillimetres(128),
        };
}

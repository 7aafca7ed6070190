using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>Who sees the two faces of a part, and what papers call them.</summary>
/// <param name="Reference">Who sees the reference face.</param>
/// <param name="Opposite">Who sees the opposite face.</param>
/// <param name="ReferenceName">Name of the reference face.</param>
/// <param name="OppositeName">Name of the opposite face.</param>
internal readonly record struct FaceView(Exposure Reference, Exposure Opposite, string ReferenceName, string OppositeName)
{
    /// <summary>Front shows, rear is against something: backs, nosings, frame members, fillers, bands, toe faces, crowns, nailers in view.</summary>
    public static FaceView FrontOnly { get; } = new(Exposure.Shows, Exposure.Hidden, "front", "rear");

    /// <summary>Doors and drawer fronts: the front shows, and the rear when they are opened.</summary>
    public static FaceView Front { get; } = new(Exposure.Shows, Exposure.Shows, "front", "rear");

    /// <summary>Members of a drawer box: the inside shows, the outside when the drawer is drawn.</summary>
    public static FaceView BoxMember { get; } = new(Exposure.Shows, Exposure.Shows, "inside", "outside");

    /// <summary>Neither shows: nailers behind a back.</summary>
    public static FaceView HiddenStrip { get; } = new(Exposure.Hidden, Exposure.Hidden, "front", "rear");

    /// <summary>Rungs of a ladder base: neither shows.</summary>
    public static FaceView Rung { get; } = new(Exposure.Hidden, Exposure.Hidden, "left", "right");

    /// <summary>Partitions stand between two bays: both show.</summary>
    public static FaceView Partition { get; } = new(Exposure.Shows, Exposure.Shows, "left", "right");

    /// <summary>Shelves: one sees the upper face of the low ones and the underside of the high ones.</summary>
    public static FaceView Shelf { get; } = new(Exposure.Shows, Exposure.Shows, "upper", "under");

    /// <summary>Bottoms stand on a base, on a case or over the toe space: only the upper face shows.</summary>
    public static FaceView Bottom { get; } = new(Exposure.Shows, Exposure.Hidden, "upper", "under");

    /// <summary>Lower layers of a counter: neither shows.</summary>
    public static FaceView HiddenLevel { get; } = new(Exposure.Hidden, Exposure.Hidden, "upper", "under");

    /// <summary>End panels: outside shows, inside is against the side.</summary>
    public static FaceView EndPanel { get; } = new(Exposure.Shows, Exposure.Hidden, "outside", "inside");

    /// <summary>Sides: the inside shows; the outside as <paramref name="outside"/> says.</summary>
    public static FaceView Side(Exposure outside) => new(Exposure.Shows, outside, "inside", "outside");

    /// <summary>Tops: the underside shows; the upper face as <paramref name="upper"/> says.</summary>
    public static FaceView Top(Exposure upper) => new(upper, Exposure.Shows, "upper", "under");
}

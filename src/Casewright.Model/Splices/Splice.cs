using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Model.Splices;

/// <summary>A loose tenon across a joint.</summary>
/// <param name="Offset">From the reference edge to the tenon's centre.</param>
/// <param name="Depth">From the reference face to the tenon's centre plane.</param>
/// <param name="Thickness">Thickness of the tenon.</param>
/// <param name="Width">Width of the tenon, along the joint.</param>
/// <param name="Length">Length of the tenon, across the joint.</param>
/// <param name="MortiseDepth">Depth of the mortise in each piece; more than half the length, for glue.</param>
/// <param name="Play">How much wider than the tenon the mortise is; zero for the first, tight one.</param>
public sealed record Tenon(Length Offset, Length Depth, Length Thickness, Length Width, Length Length, Length MortiseDepth, Length Play);

/// <summary>A draw connector across a joint, reached from the splice's access face.</summary>
/// <param name="Offset">From the reference edge to its centre.</param>
public sealed record DrawConnector(Length Offset);

/// <summary>How a joint is held closed while the glue cures.</summary>
public enum HoldingMethod
{
    /// <summary>Draw connectors hold it; the station is free at once.</summary>
    DrawConnectors,

    /// <summary>Long bar clamps end to end, one above and one below.</summary>
    EndClamps,

    /// <summary>Against a fixed stop, with a reversed spreader pushing from a second stop.</summary>
    SpreaderAgainstStop,

    /// <summary>Pinch dogs in edges or a face that stays hidden.</summary>
    PinchDogs,

    /// <summary>Clamps across the faces, with an end stop against sliding.</summary>
    FaceClamps,

    /// <summary>Nothing to cure: pinned or glued to the part that carries it.</summary>
    Carried,
}

/// <summary>An end-to-end joint inside a part.</summary>
public sealed record Splice
{
    /// <summary>Stable id, such as C3-L/1.</summary>
    public required string Id { get; init; }

    /// <summary>Id of the part.</summary>
    public required string Part { get; init; }

    /// <summary>From the reference end of the finished part to the joint line (to its middle for a lap or scarf).</summary>
    public required Length Position { get; init; }

    /// <summary>How it is made.</summary>
    public required SpliceMethod Method { get; init; }

    /// <summary>Length of stock that the joint uses up beyond the finished part, squaring included.</summary>
    public required Length Consumes { get; init; }

    /// <summary>The hidden face that takes holes or plate; null when neither face is touched.</summary>
    public Face? AccessFace { get; init; }

    /// <summary>Tenons, by offset.</summary>
    public ValueList<Tenon> Tenons { get; init; } = [];

    /// <summary>Draw connectors, by offset.</summary>
    public ValueList<DrawConnector> Connectors { get; init; } = [];

    /// <summary>How it is held while the glue cures.</summary>
    public required HoldingMethod Holding { get; init; }

    /// <summary>Letter that the two pieces of this joint share: only pieces of one letter go together.</summary>
    public required string PairLetter { get; init; }

    /// <summary>
    /// Key that the joint is cut to: joints of one key are interchangeable before gluing, joints of different keys do not go together.
    /// Empty for methods without mortises, which have no key.
    /// </summary>
    public string KeyClass { get; init; } = "";

    /// <summary>
    /// How far the mortises are off, at the least, when a piece is put together the wrong way round or with a piece of another key;
    /// null without mortises.
    /// </summary>
    public Length? KeyMismatch { get; init; }

    /// <summary>Where the match triangle's centre lies, from the reference edge, clear of holes on either face.</summary>
    public required Length MarkOffset { get; init; }

    /// <summary>Height above the floor of the sight line it keeps; null when it keeps none.</summary>
    public Length? SightLine { get; init; }

    /// <summary>Id of the part that covers or carries a back's joint; null elsewhere.</summary>
    public string? CoveredBy { get; init; }
}

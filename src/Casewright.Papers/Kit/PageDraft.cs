using Casewright.Model.Collections;
using Casewright.Papers.Drawing;

namespace Casewright.Papers.Kit;

/// <summary>A page before it has its number: everything but heading and foot.</summary>
public sealed record PageDraft
{
    /// <summary>Which document it belongs to.</summary>
    public required DocumentKind Document { get; init; }

    /// <summary>What the page is about inside the document: a case, part, sheet or splice id; may be empty.</summary>
    public string Key { get; init; } = "";

    /// <summary>Its measures.</summary>
    public required PageFormat Format { get; init; }

    /// <summary>Its heading; null for pages that keep the paper free, such as labels.</summary>
    public PageHeading? Heading { get; init; }

    /// <summary>One sentence on what the page shows, for those who cannot see it.</summary>
    public required string Description { get; init; }

    /// <summary>A note for the foot of the page.</summary>
    public string FootNote { get; init; } = "";

    /// <summary>What is drawn in the body.</summary>
    public required ValueList<SceneItem> Body { get; init; }
}

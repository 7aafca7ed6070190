namespace Casewright.Model.Design;

/// <summary>Thin strips glued to the edges of the sides at a finished end, each of a board material or ripped from a sheet; at least one of the two.</summary>
public sealed record LippingDesign
{
    /// <summary>Material on the front edge, trimmed flush to the side; its thickness lies in the depth. Null for a bare edge.</summary>
    public string? Front { get; init; }

    /// <summary>Material on the rear edge, left proud of the wall by the scribe stock and planed to it; thicker than that stock. Null for none.</summary>
    public string? Rear { get; init; }
}

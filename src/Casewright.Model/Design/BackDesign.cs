using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>How the back sits.</summary>
public enum BackKind
{
    /// <summary>In a groove of sides, top and bottom.</summary>
    Captured,

    /// <summary>In a rabbet of the sides, lapping top and bottom.</summary>
    Rabbeted,

    /// <summary>On the rear edges.</summary>
    Overlaid,

    /// <summary>No back.</summary>
    None,
}

/// <summary>The backs of a run.</summary>
public sealed record BackDesign
{
    /// <summary>How it sits.</summary>
    public required BackKind Kind { get; init; }

    /// <summary>Sheet material; null only without a back.</summary>
    public string? Material { get; init; }

    /// <summary>From the wall side of the case to the rear face of a captured back; room for nailers and scribing.</summary>
    public Length Inset { get; init; }
}

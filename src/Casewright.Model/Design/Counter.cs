using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>What a counter is used as; it decides how far apart its supports may stand.</summary>
public enum CounterUse
{
    /// <summary>A top that things stand on.</summary>
    Counter,

    /// <summary>A desk.</summary>
    Desk,

    /// <summary>A window seat or bench.</summary>
    Seat,
}

/// <summary>A top laid over the cases of a tier from end to end of the run: counter, desk or seat.</summary>
public sealed record CounterDesign
{
    /// <summary>What it is used as.</summary>
    public required CounterUse Use { get; init; }

    /// <summary>Sheet material.</summary>
    public required string Material { get; init; }

    /// <summary>Layers laminated together: 1 or 2.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>How far it stands out over the front of its cases; not negative.</summary>
    public Length Overhang { get; init; }

    /// <summary>How far it stands out over a finished end; not negative.</summary>
    public Length EndOverhang { get; init; }

    /// <summary>Board material on its front edge, at least as wide as the layers together, trimmed flush; null for none.</summary>
    public string? Edge { get; init; }

    /// <summary>Height of an apron under its front over a knee space; zero for none.</summary>
    public Length Apron { get; init; }

    /// <summary>Thickness of a cushion on a seat; zero for none.</summary>
    public Length Cushion { get; init; }
}

/// <summary>A run that hangs over a door between its neighbours.</summary>
public sealed record BridgeDesign
{
    /// <summary>Top of the door's casing above the highest floor point; null takes the doors of the wall's survey.</summary>
    public Length? Casing { get; init; }

    /// <summary>Height of the cleat on the wall that carries the bottom from below; zero for none.</summary>
    public Length Cleat { get; init; }
}

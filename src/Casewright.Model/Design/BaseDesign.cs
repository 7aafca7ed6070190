using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>What cases stand on.</summary>
public enum BaseKind
{
    /// <summary>A ladder base of its own, set and levelled first.</summary>
    Plinth,

    /// <summary>The sides run down to the floor, notched for the toe space; a toe face closes it.</summary>
    SidesToFloor,

    /// <summary>The bottom panel stands on the floor or on what is there.</summary>
    None,

    /// <summary>Nothing: the cases hang on the wall or between their neighbours, their lower edge at the height of the base.</summary>
    Hung,
}

/// <summary>The base of a run.</summary>
public sealed record BaseDesign
{
    /// <summary>Which kind.</summary>
    public required BaseKind Kind { get; init; }

    /// <summary>From the highest floor point to the lower edge of the cases: the underside of a frameless case's bottom panel, the lower edge of a face frame; zero for none.</summary>
    public Length Height { get; init; }

    /// <summary>How far the toe face stands back from the front; not negative.</summary>
    public Length Setback { get; init; }

    /// <summary>Sheet material of rails, rungs and toe face; null for the run's material.</summary>
    public string? Material { get; init; }

    /// <summary>Left off the rails of a ladder base for shims; not negative.</summary>
    public Length ShimRoom { get; init; }

    /// <summary>Board material of a moulding along the front of the base, scribed to the floor and returned at finished ends; null for none.</summary>
    public string? Mould { get; init; }

    /// <summary>Board material of a light rail under the front of a hung run, flush with it and returned at finished ends; null for none.</summary>
    public string? LightRail { get; init; }

    /// <summary>Longest section of a ladder base that is built and carried as one; positive. Sections meet under uprights.</summary>
    public Length LongestSection { get; init; } = Length.FromMillimetres(2400);
}

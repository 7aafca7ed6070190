using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>Division of a run's width into equal cases and bays: give the number of bays or the widest clear bay.</summary>
public sealed record BayDivision
{
    /// <summary>Number of bays in the run; null when <see cref="WidestClear"/> decides it.</summary>
    public int? Bays { get; init; }

    /// <summary>Widest clear bay; null when <see cref="Bays"/> is given.</summary>
    public Length? WidestClear { get; init; }

    /// <summary>Bays in one case; at least 1. The last case may have fewer.</summary>
    public int BaysPerCase { get; init; } = 1;
}

/// <summary>A case, or cases above one another, at one place along the run.</summary>
public sealed record ColumnDesign
{
    /// <summary>Id, unique in the run; case ids are made of it.</summary>
    public required string Id { get; init; }

    /// <summary>Outer width; null shares what is left with the other columns so that all their bays are equally wide.</summary>
    public Length? Width { get; init; }

    /// <summary>Equal bays side by side; at least 1.</summary>
    public int Bays { get; init; } = 1;

    /// <summary>Whether its lowest tier is a knee space: no case, but cleats and an apron that carry the counter over it. One bay.</summary>
    public bool Open { get; init; }

    /// <summary>Interior of each tier instead of the tier's own; empty or one for each tier.</summary>
    public ValueList<Interior> Interiors { get; init; } = [];
}

/// <summary>A row of cases at one level of the run.</summary>
public sealed record TierDesign
{
    /// <summary>Height of the cases, base not counted; null for the rest, in at most one tier.</summary>
    public Length? Height { get; init; }

    /// <summary>Total depth of the cases of this tier; null for that of the run.</summary>
    public Length? Depth { get; init; }

    /// <summary>A counter, desk top or seat laid over its cases; null for none.</summary>
    public CounterDesign? Counter { get; init; }

    /// <summary>What every bay of it holds.</summary>
    public required Interior Interior { get; init; }
}

/// <summary>Shelves of a bay. Give heights of fixed shelves or their number, not both.</summary>
public sealed record Interior
{
    /// <summary>Heights of the upper faces of fixed shelves above the highest floor point, ascending.</summary>
    public ValueList<Length> FixedAt { get; init; } = [];

    /// <summary>Number of fixed shelves at equal openings; 0 for none.</summary>
    public int Fixed { get; init; }

    /// <summary>Number of loose shelves in each bay; 0 for none, and then no pin rows.</summary>
    public int Loose { get; init; }

    /// <summary>What the shelves carry, in kg per metre of shelf; null when nobody said, and then sag is not checked.</summary>
    public double? LoadPerMetre { get; init; }

    /// <summary>Doors and drawers in front of its openings, from the bottom up; empty for an open front.</summary>
    public ValueList<FrontDesign> Fronts { get; init; } = [];
}

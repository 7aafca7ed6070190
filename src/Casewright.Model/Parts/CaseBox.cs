using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A case as placed: one assembly that is built, carried and fastened as a unit.</summary>
public sealed record CaseBox
{
    /// <summary>Stable id, such as C3.</summary>
    public required string Id { get; init; }

    /// <summary>Id of its run.</summary>
    public required string Run { get; init; }

    /// <summary>Id of its wall.</summary>
    public required string Wall { get; init; }

    /// <summary>Position of its column in the run, from 0.</summary>
    public required int Column { get; init; }

    /// <summary>Position of its tier in the run, from 0 at the floor.</summary>
    public required int Tier { get; init; }

    /// <summary>Left edge along the wall.</summary>
    public required Length X { get; init; }

    /// <summary>Lower edge above the highest floor point; 0 when the sides run to the floor.</summary>
    public required Length Y { get; init; }

    /// <summary>Outer width.</summary>
    public required Length Width { get; init; }

    /// <summary>Outer height, sides to the floor included.</summary>
    public required Length Height { get; init; }

    /// <summary>The slope of a raked top, counted to the right; null for a level one. <see cref="Height"/> is then that of the high end.</summary>
    public Slope? Rake { get; init; }

    /// <summary>Outer height at its lower end; that of the case where the top is level.</summary>
    public Length LowHeight => Height - (Rake?.Lean(Width) ?? Length.Zero);

    /// <summary>Outer height at a place along the wall within the case.</summary>
    public Length HeightAt(Length x) => Rake is { } rake ? Height - rake.Lean(rake.Falls ? x - X : X + Width - x) : Height;

    /// <summary>Total depth.</summary>
    public required Length Depth { get; init; }

    /// <summary>Number of bays.</summary>
    public required int Bays { get; init; }

    /// <summary>Clear width of each bay.</summary>
    public required Length ClearBay { get; init; }
}

using Casewright.Model.Collections;

namespace Casewright.Model.Stock;

/// <summary>Everything that parts can be cut from.</summary>
public sealed record StockRoom
{
    /// <summary>Materials; ids unique.</summary>
    public required ValueList<Material> Materials { get; init; }

    /// <summary>Sheets and offcuts; ids unique among all stock.</summary>
    public ValueList<SheetStock> Sheets { get; init; } = [];

    /// <summary>Boards; ids unique among all stock.</summary>
    public ValueList<BoardStock> Boards { get; init; } = [];

    /// <summary>The material with this id.</summary>
    /// <exception cref="KeyNotFoundException">No material has the id.</exception>
    public Material Material(string id) =>
        Materials.FirstOrDefault(m => m.Id == id) ?? throw new KeyNotFoundException($"There is no material '{id}'.");
}

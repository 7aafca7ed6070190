using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Collections;

namespace Casewright.Engine.Checks;

/// <summary>Every check, in the order in which findings of one severity are told.</summary>
public static class CheckCatalogue
{
    /// <summary>The checks; ids unique.</summary>
    public static ValueList<ICheck> All { get; } =
    [
        new ShelfSagCheck(),
    ];
}

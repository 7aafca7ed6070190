using Casewright.Model.Collections;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks;

/// <summary>What a check is, for its calculation sheet.</summary>
/// <param name="Id">Id in plain words, such as shelf-sag.</param>
/// <param name="LooksAt">What it looks at and what for, in one sentence.</param>
/// <param name="Formula">The formula, in symbols; empty for a rule without one.</param>
/// <param name="Source">Where formula and limit come from.</param>
/// <param name="Standing">What stands behind them.</param>
public sealed record CheckSheet(string Id, string LooksAt, string Formula, string Source, Standing Standing)
{
    /// <summary>Limits that the shop may edit.</summary>
    public ValueList<EditableLimit> Limits { get; init; } = [];
}

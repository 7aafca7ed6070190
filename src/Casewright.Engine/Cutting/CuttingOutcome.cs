using Casewright.Model.Collections;

namespace Casewright.Engine.Cutting;

/// <summary>Either an answer or the reasons why there is none.</summary>
/// <param name="Solution">The answer; null when nothing can be cut.</param>
/// <param name="Obstacles">Why there is no answer; empty when there is one.</param>
public sealed record CuttingOutcome(CuttingSolution? Solution, ValueList<CuttingObstacle> Obstacles);

/// <summary>Kinds of obstacle.</summary>
public enum ObstacleKind
{
    /// <summary>No option of the demand fits any sheet.</summary>
    FitsNoSheet,

    /// <summary>Every option has a piece narrower than the saw may safely cut.</summary>
    TooNarrow,

    /// <summary>No joint line serves the whole sight line group.</summary>
    NoCommonSightLine,

    /// <summary>The sheets on hand do not suffice: proven by area or by the bound.</summary>
    StockRunsOut,

    /// <summary>The sheets on hand may suffice, but no way was found within the effort allowed.</summary>
    NothingFound,
}

/// <summary>One reason why nothing can be cut.</summary>
/// <param name="Kind">What stands in the way.</param>
/// <param name="Subject">Id of the demand, sight line group or sheet type concerned.</param>
/// <param name="Reason">Plain sentence with the measures that do not agree, in the unit of the sheets.</param>
public sealed record CuttingObstacle(ObstacleKind Kind, string Subject, string Reason);

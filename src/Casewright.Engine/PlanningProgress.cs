namespace Casewright.Engine;

/// <summary>The stages of planning, in their order.</summary>
public enum PlanningStage
{
    /// <summary>Cases and parts are derived.</summary>
    Layout,

    /// <summary>Splices and sheets are decided together.</summary>
    Cutting,

    /// <summary>Checks are run.</summary>
    Checks,

    /// <summary>Timetable and price are made.</summary>
    Promise,

    /// <summary>The plan is proven anew.</summary>
    Verification,
}

/// <summary>How far planning has come.</summary>
/// <param name="Stage">The stage at work.</param>
/// <param name="Words">What it is doing, in plain words.</param>
/// <param name="Sheets">Sheets of the material at work in the best answer so far; null before there is one.</param>
/// <param name="SheetsLowerBound">No answer uses fewer; null before that is known.</param>
public sealed record PlanningProgress(PlanningStage Stage, string Words, int? Sheets = null, int? SheetsLowerBound = null);

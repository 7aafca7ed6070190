using Casewright.Model.Collections;

namespace Casewright.Model.Findings;

/// <summary>How grave a finding is.</summary>
public enum Severity
{
    /// <summary>Within its limit.</summary>
    Pass,

    /// <summary>Not checked, because an input is missing; the advice names it.</summary>
    NotChecked,

    /// <summary>Think before going on.</summary>
    Caution,

    /// <summary>Do not build it so.</summary>
    Stop,
}

/// <summary>What stands behind a limit or formula.</summary>
public enum Standing
{
    /// <summary>Published, and read.</summary>
    Published,

    /// <summary>Published, quoted from memory.</summary>
    FromMemory,

    /// <summary>Common practice of the trade, no source.</summary>
    CommonPractice,

    /// <summary>Our own judgement.</summary>
    Judgement,

    /// <summary>Plain arithmetic or geometry.</summary>
    Arithmetic,
}

/// <summary>A figure that went into a check.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Its value in words or digits.</param>
/// <param name="Unit">Its unit; empty when it has none.</param>
public sealed record FindingInput(string Name, string Value, string Unit);

/// <summary>What a check reports.</summary>
public sealed record Finding
{
    /// <summary>Id of the check in plain words, such as "shelf-sag".</summary>
    public required string Check { get; init; }

    /// <summary>How grave.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Id of the part, case, splice, sheet or run it is about.</summary>
    public required string Subject { get; init; }

    /// <summary>One sentence that says what was found.</summary>
    public required string Message { get; init; }

    /// <summary>The computed value; null when it is no number.</summary>
    public double? Value { get; init; }

    /// <summary>The limit that the value is held to.</summary>
    public double? Limit { get; init; }

    /// <summary>Unit of value and limit; empty when they have none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The formula, in symbols.</summary>
    public string Formula { get; init; } = "";

    /// <summary>Where formula and limit come from.</summary>
    public required string Source { get; init; }

    /// <summary>What stands behind them.</summary>
    public required Standing Standing { get; init; }

    /// <summary>What would mend it; empty for a pass.</summary>
    public string Advice { get; init; } = "";

    /// <summary>The figures that went in.</summary>
    public ValueList<FindingInput> Inputs { get; init; } = [];
}

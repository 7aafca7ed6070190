using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks;

/// <summary>What every check shares: making findings that carry its id, formula, source and limits.</summary>
public abstract class Check : ICheck
{
    /// <inheritdoc/>
    public abstract CheckSheet Sheet { get; }

    /// <inheritdoc/>
    public abstract IEnumerable<Finding> Run(CheckContext context);

    /// <summary>A finding with value and limit.</summary>
    protected Finding Report(CheckContext context, Severity severity, string subject, string message, Figures figures, string advice = "") => new()
    {
        Check = Sheet.Id,
        Severity = severity,
        Subject = subject,
        Message = message,
        Value = figures.Value,
        Limit = figures.Limit,
        Unit = figures.Unit,
        Formula = Sheet.Formula,
        Source = Sheet.Source,
        Standing = Sheet.Standing,
        Advice = severity == Severity.Pass ? "" : advice,
        Inputs = figures.Inputs.Concat(Sheet.Limits.Select(l => l.AsInput(context.Limits))).ToValueList(),
    };

    /// <summary>A finding that says which input is missing and where to give it.</summary>
    protected Finding NotChecked(CheckContext context, string subject, string missing, string advice) =>
        Report(context, Severity.NotChecked, subject, "Not checked: " + missing, Figures.None, advice);

    /// <summary>That a strength cannot be checked in a damp place; null elsewhere. Where nobody has said, the air is taken as dry.</summary>
    protected Finding? TooDamp(CheckContext context, string subject)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Job.Site.Climate == Climate.Damp
            ? NotChecked(context, subject, "there are no strength figures here for damp places.", "Ask an engineer, or keep the casework dry.")
            : null;
    }

    /// <summary>The air that strengths are reckoned with, as an input of a finding.</summary>
    protected static FindingInput Air(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return new("air of the room", context.Job.Site.Climate is null ? "taken as dry; the job does not say" : "dry", "");
    }

    /// <summary>A finding of a rule that is kept or broken, without a number.</summary>
    protected Finding Rule(CheckContext context, Severity severity, string subject, string message, string advice = "") =>
        Report(context, severity, subject, message, Figures.None, advice);
}

/// <summary>The numbers of one finding.</summary>
/// <param name="Value">Computed value; null when there is none.</param>
/// <param name="Limit">The limit it is held to; null when there is none.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Inputs">What went in.</param>
public sealed record Figures(double? Value, double? Limit, string Unit, ValueList<FindingInput> Inputs)
{
    /// <summary>No numbers.</summary>
    public static Figures None { get; } = new(null, null, "", []);
}

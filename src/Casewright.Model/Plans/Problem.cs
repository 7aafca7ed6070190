namespace Casewright.Model.Plans;

/// <summary>Something that keeps a job from being read or planned.</summary>
/// <param name="Path">Where: the path in the job file, such as runs[0].base.height; empty for the file as a whole.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Found">What was found there; empty when nothing was.</param>
/// <param name="Accepted">What is accepted, or what would mend it.</param>
public sealed record Problem(string Path, string Message, string Found, string Accepted)
{
    /// <summary>Line in the file, from 1; null when the problem is not about a file's text.</summary>
    public int? Line { get; init; }

    /// <summary>Column in the line, in characters from 1; null when the problem is not about a file's text.</summary>
    public int? Column { get; init; }

    /// <summary>The problem on one line: place, path, what is wrong, what was found and what is accepted.</summary>
    public override string ToString() => string.Join(": ", new[] { Place, Path, Message }.Where(s => s.Length > 0))
        + (Found.Length == 0 ? "" : $" Found {Found}.")
        + (Accepted.Length == 0 ? "" : $" Accepted: {Accepted}.");

    private string Place => Line is null ? "" : FormattableString.Invariant($"line {Line}, column {Column ?? 1}");
}

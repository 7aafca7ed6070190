namespace Casewright.Model.Plans;

/// <summary>Something that keeps a job from being read or planned.</summary>
/// <param name="Path">Where: the path in the job file, such as runs[0].base.height.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Found">What was found there; empty when nothing was.</param>
/// <param name="Accepted">What is accepted, or what would mend it.</param>
public sealed record Problem(string Path, string Message, string Found, string Accepted)
{
    /// <summary>The problem on one line.</summary>
    public override string ToString() => $"{Path}: {Message}"
        + (Found.Length == 0 ? "" : $" Found {Found}.")
        + (Accepted.Length == 0 ? "" : $" Accepted: {Accepted}.");
}

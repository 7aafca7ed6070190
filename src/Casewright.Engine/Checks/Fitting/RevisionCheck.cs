using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Papers of the revision that the client signed.</summary>
public sealed class RevisionCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "revision-approved",
        "Whether the revision that is printed is the one that the client signed.",
        "",
        "Common practice",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var (printed, approved) = (context.Job.Revision, context.Job.ApprovedRevision);
        if (approved is null)
            yield return NotChecked(context, "job", "no revision has been approved yet.", "Have the drawings signed before cutting, with every joint line drawn.");
        else if (approved != printed)
            yield return Rule(context, Severity.Stop, "job", $"Revision {printed} is printed; the client signed revision {approved}.", "Have the new revision signed, or print the signed one.");
        else
            yield return Rule(context, Severity.Pass, "job", $"Revision {printed} is signed.");
    }
}

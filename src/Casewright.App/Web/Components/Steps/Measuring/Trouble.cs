using Casewright.Engine.Surveying;
using Casewright.Model.Findings;
using Casewright.App.Web.Sessions;

namespace Casewright.App.Web.Components.Steps.Measuring;

/// <summary>What is wrong with a reading.</summary>
/// <param name="Path">The reading, as its path in the job file.</param>
/// <param name="Severity">A stop keeps the job from being laid out.</param>
/// <param name="Words">What is wrong, and what would mend it.</param>
public sealed record Trouble(string Path, Severity Severity, string Words)
{
    /// <summary>Whether it is about <paramref name="path"/> or something in it.</summary>
    public bool IsIn(string path) =>
        Path.StartsWith(path, StringComparison.Ordinal) && (Path.Length == path.Length || Path[path.Length] is '.' or '[');
}

/// <summary>Everything that is wrong with the readings of a job, to be shown where each was entered.</summary>
/// <param name="All">All of it.</param>
public sealed record Troubles(IReadOnlyList<Trouble> All)
{
    /// <summary>What keeps a job from being laid out, and what the readings of its walls contradict.</summary>
    public static Troubles Of(JobState state, SurveyResult survey)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(survey);
        return new(
        [
            .. state.LayoutProblems.Select(p => new Trouble(p.Path, Severity.Stop, Words(p.Message, p.Found, p.Accepted))),
            .. survey.Findings.Where(f => f.Check == "survey-contradiction").Select(f => new Trouble(f.Subject, f.Severity, $"{f.Message} {f.Advice}")),
        ]);
    }

    /// <summary>What is wrong with something or anything in it.</summary>
    public IEnumerable<Trouble> In(string path) => All.Where(t => t.IsIn(path));

    /// <summary>What is wrong with something as a whole.</summary>
    public IEnumerable<Trouble> At(string path) => All.Where(t => t.Path == path);

    private static string Words(string message, string found, string accepted) =>
        message + (found.Length == 0 ? "" : $" Found: {found}.") + (accepted.Length == 0 ? "" : $" Accepted: {accepted}.");
}

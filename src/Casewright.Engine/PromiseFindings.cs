using Casewright.Model.Findings;
using Casewright.Model.Plans;

namespace Casewright.Engine;

/// <summary>A timetable or a price that could not be made, as findings: a plan without them is still a plan.</summary>
internal static class PromiseFindings
{
    /// <summary>Id of the findings of a timetable that could not be made.</summary>
    public const string Timetable = "timetable";

    /// <summary>One finding for each problem.</summary>
    /// <param name="check">Id in plain words, timetable or price.</param>
    /// <param name="problems">What kept it from being made.</param>
    public static IEnumerable<Finding> Of(string check, IEnumerable<Problem> problems) => problems.Select(problem => new Finding
    {
        Check = check,
        Severity = Severity.NotChecked,
        Subject = problem.Path,
        Message = $"No {check} was made: {problem.Message}" + (problem.Found.Length > 0 ? $" Found {problem.Found}." : ""),
        Source = "The job file.",
        Standing = Standing.Arithmetic,
        Advice = problem.Accepted.Length > 0 ? $"Accepted: {problem.Accepted}." : "",
    });
}

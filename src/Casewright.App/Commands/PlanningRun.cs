using Casewright.Engine;
using Casewright.Model.Jobs;

namespace Casewright.App.Commands;

/// <summary>Plans a job for the command line: progress while it runs, problems when it fails.</summary>
public static class PlanningRun
{
    /// <summary>Plans the job.</summary>
    /// <returns>The result; null when the user cancelled.</returns>
    public static PlanningResult? Run(Job job, TextWriter errors, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(errors);
        using var line = new ProgressLine(errors);
        PlanningResult result;
        try
        {
            result = Planner.Plan(job, line, cancellation: cancellation);
        }
        catch (OperationCanceledException)
        {
            line.Clear();
            errors.WriteLine("Stopped; nothing was written.");
            return null;
        }

        line.Clear();
        if (result.Plan is null)
            ProblemText.Write(errors, Heading(result.End), result.Problems);
        return result;
    }

    private static string Heading(PlanningEnd end) => end switch
    {
        PlanningEnd.JobWrong => "The job cannot be built as it is stated:",
        PlanningEnd.NoPlan => "No plan exists from this stock under these rules:",
        _ => "A plan was made, but proving it anew failed. This is a defect of the program; nothing was written. Please report it with the job file:",
    };
}

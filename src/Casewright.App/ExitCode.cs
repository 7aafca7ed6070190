using Casewright.Engine;
using Casewright.Model.Findings;
using Casewright.Model.Plans;

namespace Casewright.App;

/// <summary>What the program tells the shell.</summary>
public static class ExitCode
{
    /// <summary>Planned, or done.</summary>
    public const int Done = 0;

    /// <summary>Planned, with a finding of severity stop.</summary>
    public const int PlannedWithStop = 1;

    /// <summary>The job file, or the command line, is wrong.</summary>
    public const int JobWrong = 2;

    /// <summary>No plan exists under these rules.</summary>
    public const int NoPlan = 3;

    /// <summary>A file or folder cannot be read or written.</summary>
    public const int Files = 4;

    /// <summary>A defect of the program; nothing was written.</summary>
    public const int Defect = 70;

    /// <summary>Stopped by the user; nothing was written.</summary>
    public const int Cancelled = 130;

    /// <summary>The code for a planning result.</summary>
    public static int Of(PlanningResult result) => result.End switch
    {
        PlanningEnd.Planned => Of(result.Plan!),
        PlanningEnd.JobWrong => JobWrong,
        PlanningEnd.NoPlan => NoPlan,
        _ => Defect,
    };

    private static int Of(Plan plan) => plan.Findings.Any(f => f.Severity == Severity.Stop) ? PlannedWithStop : Done;
}

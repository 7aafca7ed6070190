using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.Engine.Editing;

/// <summary>Edits of a run as a whole.</summary>
public static class RunEditing
{
    /// <summary>Sets the height of the base.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job SetBaseHeight(Job job, string runId, Length height) =>
        JobRuns.Change(job, runId, run => run with { Base = run.Base with { Height = height } });

    /// <summary>Sets the depth.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job SetDepth(Job job, string runId, Length depth) => JobRuns.Change(job, runId, run => run with { Depth = depth });

    /// <summary>Asks for the uprights to be joined at a height; null leaves it to the planner.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job SetSpliceHeight(Job job, string runId, Length? height) =>
        JobRuns.Change(job, runId, run => run with { Splices = run.Splices with { Height = height } });

    /// <summary>Changes the run in any other way.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job Change(Job job, string runId, Func<Run, Run> change) => JobRuns.Change(job, runId, change);
}

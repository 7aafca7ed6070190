using Casewright.App.Web.Components.Steps;

namespace Casewright.App.Web.Components;

/// <summary>A step of the job, in the order of the work.</summary>
/// <param name="Key">In the address.</param>
/// <param name="Name">On the tape.</param>
/// <param name="Component">What shows it.</param>
public sealed record JobStep(string Key, string Name, Type Component);

/// <summary>The steps of a job.</summary>
public static class StepList
{
    /// <summary>All steps in order.</summary>
    public static IReadOnlyList<JobStep> All { get; } =
    [
        new("measure", "Measure", typeof(MeasureStep)),
        new("design", "Design", typeof(DesignStep)),
        new("cut", "Splice & cut", typeof(CutStep)),
        new("checks", "Checks", typeof(ChecksStep)),
        new("timetable", "Timetable", typeof(TimetableStep)),
        new("money", "Money", typeof(MoneyStep)),
        new("papers", "Papers", typeof(PapersStep)),
        new("make", "Make", typeof(MakeStep)),
    ];

    /// <summary>The step with a key; the design for any other.</summary>
    public static JobStep Find(string? key) => All.FirstOrDefault(s => s.Key == key) ?? All[1];
}

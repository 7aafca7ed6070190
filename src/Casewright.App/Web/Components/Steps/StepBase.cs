using Casewright.App.Web.Sessions;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Microsoft.AspNetCore.Components;

namespace Casewright.App.Web.Components.Steps;

/// <summary>What every step of a job has.</summary>
public abstract class StepBase : ComponentBase
{
    /// <summary>The job as it stands.</summary>
    [Parameter, EditorRequired]
    public required JobState State { get; set; }

    /// <summary>Its session.</summary>
    [CascadingParameter]
    public required JobSession Session { get; set; }

    /// <summary>What is chosen in this window.</summary>
    [CascadingParameter]
    public required Selection Selection { get; set; }

    /// <summary>The job.</summary>
    protected Job Job => State.Job;

    /// <summary>A length in the job's unit.</summary>
    protected string Text(Length length) => Shown.Length(length, Job.Units);

    /// <summary>Both units, for where a shop reads both.</summary>
    protected string Both(Length length) => $"{Shown.Length(length, Job.Units)} ({Shown.OtherUnit(length, Job.Units)})";

    /// <summary>Edits the job without needing its layout.</summary>
    protected void Edit(string words, Func<Job, Job> change) => Session.Edit(words, (job, _) => change(job));
}

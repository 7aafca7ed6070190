using Casewright.App.Web.Sessions;
using Casewright.Model.Files;

namespace Casewright.App.Web;

/// <summary>Puts an example on record when there is no job yet, so that the first start shows a planned wall.</summary>
public static class FirstJob
{
    /// <summary>Adds the example to an empty store.</summary>
    public static void Ensure(JobSessions sessions)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        if (sessions.Store.Jobs().Count > 0)
            return;
        using var stream = typeof(FirstJob).Assembly.GetManifestResourceStream("first-job.json")
            ?? throw new InvalidOperationException("The example job is missing from the program.");
        var read = JobFile.Read(stream);
        if (read.Succeeded)
            sessions.Add(read.Value, "example");
    }
}

namespace Casewright.App.Web.Sessions;

/// <summary>Lets go of jobs that nobody looks at any more, so that a program left running all week stays small.</summary>
/// <param name="sessions">The jobs that are open.</param>
/// <param name="clock">The clock.</param>
/// <param name="idle">How long a job is kept after its last window went; positive.</param>
public sealed class IdleJobs(JobSessions sessions, TimeProvider clock, TimeSpan idle) : BackgroundService
{
    /// <summary>How long a job is kept when nothing else is said.</summary>
    public static TimeSpan Usual { get; } = TimeSpan.FromMinutes(10);

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(idle / 4, clock);
        try
        {
            while (await timer.WaitForNextTickAsync(stoppingToken))
            {
                // A program that does nothing allocates nothing, and would never collect what it let go.
                if (sessions.LetGo(idle) > 0)
                    GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            }
        }
        catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
        {
            // The program is being stopped.
        }
    }
}

namespace Casewright.Engine.Cutting;

/// <summary>Counts work and says when to stop. Polls for cancellation; the processor time of the process is asked only when a benchmark set a time limit.</summary>
internal sealed class WorkBudget(long limit, TimeSpan? timeLimit, CancellationToken cancellation)
{
    private readonly TimeSpan _start = Environment.CpuUsage.TotalTime;
    private long _nextPoll;
    private bool _timeIsUp;

    public long Spent { get; private set; }

    public long Left => Math.Max(0, limit - Spent);

    public CancellationToken Cancellation => cancellation;

    /// <summary>Whether the effort or the benchmark's time is used up.</summary>
    public bool IsSpent => Spent >= limit || _timeIsUp;

    /// <summary>Part of the effort used, from 0 to 1; by the clock when a benchmark set a time limit.</summary>
    public double PartSpent => timeLimit is { } time
        ? Math.Min(1, (Environment.CpuUsage.TotalTime - _start) / time)
        : Math.Min(1, Spent / (double)limit);

    /// <summary>Time left to a benchmark; null when the clock does not matter.</summary>
    public TimeSpan? TimeLeft => timeLimit is { } time ? time - (Environment.CpuUsage.TotalTime - _start) : null;

    /// <summary>Adds work done.</summary>
    /// <exception cref="OperationCanceledException">The caller has cancelled.</exception>
    public void Spend(long work)
    {
        Spent += work;
        if (Spent < _nextPoll)
            return;
        _nextPoll = Spent + 2_000;
        cancellation.ThrowIfCancellationRequested();
        _timeIsUp = timeLimit is { } time && (Environment.CpuUsage.TotalTime - _start) >= time;
    }
}

using Casewright.Model.Plans;

namespace Casewright.App.Web.Sessions;

/// <summary>
/// A long calculation beside the planning of a job, started by hand: it goes on when the page is left, tells how far it is, can be
/// stopped, and its result stays with the revision that it was worked out for.
/// </summary>
/// <typeparam name="T">What it finds.</typeparam>
public sealed class SideWork<T>
    where T : class
{
    private readonly Lock _gate = new();
    private CancellationTokenSource? _working;

    /// <summary>Raised, on any thread, after something has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>Whether it is at work.</summary>
    public bool Working { get; private set; }

    /// <summary>How far it is, in words; empty when it is not at work.</summary>
    public string Words { get; private set; } = "";

    /// <summary>What was found; null before the first run has ended.</summary>
    public Outcome<T>? Result { get; private set; }

    /// <summary>Revision of the job that <see cref="Result"/> was worked out for.</summary>
    public long Revision { get; private set; }

    /// <summary>Why the last run ended without a result; null when it did not.</summary>
    public string? Failure { get; private set; }

    /// <summary>Starts it anew.</summary>
    /// <param name="revision">Revision of the job.</param>
    /// <param name="work">The calculation; it reports words and stops when asked to.</param>
    public void Start(long revision, Func<IProgress<string>, CancellationToken, Outcome<T>> work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var cancellation = new CancellationTokenSource();
        lock (_gate)
        {
            _working?.Cancel();
            _working = cancellation;
            (Working, Words, Failure) = (true, "Starting", null);
        }

        Raise();
        _ = Task.Run(() => Run(revision, work, cancellation), CancellationToken.None);
    }

    /// <summary>Stops it; an earlier result stays.</summary>
    public void Stop()
    {
        lock (_gate)
        {
            _working?.Cancel();
            _working = null;
            (Working, Words) = (false, "");
        }

        Raise();
    }

    private void Run(long revision, Func<IProgress<string>, CancellationToken, Outcome<T>> work, CancellationTokenSource cancellation)
    {
        try
        {
            var result = work(new Reports(this, cancellation), cancellation.Token);
            End(cancellation, () => (Result, Revision) = (result, revision));
        }
        catch (OperationCanceledException)
        {
            End(cancellation, () => { });
        }
#pragma warning disable CA1031 // A defect of a stage must not leave the page waiting for ever; it is shown instead.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            End(cancellation, () => Failure = "This failed, which is a defect of the program; the job is as it was. " + exception.Message);
        }
        finally
        {
            cancellation.Dispose();
        }
    }

    private void End(CancellationTokenSource cancellation, Action change)
    {
        lock (_gate)
        {
            if (!ReferenceEquals(_working, cancellation))
                return;
            _working = null;
            (Working, Words) = (false, "");
            change();
        }

        Raise();
    }

    private void Raise() => Changed?.Invoke(this, EventArgs.Empty);

    private sealed class Reports(SideWork<T> side, CancellationTokenSource cancellation) : IProgress<string>
    {
        public void Report(string value)
        {
            lock (side._gate)
            {
                if (!ReferenceEquals(side._working, cancellation))
                    return;
                side.Words = value;
            }

            side.Raise();
        }
    }
}

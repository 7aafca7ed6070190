using System.Collections.Concurrent;
using Casewright.App.Web.Sessions;
using Casewright.Engine;
using Casewright.Engine.Editing;
using Casewright.Engine.Layout;
using Casewright.Model.Cutting;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Store;

namespace Casewright.App.Tests.Web;

/// <summary>
/// A job that is open: edits are saved before they are planned, and only the plan of the newest edit is ever shown. The planner is
/// replaced by one that ends when the test says so, so that plans can be made to come late.
/// </summary>
public sealed class JobSessionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-session").FullName;
    private readonly JobStore _store;
    private readonly HeldPlanner _planner = new();
    private readonly HandClock _clock = new();
    private readonly JobSessions _sessions;

    public JobSessionTests()
    {
        _store = JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System);
        _sessions = new(_store, _planner.Plan, _clock);
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _planner.LetAllGo();
        _sessions.Dispose();
        _planner.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task A_job_that_no_window_shows_is_let_go_after_a_while_and_comes_back_as_it_was_left()
    {
        var session = _sessions.Add(Starter(), "new job");
        session.Changed += Listen;
        Deepen(session, 310);
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);

        _clock.Now += TimeSpan.FromHours(3);
        Assert.Equal(0, _sessions.LetGo(TimeSpan.FromMinutes(10)));
        session.Changed -= Listen;
        _clock.Now += TimeSpan.FromMinutes(9);
        Assert.Equal(0, _sessions.LetGo(TimeSpan.FromMinutes(10)));
        _clock.Now += TimeSpan.FromMinutes(1);
        Assert.Equal(1, _sessions.LetGo(TimeSpan.FromMinutes(10)));

        Assert.Equal(0, _sessions.Held);
        var again = _sessions.Open(session.Id)!;
        Assert.NotSame(session, again);
        Assert.Equal(Length.FromMillimetres(310), again.State.Job.Runs[0].Depth);
        Assert.True(again.State.CanUndo);

        static void Listen(object? sender, EventArgs e)
        {
        }
    }

    [Fact]
    public async Task A_job_that_is_being_planned_is_not_let_go()
    {
        _sessions.Add(Starter(), "new job");
        var planning = await _planner.Next(Stop);
        _clock.Now += TimeSpan.FromHours(1);

        Assert.Equal(0, _sessions.LetGo(TimeSpan.FromMinutes(10)));
        planning.LetGo();
        await Until(() => _sessions.LetGo(TimeSpan.FromMinutes(10)) == 1);
    }

    [Fact]
    public void An_edit_that_no_job_file_can_hold_is_refused_with_its_place_and_leaves_no_revision()
    {
        var session = _sessions.Add(Starter(), "new job");

        session.Edit("depth of nothing", (job, _) => job with { Runs = [.. job.Runs.Select(r => r with { Depth = Length.Zero })] });

        Assert.Contains("runs[0].depth", session.State.Notice, StringComparison.Ordinal);
        Assert.Equal(1, session.State.Revision);
        Assert.True(JobFile.Read(_store.Current(session.Id).Text).Succeeded);
    }

    [Fact]
    public async Task A_plan_that_comes_late_never_replaces_that_of_a_newer_edit()
    {
        var session = _sessions.Add(Starter(), "new job");
        var first = await _planner.Next(Stop);
        Deepen(session, 310);
        var second = await _planner.Next(Stop);
        Deepen(session, 320);
        var third = await _planner.Next(Stop);

        third.LetGo();
        await Until(() => session.State.PlanIsCurrent);
        second.LetGo();
        first.LetGo();
        await Task.WhenAll(first.Ended, second.Ended);

        Assert.Equal(Length.FromMillimetres(320), session.State.Plan!.Job.Runs[0].Depth);
        Assert.Equal(3, session.State.ResultRevision);
        Assert.True(session.State.PlanIsCurrent);
    }

    [Fact]
    public async Task An_edit_is_laid_out_and_on_the_disk_before_its_plan_is_begun()
    {
        var session = _sessions.Add(Starter(), "new job");
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);

        Deepen(session, 333);

        Assert.Equal(Length.FromMillimetres(333), session.State.Casework!.Cases[0].Depth);
        Assert.False(session.State.PlanIsCurrent);
        Assert.Contains("333", JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System).Current(session.Id).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Planning_that_is_stopped_leaves_the_last_plan_on_show_and_can_be_taken_up_again()
    {
        var session = _sessions.Add(Starter(), "new job");
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);
        Deepen(session, 310);
        var stopped = await _planner.Next(Stop);

        session.CancelPlanning();
        stopped.LetGo();
        await stopped.Ended;

        Assert.False(session.State.Planning);
        Assert.False(session.State.PlanIsCurrent);
        Assert.NotNull(session.State.Plan);
        session.PlanAgain();
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);
    }

    [Fact]
    public async Task Undo_shows_the_plan_that_its_revision_had_without_planning_again()
    {
        var session = _sessions.Add(Starter(), "new job");
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);
        var before = session.State.Plan;
        Deepen(session, 310);
        (await _planner.Next(Stop)).LetGo();
        await Until(() => session.State.PlanIsCurrent);

        session.Undo();

        Assert.True(session.State.PlanIsCurrent);
        Assert.Same(before, session.State.Plan);
        Assert.Equal(2, _planner.Begun);
    }

    [Fact]
    public void An_edit_that_cannot_be_built_keeps_the_last_good_layout_and_says_why()
    {
        var session = _sessions.Add(Starter(), "new job");
        var laid = session.State.Casework;

        // The wall is 2760 mm high: a gap of three metres under its ceiling is a length, but leaves no case.
        session.Edit("gap", (job, _) => RunEditing.Change(job, job.Runs[0].Id, r => r with { Head = r.Head with { Gap = Length.FromMillimetres(3000) } }));

        Assert.Same(laid, session.State.Casework);
        Assert.NotEmpty(session.State.LayoutProblems);
        session.Undo();
        Assert.Empty(session.State.LayoutProblems);
    }

    [Fact]
    public void Ticks_are_on_the_disk_at_once_and_outlive_the_session()
    {
        var session = _sessions.Add(Starter(), "new job");

        session.Tick("piece:C1-L/a", "2000 mm × 300 mm", done: true);
        session.Tick([("piece:C1-L/b", "x"), ("piece:C1-R/a", "y")], done: true);
        session.Tick("piece:C1-L/b", "x", done: false);

        using var again = new JobSessions(JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System), _planner.Plan);
        Assert.Equal(["piece:C1-L/a", "piece:C1-R/a"], again.Open(session.Id)!.State.Ticks.Keys.Order(StringComparer.Ordinal));
    }

    private static void Deepen(JobSession session, decimal millimetres) =>
        session.Edit("depth", (job, _) => RunEditing.SetDepth(job, job.Runs[0].Id, Length.FromMillimetres(millimetres)));

    private static Job Starter() => JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!;

    private static async Task Until(Func<bool> met)
    {
        for (var i = 0; i < 600; i++)
        {
            if (met())
                return;
            await Task.Delay(50, Stop);
        }

        Assert.Fail("It did not happen within half a minute.");
    }

    /// <summary>Plans as told: each planning waits for the test, and pays no heed to being cancelled, as a slow stage would.</summary>
    private sealed class HeldPlanner : IDisposable
    {
        private readonly ConcurrentQueue<Held> _begun = new();
        private readonly ConcurrentBag<Held> _all = [];
        private readonly SemaphoreSlim _arrived = new(0);

        public int Begun => _all.Count;

        public PlanningResult Plan(Job job, IProgress<PlanningProgress> progress, CancellationToken cancellation)
        {
            var held = new Held();
            _begun.Enqueue(held);
            _all.Add(held);
            _arrived.Release();
            held.Wait();
            var laid = LayoutStage.Lay(job).Value!;
            var bounds = new CutBounds { Cost = 0, LowerBound = 0, Sheets = 0, SheetsLowerBound = 0, Proven = true };
            return new(PlanningEnd.Planned, new Plan
            {
                Job = job,
                Cases = laid.Cases,
                Parts = laid.Parts,
                Cutting = new CutPlan { Pieces = [], Splices = [], Sheets = [], Boards = [], Bounds = bounds, Materials = [] },
                Findings = [],
            }, []);
        }

        public async Task<Held> Next(CancellationToken stop)
        {
            Assert.True(await _arrived.WaitAsync(TimeSpan.FromSeconds(30), stop), "No planning was begun within half a minute.");
            _begun.TryDequeue(out var held);
            return held!;
        }

        public void Dispose() => _arrived.Dispose();

        public void LetAllGo()
        {
            foreach (var held in _all)
                held.LetGo();
        }
    }

    private sealed class Held
    {
        private readonly TaskCompletionSource _go = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly TaskCompletionSource _ended = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task Ended => Task.WhenAll(_ended.Task, Task.Delay(200, Stop));

        public void LetGo() => _go.TrySetResult();

        public void Wait()
        {
            _go.Task.Wait(Stop);
            _ended.TrySetResult();
        }
    }

    private sealed class HandClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 5, 4, 7, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}

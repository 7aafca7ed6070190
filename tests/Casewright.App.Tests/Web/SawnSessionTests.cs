using Casewright.App.Web.Making;
using Casewright.App.Web.Sessions;
using Casewright.Model.Files;
using Casewright.Model.Measure;
using Casewright.Store;

namespace Casewright.App.Tests.Web;

/// <summary>A job that is changed, or spoils a piece, while its sheets are being cut: wood that is cut stays cut, which is a fact of the shop.</summary>
public sealed class SawnSessionTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-sawn").FullName;
    private readonly JobSessions _sessions;

    public SawnSessionTests() => _sessions = new(JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System));

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        _sessions.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task Ticked_sheets_stay_through_an_edit_and_a_spoiled_piece_comes_back_as_work()
    {
        var session = _sessions.Add(JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!, "new job");
        await Until(() => session.State.PlanIsCurrent);
        var first = session.State.Plan!;
        var sheet = ShopWork.Of(first, session.State.Ticks).Saw[0];
        session.Tick([.. sheet.Items.Select(i => (i.Item, i.Was))], done: true);
        Assert.True(SawnSoFar.HasMore(first, session.State.Ticks));

        session.Edit("wider", (job, _) => job with { Runs = [.. job.Runs.Select(r => r with { Depth = r.Depth + Length.FromMillimetres(1) })] });
        await Until(() => session.State.PlanIsCurrent);
        var second = session.State.Plan!;
        Assert.Equal([sheet.Id], second.Job.Sawn!.Sheets.Select(s => s.Id));
        Assert.Equal(sheet.Sheet!.Cuts, second.Cutting.Sheets.Single(s => s.Id == sheet.Id).Cuts);
        Assert.False(SawnSoFar.HasMore(second, session.State.Ticks));

        session.Undo();
        await Until(() => session.State.PlanIsCurrent);
        var spoiled = sheet.Pieces[0];
        session.PlanFromHere([spoiled.Id]);
        await Until(() => session.State.PlanIsCurrent);
        var third = session.State.Plan!;
        var again = ShopWork.Of(third, session.State.Ticks).Saw.Single(s => s.Pieces.Any(p => p.Id == spoiled.Id));
        Assert.NotEqual(sheet.Id, again.Id);
        Assert.Equal(ItemStanding.Ready, again.Items.Single(i => i.Id == spoiled.Id).Standing);
        Assert.Equal(sheet.Items.Count - 1, ShopWork.Of(third, session.State.Ticks).Pieces.Done);
    }

    private static async Task Until(Func<bool> met)
    {
        for (var i = 0; i < 2400; i++)
        {
            if (met())
                return;
            await Task.Delay(50, Stop);
        }

        Assert.Fail("It did not happen within two minutes.");
    }
}

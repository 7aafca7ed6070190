using Microsoft.Data.Sqlite;

namespace Casewright.Store.Tests;

public sealed class SqliteJobStoreTests : JobStoreTests, IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("casewright-store").FullName;

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }

    protected override JobStore Open() => JobStore.OpenSqlite(Path.Combine(_folder, "jobs.db"), TimeProvider.System);
}

namespace Casewright.Store.Tests;

/// <summary>The same promises kept by PostgreSQL; skipped where its programs are not installed.</summary>
public sealed class PostgresJobStoreTests(PostgresServer server) : JobStoreTests, IClassFixture<PostgresServer>
{
    private readonly string _database = $"jobs_{Guid.NewGuid():N}";

    protected override JobStore Open()
    {
        Assert.SkipUnless(server.IsUp, server.Reason);
        return JobStore.OpenPostgres($"{server.Connection};Database={_database}", TimeProvider.System);
    }
}

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

    private string DatabasePath => Path.Combine(_folder, "jobs.db");

    protected override JobStore Open() => JobStore.OpenSqlite(DatabasePath, TimeProvider.System);

    [Fact]
    public void A_store_of_an_earlier_version_without_these_tables_gets_them_and_keeps_its_jobs()
    {
        var id = Open().Create("a", "1", "new").JobId;
        SqliteConnection.ClearAllPools();
        using (var connection = new SqliteConnection($"Data Source={DatabasePath}"))
        {
            connection.Open();
            using var drop = connection.CreateCommand();
            drop.CommandText = "DROP TABLE \"Ticks\"; DROP TABLE \"Settings\";";
            drop.ExecuteNonQuery();
        }

        Open().Floor.Set("inches", "decimal");
        Open().Floor.Set("inches", "fractions");
        Open().Floor.Tick(id, "case:C1", "x");

        Assert.Equal("fractions", Open().Floor.Setting("inches"));
        Assert.Null(Open().Floor.Setting("colour"));
        Assert.Equal("1", Open().Current(id).Text);
    }
}

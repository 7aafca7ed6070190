using Casewright.Store.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Casewright.Store;

/// <summary>Tables of the store. Portable between SQLite and PostgreSQL: times are kept as UTC ticks.</summary>
internal sealed class JobContext(DbContextOptions<JobContext> options) : DbContext(options)
{
    public DbSet<JobRow> Jobs => Set<JobRow>();

    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();

    public DbSet<TickRow> Ticks => Set<TickRow>();

    public DbSet<SettingRow> Settings => Set<SettingRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcTicks>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<JobRow>(job =>
        {
            job.HasKey(j => j.Id);
            job.Property(j => j.Head).IsConcurrencyToken();
        });
        modelBuilder.Entity<RevisionRow>(revision =>
        {
            revision.HasKey(r => new { r.JobId, r.Number });
            revision.HasOne<JobRow>().WithMany().HasForeignKey(r => r.JobId).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<TickRow>().HasKey(t => new { t.JobId, t.Item });
        modelBuilder.Entity<SettingRow>().HasKey(s => s.Name);
    }

    private sealed class UtcTicks() : ValueConverter<DateTimeOffset, long>(
        time => time.UtcTicks,
        ticks => new DateTimeOffset(ticks, TimeSpan.Zero));
}

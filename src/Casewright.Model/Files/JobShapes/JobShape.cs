using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Jobs;
using Casewright.Model.Site;

namespace Casewright.Model.Files.JobShapes;

/// <summary>A whole job file: the one description from which reading, writing and the schema are derived.</summary>
internal static class JobShape
{
    /// <summary>Version of the file that this program writes.</summary>
    public const int Version = 1;

    /// <summary>Name of the field that holds the version.</summary>
    public const string VersionField = "casewright";

    public static RecordShape<Job> Shape { get; } = new("job", "One commission: a site, a design, the stock and the shop that will build it.", Build)
    {
        Check = JobChecks.Check,
    };

    private static Job Build(IFields<Job> f)
    {
        f.Constant(VersionField, Version, "Version of this file's form.");
        f.Ignored("$schema", "Address of this schema, for editors.");
        return new()
        {
            Name = f.Required("name", j => j.Name, TextShape.Words, "Name of the job."),
            Client = f.Default("client", j => j.Client, TextShape.WordsOrNone, "", "Client."),
            Date = f.OptionalValue("date", j => j.Date, DateShape.Instance, "Date printed on the papers, as year-month-day."),
            Revision = f.Default("revision", j => j.Revision, new CountShape(1, 9999), 1, "Revision printed on the papers."),
            ApprovedRevision = f.OptionalValue(
                "approvedRevision",
                j => j.ApprovedRevision,
                new CountShape(1, 9999),
                "Revision that the client signed; left out before approval."),
            StockNeededBy = f.OptionalValue(
                "stockNeededBy", j => j.StockNeededBy, DateShape.Instance, "Date by which stock must be in the shop."),
            StartOn = f.OptionalValue(
                "startOn",
                j => j.StartOn,
                DateShape.Instance,
                "First day of work, on which stock is ordered too; left out, the job's date."),
            FinishBy = f.OptionalValue(
                "finishBy",
                j => j.FinishBy,
                DateShape.Instance,
                "Last day on which the installation may be finished; left out, nothing is promised."),
            Progress = f.Optional("progress", j => j.Progress, ProgressShape.Shape, "How far the work has come; left out before it begins."),
            Sawn = f.Optional("sawn", j => j.Sawn, SawnShapes.Work, "What the saw has already made; left out before the first sheet is cut."),
            Units = f.Required("units", j => j.Units, Choices.Units, "Unit of lengths written without one, and of the papers."),
            Currency = f.Required("currency", j => j.Currency, Choices.Currency, "Currency of all prices, by its ISO 4217 code."),
            Site = f.Section("site", j => j.Site, SiteShapes.Site, "What is known of the building."),
            Walls = f.Required("walls", j => j.Walls, new ListShape<Wall>(WallShape.Shape, 1, 100), "Walls of the room."),
            Runs = f.Required("runs", j => j.Runs, new ListShape<Run>(RunShape.Shape, 1, 200), "Runs of casework."),
            Stock = f.Required("stock", j => j.Stock, StockShapes.Room, "Materials, sheets and boards."),
            Shop = f.Required("shop", j => j.Shop, ShopShapes.Shop, "The shop."),
        };
    }
}

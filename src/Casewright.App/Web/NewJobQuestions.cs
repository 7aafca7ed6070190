using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.App.Web;

/// <summary>What a wall of shelves is for.</summary>
public enum WallUse
{
    /// <summary>Novels and mixed books.</summary>
    Books,

    /// <summary>Files, law books, archive boxes.</summary>
    Archive,

    /// <summary>Display and light things.</summary>
    Display,
}

/// <summary>The few questions that a new job starts from, and the job that a maker would draw from the answers.</summary>
public sealed record NewJobQuestions
{
    /// <summary>Name of the job.</summary>
    public string Name { get; init; } = "New wall";

    /// <summary>Unit of bare numbers.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Tightest width of the wall.</summary>
    public required Length WallWidth { get; init; }

    /// <summary>Lowest ceiling above the highest floor.</summary>
    public required Length WallHeight { get; init; }

    /// <summary>What it is for.</summary>
    public WallUse Use { get; init; }

    /// <summary>Length of the sheets.</summary>
    public required Length SheetLength { get; init; }

    /// <summary>Width of the sheets.</summary>
    public required Length SheetWidth { get; init; }

    /// <summary>Measured thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Price of one sheet.</summary>
    public decimal SheetPrice { get; init; } = 80;

    /// <summary>Cost of an hour.</summary>
    public decimal HourlyRate { get; init; } = 50;

    /// <summary>Currency, ISO 4217.</summary>
    public required string Currency { get; init; }

    /// <summary>Answers to begin with.</summary>
    public static NewJobQuestions For(UnitSystem units) => units == UnitSystem.Inches
        ? new()
        {
            Units = units,
            WallWidth = Length.FromInches(144),
            WallHeight = Length.FromInches(108),
            SheetLength = Length.FromInches(96),
            SheetWidth = Length.FromInches(48),
            Thickness = Length.FromInches(0, 23, 32),
            Currency = "USD",
        }
        : new()
        {
            Units = units,
            WallWidth = Length.FromMillimetres(3600),
            WallHeight = Length.FromMillimetres(2750),
            SheetLength = Length.FromMillimetres(2440),
            SheetWidth = Length.FromMillimetres(1220),
            Thickness = Length.FromMillimetres(18),
            Currency = "EUR",
        };

    /// <summary>What a use is called.</summary>
    public static string Words(WallUse use) => use switch
    {
        WallUse.Books => "books",
        WallUse.Archive => "archive boxes, files",
        _ => "display",
    };

    /// <summary>The job drawn from the answers.</summary>
    public Job ToJob()
    {
        var inches = Units == UnitSystem.Inches;
        Length Of(decimal mm, long whole, long numerator = 0, long denominator = 1) =>
            inches ? Length.FromInches(whole, numerator, denominator) : Length.FromMillimetres(mm);
        var back = Of(6, 0, 1, 4);
        return new Job
        {
            Name = string.IsNullOrWhiteSpace(Name) ? "New wall" : Name.Trim(),
            Units = Units,
            Currency = Currency,
            Walls = [new Wall { Id = "wall", Name = "wall", Width = WallWidth, Height = WallHeight }],
            Stock = new StockRoom
            {
                Materials =
                [
                    new Material { Id = "panel", Name = "panel for the cases", Kind = MaterialKind.BirchPlywood, Nominal = Thickness, Measured = Thickness, HasGrain = true },
                    new Material { Id = "back", Name = "panel for the backs", Kind = MaterialKind.BirchPlywood, Nominal = back, HasGrain = true },
                    new Material { Id = "nosing", Name = "hardwood nosing", Kind = MaterialKind.Hardwood, Nominal = Of(19, 0, 3, 4), Measured = Of(19, 0, 3, 4), BoardWidth = Of(38, 1, 1, 2), HasGrain = true },
                ],
                Sheets =
                [
                    new SheetStock { Id = "panel-sheet", Material = "panel", Length = SheetLength, Width = SheetWidth, Price = SheetPrice },
                    new SheetStock { Id = "back-sheet", Material = "back", Length = SheetLength, Width = SheetWidth, Price = decimal.Round(SheetPrice * 0.4m) },
                ],
                Boards = [new BoardStock { Id = "nosing-board", Material = "nosing", Length = Of(2400, 96), Price = 12 }],
            },
            Shop = new Workshop
            {
                Saw = new SawRules { Kerf = Of(3, 0, 1, 8), EdgeTrim = Of(5, 0, 1, 4) },
                Splicing = SpliceRules.For(Units),
                HourlyRate = HourlyRate,
            },
            Runs =
            [
                new Run
                {
                    Id = "A",
                    Name = "wall to wall",
                    Wall = "wall",
                    Construction = Construction.Frameless,
                    Material = "panel",
                    Depth = Use == WallUse.Archive ? Of(380, 15) : Of(300, 11, 3, 4),
                    Left = new RunEnd { Kind = EndKind.Wall, Filler = Of(30, 1, 1, 4) },
                    Right = new RunEnd { Kind = EndKind.Wall, Filler = Of(30, 1, 1, 4) },
                    Base = new BaseDesign { Kind = BaseKind.Plinth, Height = Of(100, 4), Setback = Of(50, 2), ShimRoom = Of(10, 0, 3, 8) },
                    Head = new HeadDesign { Gap = Of(40, 1, 1, 2) },
                    Back = new BackDesign { Kind = BackKind.Rabbeted, Material = "back" },
                    Joinery = Joinery.For(Units),
                    Nailers = new NailerDesign { Height = Of(80, 3) },
                    Nosing = Use == WallUse.Display ? null : new NosingDesign { Shelves = "nosing" },
                    Division = new BayDivision { WidestClear = Use switch { WallUse.Archive => Of(760, 30), WallUse.Books => Of(820, 32), _ => Of(900, 36) } },
                    Tiers =
                    [
                        new TierDesign
                        {
                            Interior = new Interior
                            {
                                Fixed = 2,
                                Loose = 3,
                                LoadPerMetre = Use switch { WallUse.Archive => 60, WallUse.Books => 32, _ => 15 },
                            },
                        },
                    ],
                },
            ],
        };
    }
}

using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Site;

namespace Casewright.Engine.Tests.Checks.Advice;

/// <summary>Findings whose advice is an act in the shop or on site, with the reason why no change of the job mends them.</summary>
public static class ShopActs
{
    private const string Never = "A job plans what is built; it does not record who carries it or what is done at the moment of lifting.";

    public static IEnumerable<ActCase> All =>
    [
        new("splice-handling", "L/1", new() { Height = 3000, Ceiling = 3300, Splices = [Bookcase.TenonSplice("L", 1500)] }, "Carry it on edge", Never),
        new("tilt-up", "C1", FromItsFace, "lying on its face", Never),
        new("tip-over-before-fixing", "C1", new(), "before it is screwed to the structure", "Every tall empty case tips; only holding it until it is fixed helps."),
        new("case-weight", "C1", new(), "Lift together", Never),
        new("piece-weight", "L", new() { Height = 2700, Ceiling = 2900 }, "Two people, on edge", Never),
        new("sheet-weight", "full", new() { Sheets = [LargeSheet] }, "Two people, or break it down", Never),
        new("case-anchorage", "C1", new() { Site = new() { Walls = WallStructure.SteelStuds } }, "Fix wood blocking between the studs", "The wall stays one of steel studs; blocking and rated fixings are chosen on site."),
        new("old-paint", "job", new() { Site = new() { YearBuilt = 1935 } }, "tested before you sand", "The year of a building does not change; the test is for whoever sands, scrapes or drills."),
    ];

    /// <summary>Checks that never caution or stop: they only tell what nobody has read.</summary>
    public static IReadOnlyDictionary<string, string> NeverFail { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["survey-readings"] = "It passes or says what was not read; the reading itself clears it, which the tests of missing inputs show.",
    };

    private static Bookcase FromItsFace => new()
    {
        Height = 94 * 25.4m,
        Depth = 16 * 25.4m,
        Ceiling = 95.3m * 25.4m,
        ChangeJob = j => j with { Runs = [j.Runs[0] with { Base = new() { Kind = BaseKind.SidesToFloor, Height = Length.FromInches(4), Setback = Length.FromInches(3) } }] },
    };

    private static SheetLayout LargeSheet => new()
    {
        Id = "S1",
        Stock = "full",
        Material = "panel",
        Length = Bookcase.Mm(3050),
        Width = Bookcase.Mm(1525),
        Trim = Bookcase.Mm(5),
        Kerf = Bookcase.Mm(3),
        Cost = 80,
        Bought = true,
        Cuts = [],
    };
}

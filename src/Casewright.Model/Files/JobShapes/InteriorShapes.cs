using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;

namespace Casewright.Model.Files.JobShapes;

/// <summary>How a run is divided, and what its bays hold, in a job file.</summary>
internal static class InteriorShapes
{
    /// <summary>Most bays of one run, and of a whole job.</summary>
    public const int MostBays = 2000;

    /// <summary>Most cases above one another.</summary>
    public const int MostTiers = 10;

    private const int MostShelves = 100;

    public static RecordShape<Interior> Interior { get; } = new("interior", "Shelves of every bay of a case. An empty object is an open bay.", f => new()
    {
        FixedAt = f.Items(
            "fixedShelvesAt",
            i => i.FixedAt,
            LengthShape.Positive(15_000),
            1,
            MostShelves,
            "Heights of the upper faces of fixed shelves above the highest floor point, the lowest first."),
        Fixed = f.Default("fixedShelves", i => i.Fixed, new CountShape(0, MostShelves), 0, "Number of fixed shelves at equal openings."),
        Loose = f.Default(
            "looseShelves",
            i => i.Loose,
            new CountShape(0, MostShelves),
            0,
            "Number of loose shelves in each bay; with none, no pin holes are drilled."),
        LoadPerMetre = f.OptionalValue(
            "load",
            i => i.LoadPerMetre,
            QuantityShape.LoadPerLength,
            "What the shelves carry for each length of shelf; left out, sag is not checked."),
        Fronts = f.Items(
            "fronts", i => i.Fronts, FrontShapes.Front, 0, MostShelves, "Doors and drawers in front of its openings, from the bottom up; left out, the front is open."),
    })
    {
        Rules = [PresenceRule.AtMostOne("fixedShelvesAt", "fixedShelves")],
        Check = CheckHeights,
    };

    public static RecordShape<BayDivision> Division { get; } = new("division", "Division of a run's width into equal bays.", f => new()
    {
        Bays = f.OptionalValue("bays", d => d.Bays, new CountShape(1, MostBays), "Number of bays in the run."),
        WidestClear = f.OptionalValue(
            "widestClear", d => d.WidestClear, LengthShape.Between(50, 5000), "Widest clear bay; the number of bays follows from it."),
        BaysPerCase = f.Default(
            "baysPerCase", d => d.BaysPerCase, new CountShape(1, 50), 1, "Bays in one case; the last case may have fewer."),
    })
    {
        Rules = [PresenceRule.ExactlyOne("bays", "widestClear")],
    };

    public static RecordShape<ColumnDesign> Column { get; } = new("column", "A case, or cases above one another, at one place along the run.", f => new()
    {
        Id = f.Required("id", c => c.Id, TextShape.Id, "Short id, unique in the run; case ids are made of it."),
        Width = f.OptionalValue(
            "width",
            c => c.Width,
            LengthShape.Between(50, 30_000),
            "Outer width; left out, it shares what the other columns leave, in proportion to bays."),
        Bays = f.Default("bays", c => c.Bays, new CountShape(1, 50), 1, "Equal bays side by side."),
        Open = f.Default(
            "open", c => c.Open, FlagShape.Instance, false, "true when its lowest tier is a knee space under the counter rather than a case."),
        Interiors = f.Items(
            "interiors",
            c => c.Interiors,
            Interior,
            1,
            MostTiers,
            "Interior of each tier, from the floor up, instead of the tier's own; one for each tier."),
    });

    public static RecordShape<TierDesign> Tier { get; } = new("tier", "A row of cases at one level of the run.", f => new()
    {
        Height = f.OptionalValue(
            "height",
            t => t.Height,
            LengthShape.Between(50, 15_000),
            "Height of the cases, base not counted; left out in at most one tier, which takes the rest."),
        Depth = f.OptionalValue(
            "depth", t => t.Depth, LengthShape.Between(50, 3000), "Total depth of the cases of this tier; left out, that of the run."),
        Counter = f.Optional("counter", t => t.Counter, CounterShapes.Counter, "Counter, desk top or seat laid over its cases; left out, there is none."),
        Interior = f.Required("interior", t => t.Interior, Interior, "What every bay of it holds."),
    });

    private static void CheckHeights(Interior interior, Spot spot)
    {
        for (var i = 1; i < interior.FixedAt.Count; i++)
        {
            if (interior.FixedAt[i] <= interior.FixedAt[i - 1])
                spot["fixedShelvesAt"][i].Fail("This shelf is not above the one before it.", null, "heights that rise, each once");
        }
    }
}

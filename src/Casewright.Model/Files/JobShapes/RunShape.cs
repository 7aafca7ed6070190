using System.Globalization;
using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.JobShapes;

/// <summary>A run in a job file.</summary>
internal static class RunShape
{
    private static readonly RecordShape<SpliceWish> s_splices = new("splices", "Wishes about the splices of one run; the rules of the shop still hold.", f => new()
    {
        Height = f.OptionalValue(
            "height",
            s => s.Height,
            LengthShape.Positive(15_000),
            "Height above the floor at which the uprights must be joined; left out, the planner chooses."),
        Method = f.OptionalValue(
            "method", s => s.Method, Choices.WishedMethod, "The only method allowed; left out, the shop's list holds."),
        Allowed = f.Default("allowed", s => s.Allowed, FlagShape.Instance, true, "Whether parts of this run may be spliced at all."),
        AllowEdgeJoint = f.Default(
            "edgeJoint",
            s => s.AllowEdgeJoint,
            FlagShape.Instance,
            false,
            "Whether a part wider than any sheet may be made of strips joined edge to edge."),
    })
    {
        Check = CheckWish,
    };

    private static readonly RecordShape<LadderRail> s_ladder = new(
        "ladder", "Rail along the front that a library ladder leans on, with a bracket on every upright.", f => new()
        {
            Height = f.Required("height", l => l.Height, LengthShape.Between(500, 15_000), "Height of the rail above the highest floor point."),
            Reach = f.OptionalValue(
                "reach", l => l.Reach, LengthShape.Positive(5000), "From under the rail to the ladder's foot; left out, that of a ladder at 75 degrees."),
            Mass = f.Default("mass", l => l.Mass, QuantityShape.Mass, 125, "Person, load and ladder together."),
        });

    public static RecordShape<Run> Shape { get; } = new(
        "run",
        "Cases standing in one line along (part of) one wall, between two ends, all to one pattern.",
        f => new()
        {
            Id = f.Required("id", r => r.Id, TextShape.Id, "Short id; every run has its own."),
            Name = f.Required("name", r => r.Name, TextShape.Words, "Name as people say it."),
            Wall = f.Required("wall", r => r.Wall, Ids.Wall, "Id of the wall."),
            Offset = f.Default(
                "offset", r => r.Offset, LengthShape.ZeroOrMore(), Length.Zero, "From the wall's left end to the run's left end."),
            Width = f.OptionalValue(
                "width",
                r => r.Width,
                LengthShape.Between(50, 30_000),
                "Width from end to end, fillers and end panels included; left out, the rest of the wall."),
            Construction = f.Required("construction", r => r.Construction, Choices.Construction, "Front of the cases."),
            Material = f.Required(
                "material", r => r.Material, Ids.Sheet, "Sheet material of sides, partitions, tops, bottoms and shelves."),
            Depth = f.Required(
                "depth",
                r => r.Depth,
                LengthShape.Between(50, 3000),
                "Total depth from the wall to the foremost edge, nosing or frame included."),
            Left = f.Required("left", r => r.Left, RunShapes.End, "Left end, seen from the front."),
            Right = f.Required("right", r => r.Right, RunShapes.End, "Right end, seen from the front."),
            Base = f.Required("base", r => r.Base, RunShapes.Base, "What the cases stand on."),
            Head = f.Required("head", r => r.Head, RunShapes.Head, "How the run ends at the top: exactly one of height and gap."),
            Back = f.Required("back", r => r.Back, RunShapes.Back, "Backs."),
            Division = f.Optional("division", r => r.Division, InteriorShapes.Division, "Equal bays; or give the columns one by one."),
            Columns = f.Items(
                "columns",
                r => r.Columns,
                InteriorShapes.Column,
                1,
                InteriorShapes.MostBays,
                "Cases side by side, one by one, from the left; or give a division."),
            Tiers = f.Required(
                "tiers",
                r => r.Tiers,
                new ListShape<TierDesign>(InteriorShapes.Tier, 1, InteriorShapes.MostTiers),
                "Cases above one another, from the floor up. One tier is a full-height case."),
            Nailers = f.Optional(
                "nailers", r => r.Nailers, RunShapes.Nailers, "Nailers through which the cases are fixed; left out, there are none."),
            Nosing = f.Optional("nosing", r => r.Nosing, RunShapes.Nosing, "Solid nosing; left out, there is none."),
            FaceFrame = f.Optional("faceFrame", r => r.FaceFrame, RunShapes.FaceFrame, "Face frame; needed for that construction."),
            TrimBand = f.Optional(
                "trimBand", r => r.TrimBand, RunShapes.TrimBand, "Trim band that covers joints of the backs; left out, there is none."),
            Joinery = f.Section("joinery", r => r.Joinery, JoineryShape.Shape, "Depths of joints and working gaps."),
            Bridge = f.Optional("bridge", r => r.Bridge, CounterShapes.Bridge, "What makes the run a bridge over a door; left out, it is none."),
            FrontGaps = f.Optional(
                "frontGaps", r => r.FrontGaps, FrontShapes.Gaps, "Working gaps of doors and drawers; left out, the usual ones."),
            Ladder = f.Optional("ladder", r => r.Ladder, s_ladder, "Rail of a library ladder; left out, there is none."),
            Splices = f.Section("splices", r => r.Splices, s_splices, "What is wished of the splices of this run."),
        })
    {
        Declares = _ => (Ids.Runs, "run"),
        Rules =
        [
            PresenceRule.ExactlyOne("division", "columns"),
            PresenceRule.Needs("faceFrame", "construction", "faceFrame"),
            PresenceRule.Excludes("faceFrame", "construction", "frameless"),
        ],
        Check = CheckRun,
    };

    private static void CheckWish(SpliceWish wish, Spot spot)
    {
        if (wish.Allowed)
            return;
        if (wish.Height is not null)
            spot["height"].Fail("A joint is asked for where splicing is not allowed.", null, "leave \"height\" out, or allow splices");
        if (wish.Method is not null)
            spot["method"].Fail("A method is asked for where splicing is not allowed.", null, "leave \"method\" out, or allow splices");
    }

    private static void CheckRun(Run run, Spot spot)
    {
        CheckTiers(run, spot);
        CheckColumns(run, spot);
        if (run.TrimBand is not null && run.Back.Kind == BackKind.None)
            spot["trimBand"].Fail("A trim band covers joints of backs, and this run has no backs.", null, "leave \"trimBand\" out");
        var mostBays = run.Division?.BaysPerCase ?? run.Columns.Max(c => c.Bays);
        if (run.FaceFrame is { MidStile: null } && mostBays > 1 && run.Division?.Bays != 1)
            spot["faceFrame"]["midStile"].Fail("A case has two bays or more, so its face frame needs a stile between them.", "", "the id of a board material");
    }

    private static void CheckTiers(Run run, Spot spot)
    {
        var open = -1;
        for (var i = 0; i < run.Tiers.Count; i++)
        {
            if (run.Tiers[i].Height is not null)
                continue;
            if (open >= 0)
                spot["tiers"][i]["height"].Fail("Only one tier can take the rest of the height.", "", $"a height here or in tiers[{open}]");
            open = i;
        }
    }

    private static void CheckColumns(Run run, Spot spot)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < run.Columns.Count; i++)
        {
            var column = run.Columns[i];
            if (!seen.Add(column.Id))
                spot["columns"][i]["id"].Fail("This id is already taken in the run.", null, "an id of its own");
            if (column.Interiors.Count != 0 && column.Interiors.Count != run.Tiers.Count)
            {
                var tiers = run.Tiers.Count.ToString(CultureInfo.InvariantCulture);
                spot["columns"][i]["interiors"].Fail(
                    "There must be one interior for each tier.",
                    $"{column.Interiors.Count} for {tiers}",
                    $"{tiers} of them, or leave \"interiors\" out to take those of the tiers");
            }
        }
    }
}

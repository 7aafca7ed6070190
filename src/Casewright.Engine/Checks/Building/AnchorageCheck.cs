using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Building;

/// <summary>Screws that hold each case to the wall against a pull at the front.</summary>
public sealed class AnchorageCheck : Check
{
    // Oven-dry specific gravity of spruce-pine-fir studs.
    private const double StudGravity = 0.42;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "case-anchorage",
        "Pull on each fixing of a case into the wall, and the screws into wood studs that hold it.",
        "T = (P y − W d/2)/h, shared by the fixings, at least the shop's least; screw 2850 G² D lbf/in, G = 0.42",
        "Moments; National Design Specification for wood, withdrawal of wood screws (equation read); least pull per fixing is common practice",
        Standing.Published)
    {
        Limits =
        [
            new("pull on the case", l => l.TipPull, 222.4, "N", "50 lbf, common practice, no source", Standing.CommonPractice),
            new("least pull per fixing", l => l.FixingForce, 1000, "N", "common practice, no source", Standing.CommonPractice),
            new("fixings per case", l => l.FixingsPerCase, 2, "", "common practice, no source", Standing.CommonPractice),
            new("most screws at one stud", l => l.ScrewsPerStud, 3, "", "our judgement", Standing.Judgement),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    /// <summary>What a case is fixed to: its wall as surveyed, else what is said of the site; null when nobody said.</summary>
    internal static WallStructure? Structure(CheckContext context, CaseBox box) =>
        context.Job.Walls.FirstOrDefault(w => w.Id == box.Wall)?.Survey?.Structure ?? context.Job.Site.Walls;

    /// <summary>Force in N that each fixing of a case must hold.</summary>
    public static double ForcePerFixing(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(box);
        var limits = context.Limits;
        // Under a raked top the fixings may be no higher than the low end, while somebody may pull at the high one.
        var height = box.LowHeight.Metres;
        var pullHeight = Math.Min(limits.TipPullHeight.Metres, box.Height.Metres);
        var weight = UprightLoads.OwnMass(context, box) * Shelf.Gravity;
        var total = TipOver.AnchorForce(limits.TipPull, pullHeight, weight, box.Depth.Metres, height);
        if (context.Run(box.Run)?.Ladder is { } ladder)
            total = Math.Max(total, TipOver.AnchorForce(LadderRailCheck.Pull(ladder), ladder.Height.Metres, weight, box.Depth.Metres, (box.Y + box.LowHeight).Metres));
        return Math.Max(limits.FixingForce, total / limits.FixingsPerCase);
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        var (say, limits) = (context.Say, context.Limits);
        var force = ForcePerFixing(context, box);
        var need = $"Each of {limits.FixingsPerCase} fixings at the top of case {box.Id} must hold {say.Force(force)}";
        switch (Structure(context, box))
        {
            case null:
                return NotChecked(context, box.Id, "the job does not say what the wall is made of. " + need + ".", "Say whether the wall has wood studs, steel studs or is masonry.");
            case WallStructure.Masonry:
                return NotChecked(context, box.Id, "the rating of the masonry fixings is not known. " + need + ".", $"Use fixings rated for {say.Force(force)} or more in this wall, set as their maker says.");
            case WallStructure.SteelStuds:
                return Report(context, Severity.Caution, box.Id, need + "; steel studs hold no wood screws.", new(force, null, "N", []), $"Fix wood blocking between the studs, or use fixings rated for {say.Force(force)} in steel studs.");
            default:
                break;
        }

        var screw = Screws.WoodScrewWithdrawal(StudGravity, (double)limits.FixingDiameter.Inches) * (double)limits.FixingThread.Inches * Screws.NewtonsPerPound;
        var count = (int)Math.Ceiling(force / screw);
        var figures = new Figures(count, limits.ScrewsPerStud, "screws", [new("one screw holds", Say.Number(screw, 0), "N"), new("force per fixing", Say.Number(force, 0), "N"), new("thread in the stud", Say.Number(limits.FixingThread.Metres * 1000, 1), "mm")]);
        return Report(
            context,
            count <= limits.ScrewsPerStud ? Severity.Pass : Severity.Caution,
            box.Id,
            $"{need}: {Say.Count(count, "screw", "screws")} of {say.Size(limits.FixingDiameter)} with {say.Size(limits.FixingThread)} of thread in each stud.",
            figures,
            $"Use screws with {say.AtLeast(limits.FixingThread.Metres * force / (limits.ScrewsPerStud * screw))} of thread in the stud, thicker ones, or lag screws; find pipes and wires first.");
    }
}

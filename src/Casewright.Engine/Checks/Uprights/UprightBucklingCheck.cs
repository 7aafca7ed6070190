using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Buckling of uprights between the fixed panels that hold them straight.</summary>
public sealed class UprightBucklingCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "upright-buckling",
        "Weight on the most loaded upright of each case against buckling between its fixed panels, creep included.",
        "N ≤ N_cr/(s (1 + k_def)); N_cr = π²EI/L², with a back b (π²D/L² + 12 D₆₆/b²)",
        "Euler; plate with one edge held, orthotropic plate theory (from memory); safety is our judgement",
        Standing.FromMemory)
    {
        Limits = [new("safety against buckling", l => l.BucklingSafety, 3, "", "our judgement", Standing.Judgement)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    /// <summary>Longest stretch in m of a case's uprights between fixed panels.</summary>
    public static double FreeLength(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(box);
        var levels = context.PartsOf(box)
            .Where(p => p.Role is PartRole.FixedShelf or PartRole.Top or PartRole.Bottom)
            .Select(p => ShelfReader.Box(p).Low.Y)
            .Append(box.Y)
            .Append(box.Y + box.Height)
            .Distinct().Order().ToList();
        return levels.Skip(1).Zip(levels, (upper, lower) => upper - lower).Append(Length.Zero).Max().Metres;
    }

    // A partition takes more than a side.
    private static Part MostLoaded(CheckContext context, CaseBox box) =>
        context.PartsOf(box).FirstOrDefault(p => p.Role == PartRole.Partition) ?? context.PartsOf(box).First(p => p.Role == PartRole.Side);

    private Finding One(CheckContext context, CaseBox box)
    {
        var part = MostLoaded(context, box);
        if (UprightLoads.OnOneUpright(context, box) is not { } force)
            return NotChecked(context, box.Id, "nobody has said what the shelves carry.", ShelfLoads.LoadAdvice);
        var length = FreeLength(context, box);
        var back = context.PartsOf(box).Any(p => p.Role == PartRole.Back) && box.Bays == 1;
        var creep = ClimateFactors.CreepFactor(context.Material(part).Kind, context.Job.Site.Climate ?? Climate.Unheated) ?? 3;
        double Holds(Part upright, double free) => Elastic(context, upright, free, back) / (context.Limits.BucklingSafety * (1 + creep));
        var limit = Holds(part, length);
        var say = context.Say;
        return Report(
            context,
            force > limit ? Severity.Stop : Severity.Pass,
            box.Id,
            $"{part.Name} carries {say.Force(force)} over a free height of {say.Size(length)}; it holds {say.Force(limit)} against buckling, with safety and creep.",
            new(force, limit, "N", [new("free height", Say.Number(length * 1000, 0), "mm"), new("rear edge", back ? "held by the back" : "free", ""), new("creep factor k_def", Say.Number(creep, 2), context.Job.Site.Climate is null ? "(room taken as unheated; the job does not say)" : "")]),
            force > limit ? Advice(context, box, part, force, Holds) + (back ? "" : " A back fixed along the upright helps too.") : "");
    }

    private static double Elastic(CheckContext context, Part upright, double free, bool back)
    {
        var figures = context.Figures(upright);
        var section = new RectangularSection(upright.Width.Metres, upright.Thickness.Metres);
        return back
            ? Buckling.OneEdgeHeld(figures.Elasticity(alongGrain: true), figures.PanelShearModulus, section, free)
            : Buckling.Euler(figures.Elasticity(alongGrain: true), section, free);
    }

    private static string Advice(CheckContext context, CaseBox box, Part part, double force, Func<Part, double, double> holds)
    {
        var (say, free) = (context.Say, FreeLength(context, box));
        var step = say.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(5);
        var ways = new List<string>();
        if (Solving.Largest(step, box.Height, height => force <= holds(part, height.Metres)) is { } height)
            ways.Add($"fix a loose shelf in the tallest opening, so that none between fixed panels is over {say.Size(height)}");
        if (Solving.Least(say.Step, part.Thickness, ShelfRemedies.ThickestPanel, t => force + UprightLoads.Thickened(context, box, part.Thickness, t) <= holds(part with { Thickness = t }, free)) is { } thickness)
            ways.Add($"use uprights {say.Size(thickness)} thick");
        return ways.Count == 0 ? "Use more uprights, so that each carries less." : Say.Sentence(ways);
    }
}

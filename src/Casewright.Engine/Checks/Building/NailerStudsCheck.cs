using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Checks.Building;

/// <summary>Studs that the nailers of each case are sure to hit.</summary>
public sealed class NailerStudsCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "nailers-hit-studs",
        "Number of studs that the top nailer of each case hits wherever the studs stand.",
        "hits = ⌊nailer length ÷ stud spacing⌋ ≥ fixings per case",
        "Geometry; two fixings per case is common practice",
        Standing.CommonPractice)
    {
        Limits = [new("fixings per case", l => l.FixingsPerCase, 2, "", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Cases.Select(box => One(context, box));
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        var nailers = context.PartsOf(box).Where(p => p.Role == PartRole.Nailer).ToList();
        if (nailers.Count == 0)
            return Rule(context, Severity.Caution, box.Id, $"Case {box.Id} has no nailer to be screwed through.", "Add a nailer under the top, or name another fixing into the structure.");
        if (context.Job.Site.Walls == WallStructure.Masonry)
            return Rule(context, Severity.Pass, box.Id, $"Case {box.Id} is fixed to masonry, which needs no studs.");
        if (context.Job.Site.StudSpacing is not { } spacing)
            return NotChecked(context, box.Id, "the stud spacing is not known.", "Find the studs and give their distance from centre to centre.");
        var top = nailers.Max(n => ShelfReader.Box(n).High.Y);
        var length = nailers.Where(n => ShelfReader.Box(n).High.Y == top).Aggregate(Length.Zero, (sum, n) => sum + n.Length);
        var (hits, limit) = ((int)(length / spacing), context.Limits.FixingsPerCase);
        return Report(
            context,
            hits < limit ? Severity.Caution : Severity.Pass,
            box.Id,
            $"The top nailer of case {box.Id} is sure of {Say.Count(hits, "stud", "studs")}; {limit} are wanted.",
            new(hits, limit, "studs", []),
            "Mark the studs first; where a case misses them, let blocking into the wall or screw it through its neighbour and a wall cleat.");
    }
}

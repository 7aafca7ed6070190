using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Surveying;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Checks.Building;

/// <summary>Studs that the nailers of each case are sure to hit.</summary>
public sealed class NailerStudsCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "nailers-hit-studs",
        "Number of studs that the top nailer of each case hits: the studs as surveyed, else wherever they may stand.",
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
        return context.BuiltCases.Select(box => One(context, box));
    }

    private Finding One(CheckContext context, CaseBox box)
    {
        var nailers = context.PartsOf(box).Where(p => p.Role == PartRole.Nailer).ToList();
        if (nailers.Count == 0 && TipOverCheck.IsLow(box))
            return Rule(context, Severity.Pass, box.Id, $"Case {box.Id} is low: screws that keep it in its place are enough.");
        if (nailers.Count == 0)
            return Rule(context, Severity.Caution, box.Id, $"Case {box.Id} has no nailer to be screwed through.", "Add a nailer under the top, or name another fixing into the structure.");
        var survey = context.Job.Walls.FirstOrDefault(w => w.Id == box.Wall)?.Survey;
        if (AnchorageCheck.Structure(context, box) == WallStructure.Masonry)
            return Rule(context, Severity.Pass, box.Id, $"Case {box.Id} is fixed to masonry, which needs no studs.");
        if (survey is { Studs.Count: > 0 })
            return Known(context, box, nailers, survey);
        if (context.Job.Site.StudSpacing is not { } spacing)
            return NotChecked(context, box.Id, "the stud spacing is not known.", "Find the studs and give their distance from centre to centre.");
        var top = nailers.Max(n => ShelfReader.Box(n).High.Y);
        var length = nailers.Where(n => ShelfReader.Box(n).High.Y == top).Aggregate(Length.Zero, (sum, n) => sum + n.Length);
        var (hits, limit) = ((int)(length / spacing), context.Limits.FixingsPerCase);
        var say = context.Say;
        return Report(
            context,
            hits < limit ? Severity.Caution : Severity.Pass,
            box.Id,
            $"The top nailer of case {box.Id} is sure of {Say.Count(hits, "stud", "studs")}; {limit} are wanted.",
            new(hits, limit, "studs", []),
            $"A nailer {say.AtLeast((limit * spacing).Metres)} long is sure of them. Mark the studs first; where a case misses them, let blocking into the wall or screw it through its neighbour and a wall cleat.");
    }

    private Finding Known(CheckContext context, CaseBox box, List<Part> nailers, WallSurvey survey)
    {
        var tallest = StudHits.Of(box, nailers, survey).GroupBy(h => h.Height).OrderByDescending(g => g.Key).First();
        var (studs, limit) = (tallest.SelectMany(h => h.Studs).ToList(), context.Limits.FixingsPerCase);
        var at = studs.Count == 0 ? "none" : string.Join(", ", studs.Select(context.Say.Size));
        return Report(
            context,
            studs.Count < limit ? Severity.Caution : Severity.Pass,
            box.Id,
            $"The top nailer of case {box.Id} meets {Say.Count(studs.Count, "stud", "studs")} where a screw may go (at {at} along the wall); {limit} are wanted.",
            new(studs.Count, limit, "studs", []),
            "Let blocking into the wall behind this nailer before the case goes in, or screw the case through its neighbour and to a wall cleat that reaches the studs.");
    }
}

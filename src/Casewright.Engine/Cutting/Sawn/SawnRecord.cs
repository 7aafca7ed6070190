using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>
/// Records what of a plan is sawn, and what of that is spoiled or gone. The job that comes of it is planned around what is there:
/// sawn sheets keep their layout and are not bought again, good pieces stay with their parts as long as these want them, lost pieces
/// are made again, and what sawn sheets left over is stock.
/// </summary>
public static class SawnRecord
{
    /// <summary>The job of a plan with what was done of it.</summary>
    /// <param name="plan">The plan that was followed at the saw.</param>
    /// <param name="sawn">Ids of sheets, boards or pieces that are sawn. A sheet of which a single piece is sawn stays as it was planned.</param>
    /// <param name="lost">Ids of pieces that are spoiled or gone; they count as sawn.</param>
    /// <returns>The job to go on with, or a problem for every id that the plan does not know.</returns>
    public static Outcome<Job> Of(Plan plan, IReadOnlyCollection<string> sawn, IReadOnlyCollection<string> lost)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sawn);
        ArgumentNullException.ThrowIfNull(lost);
        var cutting = plan.Cutting;
        var problems = Unknown(cutting, sawn, lost).ToList();
        if (problems.Count > 0)
            return Outcome<Job>.Failed(problems);

        var done = sawn.Concat(lost).ToHashSet(StringComparer.Ordinal);
        var gone = lost.ToHashSet(StringComparer.Ordinal);
        var begun = cutting.Pieces.Where(p => done.Contains(p.Id)).Select(p => (p.FromBoard, p.Stock)).ToHashSet();
        var pieces = cutting.Pieces.ToLookup(p => (p.FromBoard, p.Stock));
        var before = plan.Job.Sawn ?? new();
        var present = cutting.Pieces.Where(p => gone.Contains(p.Id)).Select(p => (p.FromBoard, p.Stock, p.Id)).ToHashSet();
        ValueList<SawnPiece> Of(bool board, string id) => [.. pieces[(board, id)].Select(p => SawnLayouts.Of(p, gone.Contains(p.Id)))];
        ValueList<SawnPiece> Marked(bool board, string id, ValueList<SawnPiece> old) =>
            [.. old.Select(p => present.Contains((board, id, p.Id)) ? p with { Lost = true } : p)];
        var work = new SawnWork
        {
            Sheets =
            [
                .. before.Sheets.Select(s => s with { Pieces = Marked(false, s.Id, s.Pieces) }),
                .. cutting.Sheets.Where(s => !s.Sawn && (done.Contains(s.Id) || begun.Contains((false, s.Id)))).Select(s => SawnLayouts.Of(s, Of(false, s.Id))),
            ],
            Boards =
            [
                .. before.Boards.Select(b => b with { Pieces = Marked(true, b.Id, b.Pieces) }),
                .. cutting.Boards.Where(b => !b.Sawn && (done.Contains(b.Id) || begun.Contains((true, b.Id)))).Select(b => SawnLayouts.Of(b, Of(true, b.Id))),
            ],
        };
        return Outcome<Job>.Of(work.Sheets.Count + work.Boards.Count == 0 ? plan.Job : plan.Job with { Sawn = work });
    }

    /// <summary>The materials to plan, with those that are sawn though no part is made of them any more; in the order of the job.</summary>
    internal static ValueList<MaterialDemands> WithSawn(Job job, ValueList<MaterialDemands> materials)
    {
        if (job.Sawn is not { } work)
            return materials;
        var sawn = work.Sheets.Select(s => s.Material).Concat(work.Boards.Select(b => b.Material)).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. job.Stock.Materials
                .Select(m => materials.FirstOrDefault(d => d.Material.Id == m.Id) ?? (sawn.Contains(m.Id) ? new MaterialDemands(m, []) : null))
                .OfType<MaterialDemands>(),
        ];
    }

    private static IEnumerable<Problem> Unknown(CutPlan cutting, IReadOnlyCollection<string> sawn, IReadOnlyCollection<string> lost)
    {
        var pieces = cutting.Pieces.Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var layouts = cutting.Sheets.Select(s => s.Id).Concat(cutting.Boards.Select(b => b.Id)).ToHashSet(StringComparer.Ordinal);
        foreach (var id in sawn.Where(id => !pieces.Contains(id) && !layouts.Contains(id)))
            yield return new("sawn", "The plan has no such sheet, board or piece.", id, "an id such as S4, B2 or C3-L/a of the plan of this job");
        foreach (var id in lost.Where(id => !pieces.Contains(id)))
            yield return new("lost", "The plan has no such piece.", id, "an id such as C3-L/a of the plan of this job");
    }
}

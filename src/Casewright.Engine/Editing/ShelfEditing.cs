using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Editing;

/// <summary>Edits of shelves, of one column or of a whole tier of the run.</summary>
public static class ShelfEditing
{
    /// <summary>Changes the interior of a tier in one column, or in every column when <paramref name="column"/> is null.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job Change(Job job, Casework casework, string runId, int? column, int tier, Func<Interior, Interior> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        var run = JobRuns.Find(job, runId);
        if (column is not { } index)
        {
            return JobRuns.Change(job, runId, r => r with
            {
                Tiers = r.Tiers.Select((t, i) => i == tier ? t with { Interior = change(t.Interior) } : t).ToValueList(),
                Columns = r.Columns.Select(c => c.Interiors.Count == 0
                    ? c
                    : c with { Interiors = c.Interiors.Select((n, i) => i == tier ? change(n) : n).ToValueList() }).ToValueList(),
            });
        }

        var written = run.Columns.Count > 0 ? job : ColumnEditing.SetBays(job, casework, runId, index, BaysOf(casework, runId, index));
        return JobRuns.Change(written, runId, r => r with
        {
            Columns = r.Columns.Select((c, i) => i != index ? c : c with
            {
                Interiors = r.Tiers.Select((t, n) =>
                {
                    var present = c.Interiors.Count > 0 ? c.Interiors[n] : t.Interior;
                    return n == tier ? change(present) : present;
                }).ToValueList(),
            }).ToValueList(),
        });
    }

    /// <summary>The heights of the fixed shelves of a case as they stand, so that an interior given by number can be edited by height.</summary>
    public static ValueList<Length> HeightsNow(Casework casework, string caseId)
    {
        ArgumentNullException.ThrowIfNull(casework);
        return casework.Parts
            .Where(p => p.Case == caseId && p.Role == PartRole.FixedShelf)
            .Select(p => p.HighCorner.Y)
            .Distinct().Order().ToValueList();
    }

    /// <summary>Moves the fixed shelf whose upper face is at <paramref name="from"/> to <paramref name="to"/>, in one column or all.</summary>
    /// <exception cref="KeyNotFoundException">There is no such run.</exception>
    public static Job MoveFixed(Job job, Casework casework, CaseBox box, Length from, Length to, bool everywhere)
    {
        ArgumentNullException.ThrowIfNull(box);
        var heights = HeightsNow(casework, box.Id).Select(h => h == from ? to : h).Distinct().Order().ToValueList();
        return Change(job, casework, box.Run, everywhere ? null : box.Column, box.Tier, i => i with { FixedAt = heights, Fixed = 0 });
    }

    private static int BaysOf(Casework casework, string runId, int column) =>
        casework.Cases.First(c => c.Run == runId && c.Column == column && c.Tier == 0).Bays;
}

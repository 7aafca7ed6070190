using Casewright.Engine.Editing;
using Casewright.Engine.Splicing;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>Where something dragged comes to rest, and why there.</summary>
/// <param name="To">The place.</param>
/// <param name="Words">What it was drawn to; null for a plain step.</param>
public sealed record Rest(Length To, string? Words);

/// <summary>Draws what is dragged to places worth having: equal bays, shelves in line, a base at which sides come whole out of a sheet, an allowed joint.</summary>
/// <param name="job">The job before the drag.</param>
/// <param name="casework">Its layout.</param>
/// <param name="heights">Where the run's splice line may lie; null for anything else.</param>
public sealed class Snap(Job job, Casework casework, JointHeights? heights)
{
    /// <summary>The step of a drag.</summary>
    public static Length Step(UnitSystem units) => units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);

    /// <summary>The step of a drag with the fine key held.</summary>
    public static Length FineStep(UnitSystem units) => units == UnitSystem.Inches ? Length.FromInches(0, 1, 16) : Length.FromMillimetres(1);

    /// <summary>Where a drag comes to rest.</summary>
    /// <param name="drag">What is dragged.</param>
    /// <param name="at">Where the hand is, in the room.</param>
    /// <param name="reach">How near a target must be.</param>
    /// <param name="fine">Whether the hand asked for the fine step and no targets.</param>
    public Rest At(Drag drag, Length at, Length reach, bool fine)
    {
        ArgumentNullException.ThrowIfNull(drag);
        if (drag.Kind == "splice")
            return Splice(at, fine);
        if (fine)
            return new(at.RoundTo(FineStep(job.Units)), null);
        var target = Targets(drag).Where(t => (t.To - at).Abs() <= reach).OrderBy(t => (t.To - at).Abs()).FirstOrDefault();
        return target ?? new(at.RoundTo(Step(job.Units)), null);
    }

    private Rest Splice(Length at, bool fine)
    {
        var stepped = at.RoundTo(fine ? FineStep(job.Units) : Step(job.Units));
        if (heights?.WhyNot(stepped) is not { } why)
            return new(stepped, null);
        return new(heights.Nearest(stepped), "not there: " + why);
    }

    private IEnumerable<Rest> Targets(Drag drag) => drag.Kind switch
    {
        "line" => Lines(drag),
        "shelf" => Shelves(drag),
        _ => Bases(drag),
    };

    private IEnumerable<Rest> Lines(Drag drag)
    {
        var row = casework.Cases.Where(c => c.Run == drag.Run && c.Tier == 0).OrderBy(c => c.Column).ToList();
        var left = row.FindIndex(c => c.Column == drag.Column);
        if (left < 0 || left + 1 >= row.Count)
            yield break;
        var (a, b) = (row[left], row[left + 1]);
        yield return new(a.X + ((a.Width + b.Width) / 2), "two alike");
        foreach (var width in row.Where(c => c != a && c != b).Select(c => c.Width).Distinct())
        {
            yield return new(a.X + width, "as wide as another case");
            yield return new(b.X + b.Width - width, "as wide as another case");
        }
    }

    private IEnumerable<Rest> Shelves(Drag drag)
    {
        if (drag.Shelf is not { } shelf || casework.Cases.FirstOrDefault(c => c.Id == shelf.Case) is not { } box)
            yield break;
        foreach (var height in casework.Cases.Where(c => c.Run == box.Run && c.Id != box.Id).SelectMany(c => ShelfEditing.HeightsNow(casework, c.Id)).Distinct())
            yield return new(height, "level with another case's shelf");
        Length[] levels = [box.Y, .. ShelfEditing.HeightsNow(casework, box.Id).Where(h => h != shelf.Height), box.Y + box.Height];
        var (below, above) = (levels.Where(l => l < shelf.Height).DefaultIfEmpty(box.Y).Max(), levels.Where(l => l > shelf.Height).DefaultIfEmpty(box.Y + box.Height).Min());
        yield return new((below + above) / 2, "midway");
    }

    private IEnumerable<Rest> Bases(Drag drag)
    {
        foreach (var other in job.Runs.Where(r => r.Id != drag.Run && r.Base.Kind != BaseKind.None).Select(r => r.Base.Height).Distinct())
            yield return new(other, "as high as another run's base");
        if (job.Runs.FirstOrDefault(r => r.Id == drag.Run) is { Base.Kind: BaseKind.Plinth } run && SheetReach.Overrun(job, casework, run.Id) is { } over && run.Base.Height + over > Length.Zero)
            yield return new((run.Base.Height + over).CeilingTo(FineStep(job.Units)), "sides come whole out of a sheet");
    }
}

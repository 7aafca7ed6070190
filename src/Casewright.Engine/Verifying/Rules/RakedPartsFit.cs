using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Site;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Under a sloping ceiling every part, in its true outline, keeps the room asked for under the slope; and what stands under a raked top
/// ends at its underside: the top rests on its uprights, and nothing is built into it. What is left oversize for scribing is cut on site.
/// </summary>
internal sealed class RakedPartsFit : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var walls = evidence.Job.Walls.Where(w => w.CeilingSlopes.Count > 0).ToDictionary(w => w.Id, StringComparer.Ordinal);
        foreach (var part in evidence.Casework.Parts.Where(p => p.FitOnSite is null))
        {
            if (!walls.TryGetValue(part.Place.Wall, out var wall) || evidence.Job.Runs.FirstOrDefault(r => r.Id == part.Run) is not { } run)
                continue;
            var gap = run.Head.SlopeGap ?? run.Head.Gap ?? Length.Zero;
            if (Corners(part).Any(corner => Over(wall, gap, corner) > (double)run.Joinery.RoundingStep.Nanometres))
                yield return new($"parts[{part.Id}]", $"{part.Name} reaches into the room left under the sloping ceiling.", part.Id, $"{gap} clear of the slope, plumb");
        }

        foreach (var raked in evidence.Casework.Parts.Where(p => p.Role == PartRole.Top && p.Place.Tilt is not null))
        {
            foreach (var problem in Under(evidence, raked))
                yield return problem;
        }
    }

    private static IEnumerable<Problem> Under(Evidence evidence, Part raked)
    {
        var slope = raked.Place.Tilt!.Value;
        var (rise, run) = ((double)slope.Rise.Nanometres, (double)slope.Run.Nanometres);
        var plumb = raked.Thickness.Nanometres * Math.Sqrt((rise * rise) + (run * run)) / run;
        var origin = raked.Place.Origin;
        var step = evidence.Job.Runs.First(r => r.Id == raked.Run).Joinery.RoundingStep.Nanometres;
        foreach (var part in evidence.Casework.Parts.Where(p => p.Case == raked.Case && p.Id != raked.Id))
        {
            // How far the highest corner lies below the plane of the top's upper face, measured plumb.
            var below = Corners(part).Min(c => origin.Y.Nanometres + ((c.X - origin.X).Nanometres * rise / run) - c.Y.Nanometres);
            if (part.Role is PartRole.Side or PartRole.Partition && Math.Abs(below - plumb) > step)
                yield return new($"parts[{part.Id}]", $"The raked top does not lie on {part.Name}.", $"{Millimetres(below - plumb)} below its underside", "an end bevelled to its underside");
            else if (below < (Meets(part) ? plumb : 0) - step)
                yield return new($"parts[{part.Id}]", $"{part.Name} runs into the raked top.", $"{Millimetres(plumb - below)} into it", "an end that the slope has cut");
        }
    }

    /// <summary>Backs and the nosing of the top reach past its underside: into its groove, behind it or before it.</summary>
    private static bool Meets(Part part) => part.Role is not (PartRole.Back or PartRole.Nosing);

    private static double Over(Wall wall, Length gap, Point3 corner) => wall.CeilingSlopes.Max(slope =>
    {
        var (x0, y0, x1, y1) = (slope.FromX.Nanometres, slope.FromHeight.Nanometres, slope.ToX.Nanometres, slope.ToHeight.Nanometres);
        var ceiling = y0 + ((double)(y1 - y0) * (corner.X.Nanometres - x0) / (x1 - x0));
        return corner.Y.Nanometres - (ceiling - gap.Nanometres);
    });

    private static IEnumerable<Point3> Corners(Part part) => PartSolid.Of(part).In(part.Place);

    private static string Millimetres(double nanometres) => FormattableString.Invariant($"{nanometres / 1e6:0.##} mm");
}

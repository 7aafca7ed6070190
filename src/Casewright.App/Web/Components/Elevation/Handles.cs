using Casewright.Engine.Editing;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using static Casewright.App.Web.Components.Elevation.ElevationPicture;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>Something on the drawing that can be taken hold of, as a line in mm of the drawing, y downwards.</summary>
public sealed record Handle(Drag Drag, string Name, Length At, double X0, double Y0, double X1, double Y1)
{
    /// <summary>The key that the page and the script share.</summary>
    public string Key => Drag.Key;
}

/// <summary>The handles of an elevation: lines between cases, the base of every run, the fixed shelves of the case chosen.</summary>
public static class Handles
{
    /// <summary>All of them.</summary>
    public static IEnumerable<Handle> Of(Job job, Casework casework, ElevationPicture picture, CaseBox? chosen)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(picture);
        foreach (var row in picture.Cases.Where(c => c.Tier == 0).GroupBy(c => c.Run, StringComparer.Ordinal))
        {
            CaseBox[] boxes = [.. row.OrderBy(c => c.Column)];
            var top = picture.WallHeight - picture.Cases.Where(c => c.Run == row.Key).Max(c => Mm(c.Y + c.Height));
            foreach (var (left, right) in boxes.Zip(boxes.Skip(1)))
            {
                var x = Mm(left.X + left.Width);
                yield return new(Drag.Line(row.Key, left.Column), $"line between case {left.Id} and case {right.Id}", left.X + left.Width, x, top, x, picture.WallHeight - Mm(left.Y));
            }

            if (job.Runs.FirstOrDefault(r => r.Id == row.Key) is { Base.Kind: not BaseKind.None } run)
            {
                var y = picture.WallHeight - Mm(run.Base.Height);
                yield return new(Drag.Base(row.Key), $"base height of run {row.Key}", run.Base.Height, Mm(boxes[0].X), y, Mm(boxes[^1].X + boxes[^1].Width), y);
            }
        }

        if (chosen is null || chosen.Wall != picture.Wall)
            yield break;
        foreach (var height in ShelfEditing.HeightsNow(casework, chosen.Id))
        {
            var y = picture.WallHeight - Mm(height);
            yield return new(Drag.ShelfOf(chosen.Run, chosen.Id, height), $"fixed shelf of case {chosen.Id}", height, Mm(chosen.X), y, Mm(chosen.X + chosen.Width), y);
        }
    }
}

using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Layout;

/// <summary>
/// Cut-outs for outlets and registers that stay where a case comes: in the back, or in the toe face for a register in the floor line, with
/// play all round. What would cut through an upright, shelf or nailer is left to the finding of the survey, because no cut-out helps there.
/// </summary>
internal static class CutOuts
{
    /// <summary>Play round an outlet or register: 3 mm (common practice, no source).</summary>
    public static Length Play { get; } = Length.FromMillimetres(3);

    /// <summary>The parts with their cut-outs.</summary>
    public static IEnumerable<Part> In(IReadOnlyList<Part> parts, Job job)
    {
        var features = job.Walls
            .SelectMany(w => (w.Survey?.Features ?? []).Where(f => !f.Moves && f.Kind is FeatureKind.Outlet or FeatureKind.Register).Select(f => (Wall: w.Id, Feature: f)))
            .ToList();
        return parts.Select(part => part.Role is PartRole.Back or PartRole.ToeFace && part.Place.IntoThickness == Axis.In
            ? With(part, features.Where(f => f.Wall == part.Place.Wall).Select(f => f.Feature))
            : part);
    }

    private static Part With(Part part, IEnumerable<WallFeature> features)
    {
        var cuts = features.Select(f => Cut(part, f)).OfType<CutOut>().ToList();
        return cuts.Count == 0 ? part : part with { Machining = [.. part.Machining, .. cuts] };
    }

    /// <summary>The rectangle of a feature in part coordinates; null where it does not lie wholly within the part.</summary>
    private static CutOut? Cut(Part part, WallFeature feature)
    {
        var (low, high) = (part.LowCorner, part.HighCorner);
        var (x0, x1) = (feature.X - Play, feature.X + feature.Width + Play);
        var (y0, y1) = (feature.Y - Play, feature.Y + feature.Height + Play);
        if (x0 <= low.X || x1 >= high.X || y0 <= low.Y || y1 >= high.Y)
            return null;
        var fromLeft = x0 - low.X;
        var (fromFoot, fromHead) = (y0 - low.Y, high.Y - y1);
        return part.Place.AlongLength == Axis.Up
            ? new(feature.Name, fromFoot, fromLeft, y1 - y0, x1 - x0)
            : new(feature.Name, fromLeft, part.Place.AlongWidth == Axis.Down ? fromHead : fromFoot, x1 - x0, y1 - y0);
    }
}

using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Papers.Documents;

/// <summary>The outline of a part seen from above, along its wall and out from it.</summary>
internal static class PlanOutline
{
    /// <summary>A level panel with its clipped corners; a part at 45 degrees as it stands; all others as their box.</summary>
    public static IReadOnlyList<Point3> Of(Part part)
    {
        if (part.Place.IntoThickness is Axis.Down or Axis.Up && part.Machining.OfType<Clip>().Any())
            return [.. PartSolid.Of(part).Reference.Select(p => part.Place.At(p.X, p.Y, Length.Zero))];
        var (low, high) = (part.LowCorner, part.HighCorner);
        if (part.Place.Eighths == 0)
            return [low, low with { X = high.X }, high, low with { Z = high.Z }];

        // An upright is seen on its foot, a strip on its upper edge.
        var (along, upright) = part.Place.AlongLength is Axis.Up or Axis.Down ? (part.Width, true) : (part.Length, false);
        Point3 At(Length far, Length through) => upright ? part.Place.At(Length.Zero, far, through) : part.Place.At(far, Length.Zero, through);
        return [At(Length.Zero, Length.Zero), At(along, Length.Zero), At(along, part.Thickness), At(Length.Zero, part.Thickness)];
    }
}

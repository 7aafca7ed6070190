using Casewright.Model.Parts;
using static Casewright.App.Web.Components.Elevation.ElevationPicture;

namespace Casewright.App.Web.Components.Elevation;

/// <summary>Doors and drawer fronts as the elevation draws them.</summary>
public static class FrontPicture
{
    /// <summary>Where the holes of a front's pull are, mm along the wall and above the floor.</summary>
    public static IEnumerable<(double X, double Y)> Pulls(Part front)
    {
        ArgumentNullException.ThrowIfNull(front);
        var from = front.Place.Origin;
        var upright = front.Place.AlongLength == Axis.Up;
        return front.Machining.OfType<Bore>().Where(b => b.Face == Face.Reference)
            .Select(b => upright ? (Mm(from.X + b.Y), Mm(from.Y + b.X)) : (Mm(from.X + b.X), Mm(from.Y + b.Y)));
    }
}

using Casewright.Model.Plans;

namespace Casewright.App.Web;

/// <summary>Where the splice line of a wall may not go, shown while it is dragged.</summary>
public static class SpliceZones
{
    /// <summary>Forbidden stretches of height in millimetres, of all uprights together.</summary>
    public static IReadOnlyList<(double From, double To)> Of(Plan plan, string wall)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _ = wall;
        return [];
    }
}

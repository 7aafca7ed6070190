using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Uprights;

/// <summary>Weight that uprights and cases carry.</summary>
public static class UprightLoads
{
    /// <summary>Mass in kg of what stands in a case; null when a shelf's load is missing.</summary>
    public static double? Contents(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        var sum = 0.0;
        foreach (var shelf in context.PartsOf(box).Where(p => ShelfReader.Roles.Contains(p.Role)))
        {
            if (shelf.LoadPerMetre is { } load)
                sum += load * ShelfReader.ClearSpans(context, shelf).Sum();
            else if (shelf.Role is PartRole.FixedShelf or PartRole.AdjustableShelf)
                return null;
        }

        return sum;
    }

    /// <summary>Mass in kg of the parts of a case.</summary>
    public static double OwnMass(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.PartsOf(box).Sum(context.Mass);
    }

    /// <summary>Cases standing on this one in the same column, itself included.</summary>
    public static IEnumerable<CaseBox> Stack(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(box);
        return context.Cases.Where(c => c.Run == box.Run && c.Column == box.Column && c.Tier >= box.Tier);
    }
}

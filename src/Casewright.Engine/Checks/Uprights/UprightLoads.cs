using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Measure;
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

    /// <summary>Weight in N on the most loaded upright of a case, what stands on the case included; null when a shelf's load is missing.</summary>
    public static double? OnOneUpright(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(box);
        var force = 0.0;
        foreach (var each in Stack(context, box))
        {
            if (Contents(context, each) is not { } contents)
                return null;

            // An inner upright takes a whole bay's share, an outer one half of it.
            force += (contents + OwnMass(context, each)) * Shelf.Gravity / (each.Bays > 1 ? each.Bays : 2);
        }

        return force;
    }

    /// <summary>Weight in N that the most loaded upright gains when all uprights of a case and of those on it become this thick instead.</summary>
    internal static double Thickened(CheckContext context, CaseBox box, Length from, Length to) => Stack(context, box)
        .Sum(each => context.PartsOf(each).Where(p => p.Role is PartRole.Side or PartRole.Partition).Sum(context.Mass)
            * ((to.Metres / from.Metres) - 1) * Shelf.Gravity / (each.Bays > 1 ? each.Bays : 2));

    /// <summary>Cases standing on this one in the same column, itself included.</summary>
    public static IEnumerable<CaseBox> Stack(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(box);
        return context.Cases.Where(c => c.Run == box.Run && c.Column == box.Column && c.Tier >= box.Tier);
    }
}

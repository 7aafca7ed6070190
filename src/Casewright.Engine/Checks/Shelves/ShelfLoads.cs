using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>Walks over the shelves that carry something.</summary>
internal static class ShelfLoads
{
    /// <summary>One finding for each shelf; parts carried along their length pass with a word, tops without a stated load are left out.</summary>
    public static IEnumerable<Finding> Each(
        CheckContext context, ICheck check, Func<CheckContext, Part, Shelf, Finding> one, Func<CheckContext, Part, Finding> missing)
    {
        foreach (var part in context.PartsWith(ShelfReader.Roles))
        {
            if (ShelfReader.Hold(context, part) == ShelfHold.Along)
                yield return CarriedAlong(check.Sheet, part);
            else if (part.LoadPerMetre is { } load)
                yield return one(context, part, ShelfReader.Read(context, part, load));
            else if (part.Role is not (PartRole.Top or PartRole.Bottom))
                yield return missing(context, part);
        }
    }

    /// <summary>A finding that says that nobody has stated the load.</summary>
    public static Finding Unloaded(ICheck check, Part part) => new()
    {
        Check = check.Sheet.Id,
        Severity = Severity.NotChecked,
        Subject = part.Id,
        Message = "Not checked: nobody has said what this shelf will carry.",
        Source = check.Sheet.Source,
        Standing = check.Sheet.Standing,
        Formula = check.Sheet.Formula,
        Advice = LoadAdvice,
    };

    /// <summary>What to give when the load is missing; figures of common practice, the 25 lb a foot of books (37 kg/m) measured by a state testing programme.</summary>
    public const string LoadAdvice =
        "Give the load per metre of shelf: novels 25 kg/m, mixed books 30 to 37, music, magazines or law 45, records 55, archive boxes 60.";

    private static Finding CarriedAlong(CheckSheet sheet, Part part) => new()
    {
        Check = sheet.Id,
        Severity = Severity.Pass,
        Subject = part.Id,
        Message = $"{part.Name} lies on base rails along its whole length.",
        Source = sheet.Source,
        Standing = sheet.Standing,
    };
}

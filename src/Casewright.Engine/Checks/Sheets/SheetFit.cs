using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Sizes of sheet that a part may be cut from, usable inside the edge trim, along and across the grain.</summary>
internal static class SheetFit
{
    /// <summary>Usable sizes along the grain (or the sheet's length) and across, for each full sheet of a part's material that may be bought or is on hand.</summary>
    public static IEnumerable<(Length Along, Length Across)> Usable(CheckContext context, Part part)
    {
        var trim = 2 * context.Job.Shop.Saw.EdgeTrim;
        foreach (var sheet in context.Job.Stock.Sheets.Where(s => s.Material == part.Material && !s.IsOffcut && (s.OnHand > 0 || s.Limit is null or > 0)))
            yield return sheet.GrainAcross ? (sheet.Width - trim, sheet.Length - trim) : (sheet.Length - trim, sheet.Width - trim);
    }

    /// <summary>Materials of these parts that no full sheet is on offer of, in the parts' order.</summary>
    public static IEnumerable<Material> WithoutSheets(CheckContext context, IEnumerable<Part> parts) => parts
        .Where(p => !context.Material(p).IsBoard).DistinctBy(p => p.Material, StringComparer.Ordinal)
        .Where(p => !Usable(context, p).Any()).Select(context.Material);

    /// <summary>Sizes of a part along and across the grain.</summary>
    public static (Length Along, Length Across) Sizes(Part part) =>
        part.Grain == Grain.AlongWidth ? (part.Width, part.Length) : (part.Length, part.Width);

    /// <summary>Whether a part may lie across the sheet as well.</summary>
    public static bool MayTurn(CheckContext context, Part part) => part.Grain == Grain.None || !context.Material(part).HasGrain;

    /// <summary>Whole parts from a sheet of which <paramref name="size"/> is one size: ⌊(usable + kerf)/(size + kerf)⌋.</summary>
    public static long Count(Length usable, Length size, Length kerf) => (usable + kerf) / (size + kerf);
}

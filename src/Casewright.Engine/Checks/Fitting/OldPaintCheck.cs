using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Fitting;

/// <summary>Old paint and ceilings in the room.</summary>
public sealed class OldPaintCheck : Check
{
    // Lead was banned from house paint in the United States in 1978.
    private const int LeadPaintUntil = 1978;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "old-paint",
        "Whether the building may hold lead paint or asbestos in textured ceilings.",
        "year built > 1978",
        "Ban of lead in house paint in the United States, 1978 (from memory); local rules come first",
        Standing.FromMemory);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        const string Care = "Have paint and textured ceilings tested before you sand, scrape or drill; follow local rules for lead and asbestos.";
        if (context.Job.Site.YearBuilt is not { } year)
            yield return NotChecked(context, "job", "the year of the building is not known.", Care);
        else
            yield return Rule(context, year <= LeadPaintUntil ? Severity.Caution : Severity.Pass, "job", year <= LeadPaintUntil ? $"The building is of {year}: old paint may hold lead." : $"The building is of {year}.", Care);
    }
}

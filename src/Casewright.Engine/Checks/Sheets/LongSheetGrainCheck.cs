using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Large sheets whose grain may run across.</summary>
public sealed class LongSheetGrainCheck : Check
{
    private static readonly Length Long = Length.FromMillimetres(2500);
    private static readonly Length Wide = Length.FromMillimetres(1500);

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "long-sheet-grain",
        "Large sheets in the plan that are stated with their grain along the length.",
        "",
        "Common practice: many large birch sheets quote the grain direction first, 1525 × 3050 has it across",
        Standing.CommonPractice);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var id in (context.Plan?.Sheets ?? []).Select(s => s.Stock).Distinct(StringComparer.Ordinal))
        {
            if (context.Job.Stock.Sheets.FirstOrDefault(s => s.Id == id) is not { } sheet || !context.Job.Stock.Material(sheet.Material).HasGrain)
                continue;
            var doubtful = !sheet.GrainAcross && Length.Max(sheet.Length, sheet.Width) > Long && Length.Min(sheet.Length, sheet.Width) >= Wide;
            yield return doubtful
                ? Rule(context, Severity.Caution, id, $"Sheet {id} is large, and the plan takes its grain to run along its length.", "Ask the dealer which way the face grain runs before you order.")
                : Rule(context, Severity.Pass, id, $"The grain of sheet {id} runs as stated.");
        }
    }
}

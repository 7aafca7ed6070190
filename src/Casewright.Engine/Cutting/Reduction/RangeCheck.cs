using System.Globalization;

namespace Casewright.Engine.Cutting.Reduction;

/// <summary>Refuses problems outside the stated ranges. These are faults of the caller, not of a job.</summary>
internal static class RangeCheck
{
    // Two sizes multiply into an area, and many areas add up; both stay exact below this.
    private const long LargestSize = 1L << 40;

    public static void Check(CuttingProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        Require(problem.Sheets.Count > 0, "Sheets", "is empty; at least one kind of sheet is needed");
        Require(problem.WorkLimit > 0, "WorkLimit", "is not above 0");
        CheckRules(problem.Rules);
        for (var i = 0; i < problem.Sheets.Count; i++)
            CheckSheet(problem.Sheets[i], string.Create(CultureInfo.InvariantCulture, $"Sheets[{i}]"));
        for (var i = 0; i < problem.Demands.Count; i++)
            CheckDemand(problem.Demands[i], string.Create(CultureInfo.InvariantCulture, $"Demands[{i}]"));
    }

    private static void CheckRules(CuttingRules rules)
    {
        Require(rules.Kerf is >= 0 and < LargestSize, "Rules.Kerf", "is negative or far too large");
        Require(rules.EdgeTrim is >= 0 and < LargestSize, "Rules.EdgeTrim", "is negative or far too large");
        Require(rules.Stages is null or >= 2, "Rules.Stages", "is below 2");
        Require(rules.MinimumStrip is null or >= 0, "Rules.MinimumStrip", "is negative");
        Require(rules.LongestRip is null or > 0, "Rules.LongestRip", "is not above 0");
    }

    private static void CheckSheet(SheetType sheet, string where)
    {
        Require(sheet.Length is > 0 and < LargestSize && sheet.Width is > 0 and < LargestSize, where, "has a size that is not above 0 or is far too large");
        Require(sheet.Cost >= 0, where, "has a negative cost");
        Require(sheet.Available is null or >= 0, where, "has a negative number on hand");
    }

    private static void CheckDemand(CuttingDemand demand, string where)
    {
        Require(demand.Count >= 0, where, "has a negative count");
        Require(demand.Options.Count > 0, where, "has no option");
        foreach (var option in demand.Options)
        {
            Require(option.Pieces.Count > 0, where, "has an option without pieces");
            Require(option.ExtraCost >= 0, where, "has an option of negative extra cost");
            Require(
                option.Pieces.All(p => p.Length is > 0 and < LargestSize && p.Width is > 0 and < LargestSize), where, "has a piece whose size is not above 0 or is far too large");
        }
    }

    private static void Require(bool holds, string where, string problem)
    {
        if (!holds)
            throw new ArgumentException($"{where} {problem}.");
    }
}

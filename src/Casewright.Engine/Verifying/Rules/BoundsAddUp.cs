using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Costs and counts are those of the plan itself, the whole is the sum of its materials, no bound exceeds what was reached, and a
/// plan is called proven exactly when cost and lower bound meet.
/// </summary>
internal sealed class BoundsAddUp : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var plan = evidence.Plan;
        return Sound("bounds", plan.Bounds)
            .Concat(plan.Materials.SelectMany(entry => Material(evidence, entry)))
            .Concat(Listed(evidence))
            .Concat(Whole(plan));
    }

    private static IEnumerable<Problem> Sound(string place, CutBounds bounds)
    {
        if (bounds.LowerBound > bounds.Cost)
            yield return new($"{place}.lowerBound", "The lower bound is above the cost.", $"{bounds.LowerBound}", $"at most {bounds.Cost}");
        if (bounds.SheetsLowerBound < 0 || bounds.SheetsLowerBound > bounds.Sheets)
            yield return new($"{place}.sheetsLowerBound", "The lower bound of sheets does not agree with the sheets.", $"{bounds.SheetsLowerBound}", $"0 to {bounds.Sheets}");
        if (bounds.Proven != (bounds.Cost == bounds.LowerBound))
            yield return new($"{place}.proven", "A plan is proven exactly when cost and lower bound meet.", $"{bounds.Proven} at {bounds.Cost} against {bounds.LowerBound}", $"{bounds.Cost == bounds.LowerBound}");
    }

    private static IEnumerable<Problem> Material(Evidence evidence, MaterialBounds entry)
    {
        var place = $"materials[{entry.Material}]";
        var sheets = evidence.Plan.Sheets.Where(sheet => sheet.Material == entry.Material).ToList();
        var boards = evidence.Plan.Boards.Where(board => board.Material == entry.Material).ToList();
        var cost = sheets.Sum(sheet => sheet.Cost) + boards.Sum(board => board.Cost) + Labour(evidence, entry.Material);
        if (entry.Bounds.Cost != cost)
            yield return new($"{place}.cost", "The cost is not that of the stock bought and the joints made.", $"{entry.Bounds.Cost}", $"{cost}");
        if (entry.Bounds.Sheets != sheets.Count + boards.Count)
            yield return new($"{place}.sheets", "The number of sheets is not that of the plan.", $"{entry.Bounds.Sheets}", $"{sheets.Count + boards.Count}");
        foreach (var problem in Sound(place, entry.Bounds))
            yield return problem;
    }

    /// <summary>Labour of the joints in one material: minutes of the method in proportion to the width, at the shop's rate, to the cent for each part.</summary>
    private static decimal Labour(Evidence evidence, string material) =>
        evidence.Joints()
            .Where(joint => joint.Part.Material == material && joint.Splice.Method != SpliceMethod.CoveredButt)
            .GroupBy(joint => joint.Part.Id, StringComparer.Ordinal)
            .Sum(part => decimal.Round(part.Sum(joint => Minutes(evidence, joint.Splice, joint.Part)) / 60 * evidence.Job.Shop.HourlyRate, 2, MidpointRounding.AwayFromZero));

    private static decimal Minutes(Evidence evidence, Splice splice, Part part)
    {
        var stated = evidence.Job.Shop.Splicing.Methods.FirstOrDefault(method => method.Method == splice.Method)?.Minutes ?? 0;
        return (decimal)stated * part.Width.Nanometres / Practice.MinutesWidth.Nanometres;
    }

    private static IEnumerable<Problem> Listed(Evidence evidence) =>
        from material in evidence.Plan.Sheets.Select(sheet => sheet.Material).Concat(evidence.Plan.Boards.Select(board => board.Material)).Distinct(StringComparer.Ordinal)
        where evidence.Plan.Materials.All(entry => entry.Material != material)
        select new Problem($"materials[{material}]", "The material is used but its bounds are not listed.", "nothing", "its bounds");

    private static IEnumerable<Problem> Whole(CutPlan plan)
    {
        var bounds = plan.Bounds;
        var cost = plan.Materials.Sum(entry => entry.Bounds.Cost);
        var lower = plan.Materials.Sum(entry => entry.Bounds.LowerBound);
        var leastSheets = plan.Materials.Where(entry => plan.Boards.All(board => board.Material != entry.Material)).Sum(entry => entry.Bounds.SheetsLowerBound);
        if (bounds.Cost != cost)
            yield return new("bounds.cost", "The cost is not the sum of the materials.", $"{bounds.Cost}", $"{cost}");
        if (bounds.LowerBound != lower)
            yield return new("bounds.lowerBound", "The lower bound is not the sum of the materials.", $"{bounds.LowerBound}", $"{lower}");
        if (bounds.Sheets != plan.Sheets.Count)
            yield return new("bounds.sheets", "The number of sheets is not that of the plan.", $"{bounds.Sheets}", $"{plan.Sheets.Count}");
        if (bounds.SheetsLowerBound != leastSheets)
            yield return new("bounds.sheetsLowerBound", "The lower bound of sheets is not the sum of the materials.", $"{bounds.SheetsLowerBound}", $"{leastSheets}");
    }
}

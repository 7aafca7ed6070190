using System.Globalization;
using Casewright.Model.Design;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Model.Splices;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents.Offers;

/// <summary>The sentences of an offer, out of the plan.</summary>
internal static class OfferWords
{
    public static IEnumerable<string> Scope(Plan plan)
    {
        var figures = new Figures(plan.Job.Units);
        foreach (var run in plan.Job.Runs)
        {
            var cases = plan.Cases.Where(c => c.Run == run.Id).ToList();
            if (cases.Count == 0)
                continue;
            var width = cases.Max(c => c.X + c.Width) - cases.Min(c => c.X);
            var top = cases.Max(c => c.Y + c.Height);
            var shelves = plan.Parts.Count(p => p.Run == run.Id && p.Role is PartRole.FixedShelf or PartRole.AdjustableShelf);
            yield return $"{run.Name}: {Words.Count(cases.Count, "case", "cases")} with {Words.Count(cases.Sum(c => c.Bays), "bay", "bays")}, {figures.Said(width)} wide over the cases, to {figures.Said(top)} above the floor, {figures.Said(run.Depth)} deep; "
                + $"{Words.Count(shelves, "shelf", "shelves")}; {plan.Job.Stock.Material(run.Material).Name}{Extras(run)}.";
        }

        yield return plan.Job.Shop.Finish is { } finish ? $"Finish: {finish.Name}, {Words.Count(finish.Coats.Count, "coat", "coats")}, colour and sheen by a sample that you approve." : "Left without a finish.";
        yield return "Delivered, levelled, fixed to the wall, scribed to walls and floor, and cleaned up.";
    }

    public static IEnumerable<string> TallPieces(Plan plan)
    {
        var figures = new Figures(plan.Job.Units);
        var parts = plan.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var uprights = plan.Parts.Where(p => p.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel).ToList();
        var joined = plan.Cutting.Splices.Where(s => s.Method != SpliceMethod.CoveredButt).GroupBy(s => s.Part, StringComparer.Ordinal).ToList();
        if (joined.Count == 0)
        {
            yield return $"All {Words.Count(uprights.Count, "upright is", "uprights are")} one piece from foot to head: no joint line runs across them.";
        }
        else
        {
            yield return $"Sheets come shorter than these pieces. {Words.Count(joined.Count, "piece is", "pieces are")} joined end to end by {string.Join(" or ", joined.SelectMany(g => g).Select(s => Words.Of(s.Method)).Distinct(StringComparer.Ordinal))}, glued, and flushed; {Whole(uprights.Count(u => joined.TrueForAll(j => j.Key != u.Id)))}.";
            foreach (var line in joined.SelectMany(g => g).Where(s => parts[s.Part].Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel).GroupBy(s => (parts[s.Part].Run, Height: s.SightLine ?? s.Position + parts[s.Part].Place.Origin.Y)))
                yield return $"{plan.Job.Runs.First(r => r.Id == line.Key.Run).Name}: a fine joint line {figures.Said(line.Key.Height)} above the floor, the same on {Words.Count(line.Count(), "upright", "uprights")}; the drawing shows it. {(plan.Job.Shop.Finish?.Clear == true ? "Under a clear finish it stays visible as a change of grain." : "Under paint it may show in raking light as the seasons change.")}";
        }

        foreach (var run in plan.Job.Runs.Where(r => r.Tiers.Count > 1))
            yield return $"{run.Name} is built in {Words.Count(run.Tiers.Count, "tier", "tiers")}; a line runs round where they meet.";
        if (plan.Cutting.Splices.Any(s => s.Method == SpliceMethod.CoveredButt))
            yield return "Backs meet behind a fixed shelf or a trim band; no line is seen.";
    }

    public static IEnumerable<string> Dates(Plan plan)
    {
        if (plan.Schedule is not { } schedule)
            yield break;
        yield return $"Work begins {PageStamp.Written(DateOnly.FromDateTime(schedule.Start))} if the order is signed in time for the stock to come, and is finished by {PageStamp.Written(plan.Job.FinishBy is { } promise && promise >= DateOnly.FromDateTime(schedule.Finish) ? promise : DateOnly.FromDateTime(schedule.Finish))}.";
        var site = schedule.Tasks.Where(t => t.Phase >= Model.Timeline.WorkPhase.Delivery).ToList();
        if (site.Count > 0)
            yield return $"We are in your room from {PageStamp.Written(DateOnly.FromDateTime(site.Min(t => t.Start)))}, for {Words.Count(site.SelectMany(t => t.Spans).Select(s => DateOnly.FromDateTime(s.From)).Distinct().Count(), "working day", "working days")}.";
        if (schedule.LoadShelvesFrom is { } load)
            yield return $"Shelves may be loaded from {PageStamp.Written(load)}, when the finish has hardened.";
    }

    public static IEnumerable<string> Assumptions(Plan plan)
    {
        var figures = new Figures(plan.Job.Units);
        foreach (var wall in plan.Job.Walls.Where(w => plan.Job.Runs.Any(r => r.Wall == w.Id)))
        {
            var ceiling = wall.CeilingSlopes.Count == 0 ? "lowest ceiling" : "ceiling where it does not slope, and under the slope as stated";
            yield return $"{wall.Name}: {figures.Said(wall.Width)} between its ends where it is tightest, "
                + $"{figures.Said(wall.Height)} from the highest floor to the {ceiling}. Walls, floor and ceiling stay as measured.";
        }

        var site = plan.Job.Site;
        if (site.Route is { Count: > 0 } route)
            yield return "The way in is free: " + string.Join("; ", route.Select(p => $"{p.Name}, {figures.Said(p.Width)} by {figures.Said(p.Height)}")) + ".";
        else
            yield return site.Route is null ? "The largest case goes in whole: the way in has not been measured yet, and the price may change when it is." : "Nothing narrow lies on the way in.";
        yield return site.Walls switch
        {
            WallStructure.WoodStuds => "The wall has sound wooden studs to fix to" + (site.StudSpacing is { } spacing ? $", {figures.Said(spacing)} apart" : "") + "; blocking where they are missed is extra.",
            WallStructure.SteelStuds => "The wall has steel studs; blocking for the fixings is extra.",
            WallStructure.Masonry => "The wall is sound masonry that holds a fixing of its rating.",
            _ => "The wall holds the fixings; what it is made of has not been looked at yet.",
        };
        yield return "The room is empty, dry, heated and plastered, with power and light, and stays locked while we work there.";
    }

    public static IEnumerable<string> Exclusions(Plan plan)
    {
        yield return "Electrical work, plumbing, plastering, floor laying and painting of walls.";
        yield return "Moving furniture, making good behind or beside the casework, and disposal of what was there before.";
        if (plan.Job.Site.YearBuilt is { } year && year < 1980)
            yield return string.Create(CultureInfo.InvariantCulture, $"Testing and treatment of old paint or other hazards: the building is of {year}.");
        yield return "Permits, and whatever a structural engineer may ask for.";
    }

    public static IEnumerable<string> Changes(Plan plan)
    {
        yield return plan.Job.Shop.HourlyRate > 0
            ? $"Changes after signing are agreed in writing before they are made, at {Words.Money(plan.Job.Shop.HourlyRate, plan.Job.Currency)} an hour plus material and tax; each may move the date."
            : "Changes after signing are agreed in writing with their price before they are made; each may move the date.";
        yield return "Where local rules, building codes or licensed trades ask for more than is stated here, they come first.";
    }

    private static string Whole(int uprights) => uprights == 0 ? "no upright is whole" : Words.Count(uprights, "upright is whole", "uprights are whole");

    private static string Extras(Run run)
    {
        var extras = new List<string>();
        if (run.Back.Kind != BackKind.None)
            extras.Add("with backs");
        if (run.Base.Kind == BaseKind.Plinth)
            extras.Add("on a base of its own");
        if (run.Head.Crown is not null)
            extras.Add("with a crown");
        return extras.Count == 0 ? "" : ", " + string.Join(", ", extras);
    }
}

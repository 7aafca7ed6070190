using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Design;
using Casewright.Model.Findings;

namespace Casewright.Engine.Checks.Building;

/// <summary>Weight of each loaded run on the floor.</summary>
public sealed class FloorLoadCheck : Check
{
    private const string Engineer = "Ask a structural engineer: joists that run along the wall and floors away from bearing walls carry least. Usual ratings are 1.5 to 2 kN/m² (30 to 40 psf) in homes, 2.5 to 3 (50 to 60) in offices and 5 to 7.5 (100 to 150) in archives.";

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "floor-load",
        "Weight of each loaded run on its own footprint, and spread over footprint and aisle, against the stated rating of the floor.",
        "p = (contents + casework) g/(w (d + aisle)) ≤ rating; local p = … /(w d)",
        "Statics; spreading over case and aisle is common practice and no proof; local codes and an engineer decide",
        Standing.CommonPractice)
    {
        Limits = [new("aisle", l => (double)l.Aisle.Millimetres, 900, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var run in context.Job.Runs)
        {
            if (context.Cases.Any(c => c.Run == run.Id))
                yield return One(context, run);
        }
    }

    private static string Mends(Say say, double local, double contents) =>
        $"Only a floor rated for {say.FloorLoadAtLeast(local)} or more bears it without spreading{(contents > 0 ? $"; this one bears {say.MassAtMost(contents)} of contents so" : "")}. ";

    private Finding One(CheckContext context, Run run)
    {
        var cases = context.Cases.Where(c => c.Run == run.Id).ToList();
        var contents = 0.0;
        foreach (var box in cases)
        {
            if (UprightLoads.Contents(context, box) is not { } each)
                return NotChecked(context, run.Id, "nobody has said what the shelves carry.", ShelfLoads.LoadAdvice);
            contents += each;
        }

        var mass = contents + context.PartsOfRun(run.Id).Sum(context.Mass);
        var width = cases.GroupBy(c => c.Column).Sum(g => g.Max(c => c.Width.Metres));
        var depth = cases.Where(c => c.Tier == 0).Max(c => c.Depth.Metres);
        var local = mass * Shelf.Gravity / (width * depth) / 1000;
        var spread = mass * Shelf.Gravity / (width * (depth + context.Limits.Aisle.Metres)) / 1000;
        // What decides is told as the value: the spread load where it is too much or nothing is known, else the local one.
        var decides = context.Job.Site.FloorRating is { } known && spread <= known ? local : spread;
        var figures = new Figures(decides, context.Job.Site.FloorRating, "kN/m²",
        [
            new("contents", Say.Number(contents, 0), "kg"),
            new("casework", Say.Number(mass - contents, 0), "kg"),
            new("on its own footprint", Say.Number(local, 2), "kN/m²"),
            new("over footprint and aisle", Say.Number(spread, 2), "kN/m²"),
        ]);
        var say = context.Say;
        var found = $"{run.Name} weighs {say.Mass(mass)} loaded: {say.FloorLoad(local)} on its footprint, {say.FloorLoad(spread)} over footprint and aisle.";
        if (context.Job.Site.FloorRating is not { } rating)
            return Report(context, Severity.NotChecked, run.Id, "Not checked: the rating of the floor is not stated. " + found, figures, Engineer);
        var severity = spread > rating ? Severity.Stop : local > rating ? Severity.Caution : Severity.Pass;
        return Report(context, severity, run.Id, $"{found} The floor is rated for {say.FloorLoad(rating)}.", figures, severity == Severity.Pass ? "" : Mends(say, local, rating * local > 0 ? (mass * rating / local) - (mass - contents) : 0) + Engineer);
    }
}

using Casewright.Model.Files.Shapes;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Plans;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>A whole plan file: the one description from which its writing and its schema are derived.</summary>
internal static class PlanShape
{
    /// <summary>Version of the plan file's form; it rises when a field changes its meaning or goes.</summary>
    public const int Version = 1;

    public static ViewShape<Plan> Shape { get; } = new ViewShape<Plan>("plan", "A job planned: what is built, and what is cut from what. Lengths are in millimetres.")
        .Constant("version", Version, "Version of this file's form.")
        .One("job", p => p.Job, Job, "The job it plans.")
        .Many("cases", p => p.Cases, PartShapes.Case, "Cases, by run, column and tier.")
        .Many("parts", Entries, PartShapes.Part, "Every part by itself.")
        .Many("pieces", p => p.Cutting.Pieces, CuttingShapes.Piece, "Every piece by itself, in the order of parts.")
        .Many("splices", p => p.Cutting.Splices, CuttingShapes.Splice, "Every splice, in the order of parts.")
        .Many("sheets", p => p.Cutting.Sheets, CuttingShapes.Sheet, "Sheets.")
        .Many("boards", p => p.Cutting.Boards, CuttingShapes.Board, "Boards.")
        .One("bounds", p => p.Cutting, CuttingShapes.Bounds, "How good the cutting is proven to be.")
        .Many("layouts", p => p.Layouts, CuttingShapes.LayoutChoice, "Sheet layouts of equal cost but of another character; empty when nobody looked for them.")
        .OneOrNull("timeline", p => p.Schedule, TimelineShapes.Timeline, "When everything is done; null when no timetable could be made.")
        .OneOrNull("price", p => p.Estimate, PriceShapes.Price, "What it costs and what is asked; null when it could not be priced.")
        .Many("schemes", p => p.Schemes, SchemeShapes.Scheme, "Ways to build the job, side by side; empty when nobody compared.")
        .Many("findings", p => p.Findings, Finding, "What the checks found, stops first.");

    private static ViewShape<Job> Job => new ViewShape<Job>("job", "Head of the job.")
        .Text("name", j => j.Name, "Name.")
        .Text("client", j => j.Client, "Client; may be empty.")
        .DateOrNull("date", j => j.Date, "Date printed on the papers.")
        .Count("revision", j => j.Revision, "Revision printed on the papers.")
        .Choice("units", j => j.Units, "Unit of its papers.")
        .Text("currency", j => j.Currency, "Currency of all amounts, ISO 4217.");

    private static ViewShape<Finding> Finding => new ViewShape<Finding>("finding", "What one check reports.")
        .Text("check", f => f.Check, "Id of the check in plain words.")
        .Choice("severity", f => f.Severity, "How grave it is.")
        .Text("subject", f => f.Subject, "Id of what it is about.")
        .Text("message", f => f.Message, "What was found, in one sentence.")
        .NumberOrNull("value", f => f.Value, "The computed value; null when it is no number.")
        .NumberOrNull("limit", f => f.Limit, "The limit that the value is held to.")
        .Text("unit", f => f.Unit, "Unit of value and limit; empty when they have none.")
        .Text("formula", f => f.Formula, "The formula, in symbols.")
        .Text("source", f => f.Source, "Where formula and limit come from.")
        .Choice("standing", f => f.Standing, "What stands behind them.")
        .Text("advice", f => f.Advice, "What would mend it; empty for a pass.")
        .Many("inputs", f => f.Inputs, Input, "The figures that went in.");

    private static ViewShape<FindingInput> Input => new ViewShape<FindingInput>("input", "A figure that went into a check.")
        .Text("name", i => i.Name, "What it is.")
        .Text("value", i => i.Value, "Its value in words or digits.")
        .Text("unit", i => i.Unit, "Its unit; empty when it has none.");

    private static IEnumerable<PartEntry> Entries(Plan plan)
    {
        var pieces = plan.Cutting.Pieces.ToLookup(p => p.Part, p => p.Id, StringComparer.Ordinal);
        var splices = plan.Cutting.Splices.ToLookup(s => s.Part, s => s.Id, StringComparer.Ordinal);
        return plan.Parts.Select(p => new PartEntry(p, [.. pieces[p.Id]], [.. splices[p.Id]]));
    }
}

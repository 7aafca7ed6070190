using Casewright.Model.Files.Shapes;
using Casewright.Model.Schemes;

namespace Casewright.Model.Files.PlanShapes;

/// <summary>Schemes and nudges as other programs read them.</summary>
internal static class SchemeShapes
{
    public static ViewShape<Scheme> Scheme { get; } = new ViewShape<Scheme>("scheme", "One way to build the job, planned in full. Figures are null when there is no plan.")
        .Choice("name", s => s.Kind, "Which way.")
        .Flag("feasible", s => s.Feasible, "Whether it was planned and nothing stops it that does not stop the job as stated.")
        .Texts("why", s => s.Why, "Why it is not feasible; empty when it is.")
        .Texts("changes", s => s.Changes, "What was changed of the job as stated.")
        .CountOrNull("sheets", s => s.Figures?.Sheets, "Sheets used, on hand and bought.")
        .CountOrNull("splices", s => s.Figures?.Splices, "Joints end to end, covered butts of backs not counted.")
        .DecimalOrNull("material", s => s.Figures?.Material, "Cost of the sheets and boards bought.")
        .DecimalOrNull("hours", s => s.Figures is { } f ? Math.Round(f.Hours, 4) : null, "Hands-on hours.")
        .DecimalOrNull("stationDays", s => s.Figures?.StationDays, "Days of a glue-up station.")
        .CountOrNull("leadDays", s => s.Figures?.LeadDays, "Working days until the last bought stock is there.")
        .CountOrNull("linesInView", s => s.Figures?.LinesInView, "Heights at which a joint or a line between cases is seen, run by run.")
        .NumberOrNull("heaviest", s => s.Figures?.Heaviest, "Heaviest case without loose shelves, in kg.")
        .LengthOrNull("longest", s => s.Figures?.Longest, "Longest part.")
        .DecimalOrNull("total", s => s.Figures?.Net, "Price before tax.")
        .DateOrNull("finish", s => s.Figures?.Finish, "Day on which it is finished.");

    public static ViewShape<Nudge> Nudge { get; } = new ViewShape<Nudge>("nudge", "A small change of the job, planned in full. Savings are positive.")
        .Text("change", n => n.Change, "The change in words.")
        .Count("sheets", n => n.Sheets, "Sheets saved.")
        .Count("splices", n => n.Splices, "Joints saved.")
        .Decimal("hours", n => n.Hours, "Hands-on hours saved.")
        .Count("days", n => n.Days, "Working days saved.")
        .Decimal("money", n => n.Money, "Price saved before tax.")
        .Texts("costs", n => n.Costs, "What it costs in looks, storage and sag.")
        .Texts("mends", n => n.Mends, "Stops of the job as stated that it does away with.");
}

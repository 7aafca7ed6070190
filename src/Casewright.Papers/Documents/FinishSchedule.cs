using System.Globalization;
using Casewright.Model.Collections;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;
using Casewright.Papers.Documents.Timetable;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>What is finished with what: surfaces, coats with their film and drying, sanding of joints, what is masked, and when.</summary>
public static class FinishSchedule
{
    /// <summary>The pages; none for work that is not finished by the shop.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Job.Shop.Finish is not { } finish)
            return [];
        var flow = Drafting.Flow(
            DocumentKind.FinishSchedule, settings, landscape: false,
            new("Finish schedule", finish.Name), "Surfaces, coats, drying, sanding and masking.",
            "Try the whole system on an offcut first, joint and all.");
        Surfaces(flow, plan);
        Coats(flow, plan, finish);
        Sanding(flow, plan, finish);
        Masking(flow, plan);
        Times(flow, plan, finish);
        Cautions(flow);
        return flow.Finish();
    }

    /// <summary>Square metres of the faces of a part that take finish.</summary>
    private static decimal AreaOf(Part part) =>
        ((part.ReferenceFace == Exposure.Shows ? 1 : 0) + (part.OppositeFace == Exposure.Shows ? 1 : 0)) * Metres(part.Length.Nanometres) * Metres(part.Width.Nanometres);

    private static decimal Metres(long nanometres) => nanometres / 1_000_000_000m;

    private static void Surfaces(PageFlow flow, Plan plan)
    {
        flow.Heading("Surfaces");
        Column[] columns =
        [
            new("What", 1.6),
            new("Parts", Fixed: 14, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Faces that show", Fixed: 22, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Square metres", Fixed: 24, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Finished", 1.2),
        ];
        var shown = plan.Parts.Where(p => AreaOf(p) > 0).ToList();
        var rows = shown.GroupBy(p => p.Role).OrderBy(g => g.Key).Select(g => Row.Of(
            new(Name(g.Key)),
            new(Whole(g.Count())),
            new(Whole(g.Sum(p => (p.ReferenceFace == Exposure.Shows ? 1 : 0) + (p.OppositeFace == Exposure.Shows ? 1 : 0)))),
            new(Number(g.Sum(AreaOf))),
            new(InTheShop(g.Key) ? "in the shop" : "in the shop; touch up after fitting")));
        Table.Draw(flow, columns, [.. rows, Row.Note($"In all {Number(shown.Sum(AreaOf))} m² of faces; edges come on top.")]);
    }

    private static void Coats(PageFlow flow, Plan plan, FinishSystem finish)
    {
        flow.Heading("Coats");
        var area = plan.Parts.Sum(AreaOf);
        Column[] columns =
        [
            new("No", Fixed: 9, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Coat", 1.4),
            new("How", 0.8),
            new("Litres", Fixed: 16, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Wet film, µm", Fixed: 18, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Dries, hours", Fixed: 18, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Before it", 1),
        ];
        // A litre over so many square metres stands 1000/coverage micrometres high while it is wet.
        Table.Draw(flow, columns, [.. finish.Coats.Select((c, i) => Row.Of(
            new(Whole(i + 1)),
            new(c.Name),
            new(c.Application == CoatApplication.Spray ? "sprayed" : "brushed or rolled"),
            new(Number(Math.Ceiling(area / c.Coverage * 10) / 10)),
            new(Whole((int)Math.Round(1000 / c.Coverage))),
            new(c.DryHours.ToString("0.#", CultureInfo.InvariantCulture)),
            new(i == 0 ? "sand, dust off" : c.DenibFirst ? "de-nib, dust off" : "dust off")))]);
        var film = plan.Job.Shop.Checks.FilmThickness;
        flow.Paragraph($"Dry film on one face taken as {LengthWords(plan, film)}: loose shelves and joints have room for it only where it is no thicker. Spraying loses more than brushing; the litres are those on the wood.", Lettering.Note);
    }

    private static void Sanding(PageFlow flow, Plan plan, FinishSystem finish)
    {
        flow.Heading("Sanding");
        var joints = plan.Cutting.Splices.Where(s => s.Method != SpliceMethod.CoveredButt).ToList();
        if (joints.Count > 0)
        {
            var shown = plan.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
            var visible = joints.Where(s => shown.TryGetValue(s.Part, out var p) && AreaOf(p) > 0).Select(s => s.Part).Distinct(StringComparer.Ordinal).ToList();
            flow.Paragraph(finish.Clear
                ? $"Joints of {string.Join(", ", visible)}: scrape the glue off while it is rubbery, flush after the cure, then sand across the joint line with a hard block and along the grain at the end. Glue left in the pores shows under a clear finish: wipe with water and look in raking light before the first coat."
                : $"Joints of {string.Join(", ", visible)}: flush after the cure, fill what is open, sand level with a long hard block, prime, look in raking light, fill again. A joint that is proud today is proud for ever; one that is filled before the glue has cured sinks.");
        }

        flow.Paragraph("Faces by machine, edges eased by hand; the same last grit everywhere that is seen together. Dust off before every coat.");
    }

    private static void Masking(PageFlow flow, Plan plan)
    {
        flow.Heading("Mask");
        foreach (var line in MaskingOf(plan))
        {
            flow.Draw(Math.Max(5.4, WordWrap.Lines(line, Lettering.Body, flow.Body.Width - 7).Count * Lettering.Body.LineHeight), (sketch, box) =>
            {
                Symbols.TickBox(sketch, box.Left, box.Top + 0.6, 4);
                sketch.Paragraph(line, box.Left + 7, box.Top, box.Width - 7, Lettering.Body);
            });
        }
    }

    private static IEnumerable<string> MaskingOf(Plan plan)
    {
        var machining = plan.Parts.SelectMany(p => p.Machining).ToList();
        if (machining.Exists(m => m is Dado or Groove or Rabbet))
            yield return "Dados, grooves and rabbets of parts that are finished before assembly: glue does not hold on paint.";
        if (machining.Exists(m => m is PinRow))
            yield return "Pin holes, or run the bit through by hand afterwards.";
        if (plan.Parts.Any(p => p.Role == PartRole.Filler))
            yield return "The edges of fillers that are scribed on site: they are cut again and touched up there.";
        if (plan.Parts.Any(p => p.Role is PartRole.Crown or PartRole.BaseMould or PartRole.LightRail))
            yield return "Ends of crown and mouldings that are mitred on site.";
        if (plan.Cases.Count > 1)
            yield return "Sides where cases are joined to one another: a film on both makes the run longer and may stick.";
    }

    private static void Times(PageFlow flow, Plan plan, FinishSystem finish)
    {
        if (plan.Schedule is not { } schedule || schedule.Tasks.All(t => t.Phase != WorkPhase.Finishing))
            return;
        var index = new TimetableIndex(plan.Job, schedule);
        flow.Heading("When");
        Column[] columns = [new("Done", Fixed: 9), new("From", Fixed: 34, Lettering: Lettering.Figure), new("To", Fixed: 34, Lettering: Lettering.Figure), new("What", 2), new("Dry", Fixed: 34, Lettering: Lettering.Figure)];
        Table.Draw(flow, columns, [.. index.Tasks.Where(t => t.Phase == WorkPhase.Finishing).Select(t => Row.Of(
            Cell.TickBox,
            new($"{TimetableIndex.Day(t.Start)} {TimetableIndex.Clock(t.Start)}"),
            new($"{TimetableIndex.Day(t.Finish)} {TimetableIndex.Clock(t.Finish)}"),
            new(t.Name),
            new(t.RunsOn.Count == 0 ? "" : $"{TimetableIndex.Day(t.RunsOn[0].Until)} {TimetableIndex.Clock(t.RunsOn[0].Until)}")))]);
        if (schedule.LoadShelvesFrom is { } load)
            flow.Paragraph($"Books and boxes not before {PageStamp.Written(load)}: the last coat hardens {Words.Count(finish.DaysBeforeLoading, "day", "days")}; what is set on it sooner sticks.", Lettering.BodyStrong);
    }

    private static void Cautions(PageFlow flow)
    {
        flow.Gap(3);
        flow.Paragraph("Air the room, wear the mask the can asks for, keep flames and sparks away. Rags with oil catch fire by themselves: spread them flat outdoors or drown them. Follow the can and local rules where they ask for more.", Lettering.Note);
    }

    private static bool InTheShop(PartRole role) => role is not (PartRole.Filler or PartRole.Crown or PartRole.ToeFace or PartRole.TrimBand
        or PartRole.BaseMould or PartRole.LightRail);

    private static string LengthWords(Plan plan, Model.Measure.Length length) => Model.Measure.LengthFormat.Exact(length, plan.Job.Units);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Number(decimal number) => number.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Name(PartRole role) => role switch
    {
        PartRole.Side => "sides",
        PartRole.Partition => "partitions",
        PartRole.Top => "tops",
        PartRole.Bottom => "bottoms",
        PartRole.FixedShelf => "fixed shelves",
        PartRole.AdjustableShelf => "loose shelves",
        PartRole.Back => "backs",
        PartRole.Nailer => "nailers in view",
        PartRole.Nosing => "nosings and lippings",
        PartRole.Stile or PartRole.Rail => "face frames",
        PartRole.TrimBand => "trim bands",
        PartRole.Filler => "fillers",
        PartRole.EndPanel => "end panels",
        PartRole.ToeFace => "toe faces",
        PartRole.Crown => "crown",
        PartRole.SlidePacker => "slide packers",
        PartRole.BaseMould => "base mould",
        PartRole.LightRail => "light rail",
        _ => "other parts",
    };
}

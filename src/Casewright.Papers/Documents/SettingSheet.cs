using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Collections;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>What each case asks of those who set it: hands, headroom to tilt it up, what its fixings must hold, and the cautions of the site.</summary>
public static class SettingSheet
{
    private static readonly Lettering Figure = Lettering.Figure.Sized(13);

    /// <summary>The pages; none without cases.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Cases.Count == 0)
            return [];
        var index = new PlanIndex(plan);
        var context = new CheckContext(plan.Job, new(plan.Cases, plan.Parts, []), plan.Cutting);
        var flow = Drafting.Flow(
            DocumentKind.Setting, settings, landscape: false, new("Setting the cases", "hands, headroom and fixings, case by case"),
            "What each case asks of those who set it.", index.Figures.FootNote);
        Table.Draw(flow, Columns(index), [.. Rows(index, context)]);
        flow.Gap(2);
        flow.Paragraph("Headroom is what a case needs to be tilted up from lying on the floor. Screws and anchors for the fixings: finding case-anchorage. A case is fixed only when every fixing is in; load it after that.", Lettering.Note);
        CautionStrip.Draw(flow, Work.Lifting, Work.Installing);
        return flow.Finish();
    }

    private static Column[] Columns(PlanIndex index) =>
    [
        new("Set", Fixed: 8),
        new("Case", 0.8, Lettering: Lettering.ListCode),
        new("Weight", 0.8, Anchor: Anchor.End, Lettering: Figure),
        new("Hands", Fixed: 13, Anchor: Anchor.End, Lettering: Figure),
        new($"Headroom {index.Figures.Unit}", 0.9, Anchor: Anchor.End, Lettering: Figure),
        new($"Ceiling {index.Figures.Unit}", 0.9, Anchor: Anchor.End, Lettering: Figure),
        new("Fixings into the structure, at the top", 2, Lettering: Lettering.Body.Sized(10)),
    ];

    private static IEnumerable<Row> Rows(PlanIndex index, CheckContext context) => index.Plan.Cases.Select(box => RowOf(index, context, box));

    private static Row RowOf(PlanIndex index, CheckContext context, CaseBox box)
    {
        var say = context.Say;
        var mass = CaseWeightCheck.MassToLift(context, box);
        var people = CaseWeightCheck.People(mass, context.Limits.MassPerPerson);
        var headroom = Model.Measure.Length.FromNanometres((long)Math.Ceiling(TiltUp.Headroom(box.Height.Metres, box.Depth.Metres) * 1e9)).CeilingTo(say.Step) + context.Limits.TiltPlay;
        var ceiling = index.Plan.Job.Walls.FirstOrDefault(wall => wall.Id == box.Wall)?.Height;
        var force = AnchorageCheck.ForcePerFixing(context, box);
        return Row.Of(
            Cell.TickBox,
            new(box.Id),
            new(say.Mass(mass)),
            new(people.ToString(CultureInfo.InvariantCulture)),
            new(index.Figures.Main(headroom), Second: index.Figures.Other(headroom)),
            ceiling is { } high ? new(index.Figures.Main(high), Second: index.Figures.Other(high)) : new("measure"),
            new($"{Words.Count(context.Limits.FixingsPerCase, "fixing", "fixings")}, each to hold {say.Force(force)}"));
    }
}

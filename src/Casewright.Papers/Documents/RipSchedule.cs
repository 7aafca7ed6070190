using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>All rips of all sheets by fence setting, the widest first, so that the fence is set once for each.</summary>
public static class RipSchedule
{
    private static readonly Lettering Setting = Lettering.Figure.Sized(18);

    /// <summary>The pages; none when nothing is ripped.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var rows = Rows(index).ToList();
        if (rows.Count == 0)
            return [];
        var flow = Drafting.Flow(
            DocumentKind.RipSchedule, settings, landscape: false,
            new("Rip schedule", "set the fence once, rip this width from all sheets named, then the next"),
            "All rips by fence setting.", index.Figures.FootNote);
        Table.Draw(flow, Columns(index), rows);
        flow.Gap(3);
        flow.Paragraph("Edge trim comes first on every sheet, from its good edge. A sheet whose layout crosscuts first is cut by its own page.", Lettering.Note);
        DrawChoices(flow, index);
        CautionStrip.Draw(flow, Work.Sawing, Work.Sanding);
        return flow.Finish();
    }

    /// <summary>Other layouts of the same cost, where somebody looked for them and there are some.</summary>
    private static void DrawChoices(PageFlow flow, PlanIndex index)
    {
        if (index.Plan.Layouts.Count < 2)
            return;
        flow.Heading("Layouts of the same cost");
        Column[] columns =
        [
            new("Best at", 1.4),
            new("Settings", Fixed: 20, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Cuts", Fixed: 16, Anchor: Anchor.End, Lettering: Lettering.Figure),
            new("Largest offcut " + index.Figures.Unit, 1.2, Lettering: Lettering.Figure),
            new("Kept", Fixed: 26, Lettering: Lettering.Figure),
            new("This plan", Fixed: 22),
        ];
        Table.Draw(flow, columns, [.. index.Plan.Layouts.Select(choice => Row.Of(
            new(Words.Of(choice.Aim)),
            new(choice.Settings.ToString(CultureInfo.InvariantCulture)),
            new(choice.Cuts.ToString(CultureInfo.InvariantCulture)),
            new(choice.Largest is { } largest ? index.Figures.Size(largest.Length, largest.Width) : "none", Second: choice.Largest is { } other ? index.Figures.OtherSize(other.Length, other.Width) : ""),
            new(string.Create(CultureInfo.InvariantCulture, $"{choice.Kept}, {choice.KeptArea:0.00} m²")),
            new(choice.Chosen ? "yes" : "")))]);
        flow.Gap(2);
        flow.Paragraph("To follow the other one, set shop.saw.aim in the job and plan it again.", Lettering.Note);
    }

    private static Column[] Columns(PlanIndex index) =>
    [
        new("Done", Fixed: 10),
        new($"Fence at {index.Figures.Unit}", Fixed: 34, Anchor: Anchor.End, Lettering: Setting),
        new("Rips", Fixed: 16, Anchor: Anchor.End, Lettering: Setting),
        new("Sheets (rips each)", Lettering: Lettering.Figure.Sized(14)),
    ];

    private static IEnumerable<Row> Rows(PlanIndex index)
    {
        var rips = index.Plan.Cutting.Sheets.Where(sheet => !sheet.Sawn).SelectMany(sheet => sheet.Cuts.Where(cut => cut is { Kind: CutKind.Rip, Stage: > 0 }).Select(cut => (Sheet: sheet, Cut: cut)));
        foreach (var material in rips.GroupBy(rip => rip.Sheet.Material, StringComparer.Ordinal))
        {
            yield return Row.Heading(index.Material(material.Key).Name);
            foreach (var setting in material.GroupBy(rip => rip.Cut.Setting).OrderByDescending(setting => setting.Key))
            {
                var sheets = setting.GroupBy(rip => rip.Sheet.Id, StringComparer.Ordinal)
                    .Select(sheet => string.Create(CultureInfo.InvariantCulture, $"{sheet.Key} ({sheet.Count()})"));
                yield return Row.Of(
                    Cell.TickBox,
                    new(index.Figures.Main(setting.Key), Second: index.Figures.Other(setting.Key)),
                    new(setting.Count().ToString(CultureInfo.InvariantCulture)),
                    new(string.Join(", ", sheets)));
            }
        }
    }
}

using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Shelves;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Site;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Calculation sheets and span tables.</summary>
public class CalculationPaperTests
{
    private static readonly PaperSettings A4 = new(PaperSize.A4, new(2026, 1, 1));

    private static Plan Checked(UnitSystem units = UnitSystem.Millimetres)
    {
        var plan = HandPlan.Of(units, cases: 2);
        return plan with { Findings = CheckStage.Run(plan.Job, new(plan.Cases, plan.Parts, []), plan.Cutting) };
    }

    private static string Words(Packet packet) => string.Join(' ', packet.Pages.SelectMany(page => page.Scene.Texts).Select(text => text.Text));

    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Millimetres)]
    [InlineData(PaperSize.Letter, UnitSystem.Inches)]
    public void Calculation_sheets_of_every_check_and_the_span_tables_are_clean_pages(PaperSize size, UnitSystem units)
    {
        var plan = Checked(units);
        var settings = new PaperSettings(size, new(2026, 1, 1));
        var pages = CheckCatalogue.All.Select(check => Packet.OfCalculations(plan, settings, check.Sheet.Id)!).SelectMany(packet => packet.Pages)
            .Concat(Packet.OfSpanTables(plan, settings).Pages);
        var faults = pages.SelectMany(page => LayoutCheck.Faults(page.Scene, new PageFormat(size, false).Printed).Select(fault => $"{page.Scene.Title}: {fault}"));
        Assert.Equal("", string.Join('\n', faults.Take(20)));
    }

    [Fact]
    public void A_calculation_sheet_holds_formula_figures_result_limit_source_and_standing()
    {
        var plan = Checked();
        foreach (var check in CheckCatalogue.All)
        {
            var finding = CalculationSheets.Foremost(plan.Findings.Where(f => f.Check == check.Sheet.Id));
            var words = Words(Packet.OfCalculations(plan, A4, check.Sheet.Id)!);
            void Has(string text) => Assert.Contains(text.Split(' ')[0], words, StringComparison.Ordinal);
            Has(check.Sheet.LooksAt);
            Has(finding.Formula);
            Has(finding.Advice);
            Assert.Contains(Papers.Documents.Words.Of(finding.Standing), words, StringComparison.Ordinal);
            Assert.Contains("Local codes", words, StringComparison.Ordinal);
            if (finding.Value is { } value)
                Assert.Contains(Papers.Documents.Words.Number(value), words, StringComparison.Ordinal);
            Assert.All(check.Sheet.Limits, limit => Has(limit.Name));
        }
    }

    [Fact]
    public void The_packet_holds_calculations_of_stops_and_cautions_only_on_request()
    {
        var plan = Checked();
        Assert.DoesNotContain(Packet.Of(plan, A4).Pages, page => page.Document == DocumentKind.Calculations);
        var sheets = Packet.Of(plan, A4 with { Calculations = true }).Pages.Where(page => page.Document == DocumentKind.Calculations).ToList();
        Assert.All(CalculationSheets.ToLookAt(plan).Select(finding => finding.Check).Distinct(), check => Assert.Contains(sheets, page => page.Scene.Description.Contains(check, StringComparison.Ordinal)));
        Assert.Null(Packet.OfCalculations(plan, A4, "no-such-check"));
    }

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Inches)]
    public void Every_figure_of_the_span_tables_passes_its_check_and_a_step_more_does_not(UnitSystem units)
    {
        var plan = Checked(units);
        var limits = plan.Job.Shop.Checks;
        var depth = plan.Job.Runs[0].Depth;
        var step = units == UnitSystem.Inches ? Length.FromInches(0, 1, 4) : Length.FromMillimetres(5);
        foreach (var support in Enum.GetValues<SpanSupport>())
        {
            foreach (var limit in Enum.GetValues<SpanLimit>())
            {
                var table = SpanTables.Table(plan, support, limit);
                foreach (var row in table.Rows)
                {
                    for (var i = 0; i < table.Loads.Count; i++)
                    {
                        bool Keeps(Length span) => SpanTable.Keeps(
                            SpanTable.ShelfOf(row.Material, table.Loads[i], depth, support) with { Spans = [span.Metres] }, limit, limits, Climate.Heated);
                        Assert.True(row.Spans[i] == Length.Zero || Keeps(row.Spans[i]), $"{row.Material.Name} {table.Loads[i]}");
                        if (row.Spans[i] + step > SpanTable.Longest)
                            continue;
                        Assert.False(Keeps(row.Spans[i] + step), $"{row.Material.Name} {table.Loads[i]}");
                    }
                }
            }
        }
    }

    [Fact]
    public void The_table_of_the_woodwork_standard_prints_what_the_published_formula_gives()
    {
        // Architectural Woodwork Standards 2009, p. 279: L = ∛(384 E t³/12 ÷ (5·144·q)), no creep, no own weight; shear costs a little.
        var plan = Checked();
        var table = SpanTables.Table(plan, SpanSupport.Plain, SpanLimit.Standard);
        var depth = plan.Job.Runs[0].Depth.Metres;
        foreach (var row in table.Rows)
        {
            var figures = Casewright.Engine.Checks.Materials.MaterialTable.For(row.Material);
            var thickness = row.Material.Thickness.Metres;
            var published = Math.Cbrt(384 * figures.ElasticityAlong * Math.Pow(thickness, 3) / 12 / (5 * 144 * 2394));
            if (published * depth * 2394 < 90.7 * 9.80665)
                Assert.InRange(row.Spans[0].Metres, (0.97 * published) - 0.005, published);
        }
    }

    [Fact]
    public void Nosing_and_cleat_never_shorten_a_span_and_every_span_stands_on_the_paper()
    {
        var plan = Checked();
        var (plain, cleat) = (SpanTables.Table(plan, SpanSupport.Plain, SpanLimit.Unseen), SpanTables.Table(plan, SpanSupport.NosedOnCleat, SpanLimit.Unseen));
        Assert.All(plain.Rows.Zip(cleat.Rows), rows => Assert.All(rows.First.Spans.Zip(rows.Second.Spans), spans => Assert.True(spans.Second >= spans.First)));
        var words = Words(Packet.OfSpanTables(plan, A4));
        Assert.All(plain.Rows.SelectMany(row => row.Spans).Where(span => span > Length.Zero), span => Assert.Contains(span.Millimetres.ToString("0.#", CultureInfo.InvariantCulture), words, StringComparison.Ordinal));
    }
}

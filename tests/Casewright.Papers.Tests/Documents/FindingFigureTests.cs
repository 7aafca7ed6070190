using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Papers.Documents;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Figures of findings in inches and pounds, against the definitions of the units.</summary>
public class FindingFigureTests
{
    private static readonly FindingFigures Inches = new(UnitSystem.Inches);
    private static readonly FindingFigures Metric = new(UnitSystem.Millimetres);

    [Theory]
    [InlineData(25.4, "mm", 1, "in")]
    [InlineData(0.45359237, "kg", 1, "lb")]
    [InlineData(37.2, "kg/m", 25, "lb/ft")]
    [InlineData(4.4482216152605, "N", 1, "lbf")]
    [InlineData(112.98483, "N·m", 1000, "in·lbf")]
    [InlineData(6.894757293168, "N/mm²", 1000, "psi")]
    [InlineData(2.394, "kN/m²", 50, "psf")]
    [InlineData(2394, "Pa", 50, "psf")]
    [InlineData(20, "°C", 68, "°F")]
    [InlineData(3, "screws", 3, "screws")]
    public void A_figure_is_told_in_the_unit_of_the_job(double metric, string unit, double customary, string called)
    {
        // 25.4 mm, 0.45359237 kg and 4.4482216152605 N by definition; 25 lb/ft is 37.2 kg/m, 50 psf is 2394 Pa, 1000 in·lbf is 112.98 N·m.
        Assert.Equal(customary, Inches.Value(metric, unit), customary * 1e-3);
        Assert.Equal(called, Inches.Unit(unit));
        Assert.Equal((metric, unit), (Metric.Value(metric, unit), Metric.Unit(unit)));
    }

    [Fact]
    public void Value_limit_and_inputs_are_told_together()
    {
        var finding = new Finding { Check = "doors-clear-of-wall", Severity = Severity.Caution, Subject = "D", Message = "m", Value = 27, Limit = 40, Unit = "mm", Source = "s", Standing = Standing.Arithmetic };
        Assert.Equal("27 against 40 mm", Metric.Against(finding));
        Assert.Equal("1.06 against 1.57 in", Inches.Against(finding));
        Assert.Equal("clear spans 35.4 + 35.4 in", Inches.Said(new("clear spans", "900 + 900", "mm")));
        Assert.Equal("rear edge held by the back", Inches.Said(new("rear edge", "held by the back", "")));
    }

    [Fact]
    public void The_unit_of_a_limit_stands_beside_its_figure()
    {
        Assert.Equal("limit: aisle 900 mm (common practice, no source)", Metric.Said(new("limit: aisle", "900 (common practice, no source)", "mm")));
        Assert.Equal("limit: pull 50 lbf (50 lbf, common practice, no source)", Inches.Said(new("limit: pull", "222.4 (50 lbf, common practice, no source)", "N")));
        Assert.Equal("limit: aisle 800 mm set by the shop; 900 mm is usual (s)", Metric.Said(new("limit: aisle", "800 set by the shop; 900 is usual (s)", "mm")));
    }
}

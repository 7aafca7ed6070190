using Casewright.App.Web;
using Casewright.Model.Measure;

namespace Casewright.App.Tests.Web;

/// <summary>Figures of the checks in the units of a shop that works in inches.</summary>
public sealed class QuantitiesTests
{
    /// <summary>
    /// NIST Special Publication 811 (2008), appendix B.8: 1 lb = 0.453 592 37 kg, 1 lbf = 4.448 222 N, 1 lbf/ft² = 47.880 26 Pa,
    /// 1 psi = 6894.757 Pa, 1 lbf·ft = 1.355 818 N·m, 1 lb/ft = 1.488 164 kg/m, 1 ft² = 0.092 903 04 m², 1 in = 25.4 mm.
    /// </summary>
    [Theory]
    [InlineData("kg", 0.45359237, "lb")]
    [InlineData("N", 4.448222, "lbf")]
    [InlineData("kN", 0.004448222, "lbf")]
    [InlineData("kN/m²", 0.04788026, "psf")]
    [InlineData("N/mm²", 0.006894757, "psi")]
    [InlineData("N·m", 1.355818, "lbf·ft")]
    [InlineData("kg/m", 1.488164, "lb/ft")]
    [InlineData("m²", 0.09290304, "sq ft")]
    [InlineData("mm", 25.4, "in")]
    [InlineData("m", 0.3048, "ft")]
    public void One_of_the_other_unit_is_what_the_tables_say(string unit, double one, string other)
    {
        Assert.Equal(1, Quantities.Value(one, unit, UnitSystem.Inches), 6);
        Assert.Equal(other, Quantities.Unit(unit, UnitSystem.Inches));
    }

    [Fact]
    public void A_job_in_millimetres_and_a_unit_that_both_shops_share_stay_as_they_are()
    {
        Assert.Equal(23, Quantities.Value(23, "kg", UnitSystem.Millimetres));
        Assert.Equal("kg", Quantities.Unit("kg", UnitSystem.Millimetres));
        Assert.Equal(2, Quantities.Value(2, "studs", UnitSystem.Inches));
        Assert.Equal("studs", Quantities.Unit("studs", UnitSystem.Inches));
    }
}

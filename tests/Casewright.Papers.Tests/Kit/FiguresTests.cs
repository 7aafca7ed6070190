using Casewright.Model.Measure;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Kit;

public class FiguresTests
{
    private static readonly Figures Metric = new(UnitSystem.Millimetres);
    private static readonly Figures Imperial = new(UnitSystem.Inches);

    // By hand: 1975 / 25.4 = 77.7559 in = 77 + 24.19/32, so 24/32 = 3/4. 877.4 / 25.4 = 34.5433 = 34 + 17.39/32, so 17/32.
    // 25.4 = 1 exactly. 12.7 = 1/2. 0.1 mm is less than half of 1/32.
    [Theory]
    [InlineData(1975, "1975", "77 3⁄4")]
    [InlineData(877.4, "877.4", "34 17⁄32")]
    [InlineData(25.4, "25.4", "1")]
    [InlineData(12.7, "12.7", "1⁄2")]
    [InlineData(0, "0", "0")]
    [InlineData(-35, "−35", "−1 3⁄8")]
    [InlineData(0.1, "0.1", "0")]
    public void MillimetresFirst(double millimetres, string main, string other)
    {
        var length = Length.FromMillimetres((decimal)millimetres);
        Assert.Equal(main, Metric.Main(length));
        Assert.Equal(other, Metric.Other(length));
        Assert.Equal($"{main} ({other})", Metric.Both(length));
    }

    // By hand: 23 1/4 in = 590.55 mm, rounded away from zero to 590.6; 1/64 in = 0.396875 mm = 0.4.
    [Theory]
    [InlineData(23, 1, 4, "23 1⁄4", "590.6")]
    [InlineData(0, 1, 64, "1⁄64", "0.4")]
    [InlineData(96, 0, 1, "96", "2438.4")]
    [InlineData(47, 63, 64, "47 63⁄64", "1218.8")]
    public void InchesFirst(int whole, int over, int under, string main, string other)
    {
        var length = Length.FromInches(whole, over, under);
        Assert.Equal(main, Imperial.Main(length));
        Assert.Equal(other, Imperial.Other(length));
    }

    [Fact]
    public void ARoundedFigureInTheJobsOwnUnitIsMarked()
    {
        Assert.Equal("≈10.1", Metric.Main(Length.FromMillimetres(10.06m)));
        Assert.Equal("≈1⁄64", Imperial.Main(Length.FromMillimetres(0.4m)));
    }

    [Fact]
    public void SizesAreJoined() => Assert.Equal("1975 × 300 × 18", Metric.Size(Length.FromMillimetres(1975), Length.FromMillimetres(300), Length.FromMillimetres(18)));
}

using System.Globalization;
using Casewright.Model.Files.JobShapes;

namespace Casewright.Model.Tests.Files;

/// <summary>The list of currencies against the region data of the platform (Unicode CLDR).</summary>
public sealed class CurrenciesTests
{
    [Fact]
    public void Every_code_is_three_capitals_once()
    {
        Assert.All(Currencies.Codes, c => Assert.Matches("^[A-Z]{3}$", c));
        Assert.Equal(Currencies.Codes.Count, Currencies.Codes.Distinct().Count());
    }

    [Fact]
    public void The_currencies_of_the_regions_of_the_platform_are_known()
    {
        var regions = CultureInfo.GetCultures(CultureTypes.SpecificCultures)
            .Where(c => c.Name.Length > 0)
            .Select(c => new RegionInfo(c.Name).ISOCurrencySymbol)
            .Where(c => c.Length == 3 && c.All(char.IsAsciiLetterUpper))
            .Distinct()
            .ToList();
        Assert.SkipWhen(regions.Count < 50, "The platform has no region data here.");
        // XXX and the like stand for no currency; the Croatian kuna, the Sierra Leonean leone of before 2022 and other retired ones may linger in old data.
        string[] retired = ["XXX", "XDR", "HRK", "SLL", "ANG", "ZWL", "CUC", "VEF", "MRO", "STD", "BYR", "LTL", "VED"];
        Assert.Empty(regions.Except(Currencies.Codes).Except(retired));
    }
}

using System.Globalization;

namespace Casewright.Model.Pricing;

/// <summary>Sums of money: the smallest coin of a currency, and how a culture writes them.</summary>
public static class MoneyText
{
    private const char Hard = '\u00a0';

    // ISO 4217, list one: currencies whose minor unit is not a hundredth.
    private static readonly string[] WithoutMinorUnit = ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];
    private static readonly string[] WithThousandths = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    /// <summary>Decimal places of a currency by ISO 4217.</summary>
    public static int Decimals(string currency)
    {
        if (Array.IndexOf(WithoutMinorUnit, currency) >= 0)
            return 0;
        return Array.IndexOf(WithThousandths, currency) >= 0 ? 3 : 2;
    }

    /// <summary>
    /// The culture whose English writes a currency with its own symbol: dollars, pounds and euros; for every other one English with the code,
    /// since other dollars and crowns share a symbol.
    /// </summary>
    public static CultureInfo English(string currency) => CultureInfo.GetCultureInfo(currency switch
    {
        "GBP" => "en-GB",
        "EUR" => "en-IE",
        _ => "en-US",
    });

    /// <summary>A sum rounded to the smallest coin, halves away from zero.</summary>
    public static decimal Round(decimal amount, string currency) => Math.Round(amount, Decimals(currency), MidpointRounding.AwayFromZero);

    /// <summary>A sum as a culture writes it: its digits and places, the currency's own symbol where the culture uses that currency, else its code.</summary>
    /// <param name="amount">The sum.</param>
    /// <param name="currency">ISO 4217 code.</param>
    /// <param name="culture">How numbers are written.</param>
    public static string Write(decimal amount, string currency, CultureInfo culture)
    {
        var format = (NumberFormatInfo)culture.NumberFormat.Clone();
        format.CurrencyDecimalDigits = Decimals(currency);
        if (Symbol(currency, culture) is not { } symbol)
        {
            format.CurrencySymbol = "";
            return currency + Hard + Fixed(amount.ToString("C", format).Trim(Hard, ' '));
        }

        format.CurrencySymbol = symbol;
        return Fixed(amount.ToString("C", format));
    }

    /// <summary>A sum stays on one line.</summary>
    private static string Fixed(string text) => text.Replace(' ', Hard);

    private static string? Symbol(string currency, CultureInfo culture)
    {
        if (culture.IsNeutralCulture || culture.Name.Length == 0)
            return null;
        var region = new RegionInfo(culture.Name);
        return region.ISOCurrencySymbol == currency ? region.CurrencySymbol : null;
    }
}

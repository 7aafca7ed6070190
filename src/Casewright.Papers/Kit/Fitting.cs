using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>Makes words fit where they stand.</summary>
public static class Fitting
{
    /// <summary>The lettering, made smaller in steps of half a point until the text fits the width (mm), but not under <paramref name="least"/> points.</summary>
    public static Lettering Shrunk(string text, Lettering lettering, double width, double least = Lettering.Smallest)
    {
        while (lettering.Size - 0.5 >= least && TextLayout.Width(text, lettering) > width)
            lettering = lettering.Sized(lettering.Size - 0.5);
        return lettering;
    }

    /// <summary>The text, shortened at its end until it fits the width (mm); three dots say that something is missing.</summary>
    public static string Cut(string text, Lettering lettering, double width)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length == 0 || TextLayout.Width(text, lettering) <= width)
            return text;
        var (low, high) = (0, text.Length);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (TextLayout.Width(Shortened(text, middle), lettering) <= width)
                low = middle;
            else
                high = middle;
        }

        return low == 0 ? "" : Shortened(text, low);
    }

    private static string Shortened(string text, int length) =>
        text[..(char.IsHighSurrogate(text[length - 1]) ? length - 1 : length)].TrimEnd() + "...";
}

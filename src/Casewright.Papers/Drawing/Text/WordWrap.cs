namespace Casewright.Papers.Drawing.Text;

/// <summary>Breaks text into lines.</summary>
public static class WordWrap
{
    /// <summary>
    /// Lines no wider than <paramref name="width"/> millimetres, broken between words; a single word that is wider is broken between
    /// characters. Line breaks in the text are kept.
    /// </summary>
    public static IReadOnlyList<string> Lines(string text, Lettering lettering, double width)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lines = new List<string>();
        foreach (var paragraph in text.ReplaceLineEndings("\n").Split('\n'))
            Break(paragraph, lettering, width, lines);
        return lines;
    }

    private static void Break(string paragraph, Lettering lettering, double width, List<string> lines)
    {
        var line = "";
        foreach (var word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (Fits(longer, lettering, width))
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
                lines.Add(line);
            line = BreakWord(word, lettering, width, lines);
        }

        lines.Add(line);
    }

    private static string BreakWord(string word, Lettering lettering, double width, List<string> lines)
    {
        while (!Fits(word, lettering, width) && word.Length > 1)
        {
            var count = word.Length - 1;
            while (count > 1 && !Fits(word[..count], lettering, width))
                count--;
            if (char.IsHighSurrogate(word[count - 1]) && count < word.Length)
                count++;
            lines.Add(word[..count]);
            word = word[count..];
        }

        return word;
    }

    private static bool Fits(string text, Lettering lettering, double width) => TextLayout.Width(text, lettering) <= width + 0.001;
}

using System.Globalization;

namespace Casewright.Papers.Documents;

/// <summary>
/// Many codes in few words: case by case, and cases in a row that have the same codes named once,
/// as in "C1–C20: S1, S2" for C1-S1, C1-S2, C2-S1 and so on. A few codes are written out.
/// </summary>
public static class CodeList
{
    /// <summary>As many codes as are written out one by one.</summary>
    public const int MostWrittenOut = 6;

    /// <summary>The codes as one text.</summary>
    /// <param name="codes">Codes such as C1-S2, each once; what has no hyphen stands by itself. In any order.</param>
    public static string Of(IEnumerable<string> codes)
    {
        var all = codes.ToList();
        if (all.Count <= MostWrittenOut)
            return string.Join(", ", all);
        var cases = all.GroupBy(CaseOf, StringComparer.Ordinal)
            .Select(group => new Stretch(group.Key, group.Key, string.Join(", ", group.Select(RestOf)), group.Count()))
            .OrderBy(stretch => Split(stretch.First).Letters, StringComparer.Ordinal)
            .ThenBy(stretch => Split(stretch.First).Number);
        return string.Join("; ", Joined(cases).Select(stretch => stretch.Text));
    }

    private static List<Stretch> Joined(IEnumerable<Stretch> cases)
    {
        var joined = new List<Stretch>();
        foreach (var next in cases)
        {
            if (joined.Count > 0 && joined[^1].Rest == next.Rest && Follows(joined[^1].Last, next.First))
                joined[^1] = joined[^1] with { Last = next.First };
            else
                joined.Add(next);
        }

        return joined;
    }

    private static string CaseOf(string code) => code.IndexOf('-', StringComparison.Ordinal) is > 0 and var at ? code[..at] : code;

    private static string RestOf(string code) => code.IndexOf('-', StringComparison.Ordinal) is > 0 and var at ? code[(at + 1)..] : "";

    private static bool Follows(string last, string next)
    {
        var (letters, number) = Split(last);
        var after = Split(next);
        return number >= 0 && letters == after.Letters && after.Number == number + 1;
    }

    // C12 is C and 12; what does not end in a number has none.
    private static (string Letters, int Number) Split(string name)
    {
        var digits = name.Length;
        while (digits > 0 && char.IsAsciiDigit(name[digits - 1]))
            digits--;
        return int.TryParse(name.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (name[..digits], number)
            : (name, -1);
    }

    private sealed record Stretch(string First, string Last, string Rest, int Count)
    {
        public string Text => (Rest.Length, First == Last, Count) switch
        {
            (0, true, _) => First,
            (0, false, _) => $"{First}–{Last}",
            (_, true, 1) => $"{First}-{Rest}",
            (_, true, _) => $"{First}: {Rest}",
            _ => $"{First}–{Last}: {Rest}",
        };
    }
}

using Casewright.Papers.Documents;

namespace Casewright.Papers.Tests.Documents;

public class CodeListTests
{
    [Fact]
    public void A_few_codes_are_written_out() =>
        Assert.Equal("C1-L, C1-R, A-G1", CodeList.Of(["C1-L", "C1-R", "A-G1"]));

    [Fact]
    public void Cases_in_a_row_with_the_same_codes_are_named_once() =>
        Assert.Equal("C1–C3: S1, S2; C5: S1, S2", CodeList.Of(["C2-S1", "C2-S2", "C1-S1", "C1-S2", "C3-S1", "C3-S2", "C5-S1", "C5-S2"]));

    [Fact]
    public void A_case_that_differs_stands_by_itself() =>
        Assert.Equal("A: G1, G2, G3; C1–C2: L; C3: L, R; C9-L", CodeList.Of(["A-G1", "A-G2", "A-G3", "C1-L", "C2-L", "C3-L", "C3-R", "C9-L"]));

    [Fact]
    public void What_has_no_hyphen_is_a_case_by_itself() =>
        Assert.Equal("C1–C7; job", CodeList.Of(["job", "C1", "C2", "C3", "C4", "C5", "C6", "C7"]));

    /// <summary>The codes that a reader makes out of a list, in order: written apart from what writes it.</summary>
    internal static IEnumerable<string> Expand(string list) => list.Split("; ").SelectMany(ExpandStretch).Order(StringComparer.Ordinal);

    private static IEnumerable<string> ExpandStretch(string stretch)
    {
        var colon = stretch.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 0)
            return stretch.Split(", ").SelectMany(Cases);
        return Cases(stretch[..colon]).SelectMany(name => stretch[(colon + 2)..].Split(", ").Select(rest => $"{name}-{rest}"));
    }

    private static IEnumerable<string> Cases(string range)
    {
        var ends = range.Split('–');
        if (ends.Length == 1)
            return ends;
        var letters = ends[0].TrimEnd("0123456789".ToCharArray());
        var (first, last) = (int.Parse(ends[0][letters.Length..]), int.Parse(ends[1][letters.Length..]));
        return Enumerable.Range(first, last - first + 1).Select(number => $"{letters}{number}");
    }
}

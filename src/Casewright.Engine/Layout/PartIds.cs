using System.Globalization;

namespace Casewright.Engine.Layout;

/// <summary>Ids of cases and parts: short, stable, the same for the same place in the job. docs/conventions.md lists them.</summary>
internal static class PartIds
{
    /// <summary>C3, or C3.2 for the second case from the floor where cases are stacked.</summary>
    public static string Case(int number, int tier, int tiers) => tiers == 1 ? Text($"C{number}") : Text($"C{number}.{tier + 1}");

    /// <summary>A to Z, then AA, AB ...</summary>
    public static string RunLetters(int index)
    {
        var text = "";
        for (var rest = index; rest >= 0; rest = (rest / 26) - 1)
            text = (char)('A' + (rest % 26)) + text;
        return text;
    }

    /// <summary>C3-F1, or C3-F1.2 in the second of several bays. Numbers count from 1.</summary>
    public static string InBay(string caseId, string family, int number, int bay, int bays) =>
        bays == 1 ? Text($"{caseId}-{family}{number}") : Text($"{caseId}-{family}{number}.{bay + 1}");

    /// <summary>C3-M, or C3-M.2 in the second of several bays.</summary>
    public static string OnlyInBay(string caseId, string family, int bay, int bays) =>
        bays == 1 ? $"{caseId}-{family}" : Text($"{caseId}-{family}.{bay + 1}");

    /// <summary>C3-P2.</summary>
    public static string Numbered(string owner, string family, int number) => Text($"{owner}-{family}{number}");

    /// <summary>The nosing of a part: its id with n.</summary>
    public static string Nosing(string part) => part + "n";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

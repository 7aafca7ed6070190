namespace Casewright.Model.Files.Shapes;

/// <summary>Finds the known name that a misspelt one most likely meant.</summary>
internal static class NearestName
{
    private const int LongestCompared = 40;

    /// <summary>The known name within a third of its letters of <paramref name="name"/>, the nearest first; null when none is near.</summary>
    public static string? To(string name, IEnumerable<string> known)
    {
        if (name.Length is 0 or > LongestCompared)
            return null;
        string? best = null;
        var bestDistance = int.MaxValue;
        foreach (var candidate in known)
        {
            var distance = Distance(name.ToUpperInvariant(), candidate.ToUpperInvariant());
            if (distance < bestDistance && distance <= Math.Max(1, candidate.Length / 3))
                (best, bestDistance) = (candidate, distance);
        }

        return best;
    }

    /// <summary>Edits between two words: letters put in, left out, changed, or two neighbours swapped (optimal string alignment).</summary>
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(change, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
            }
        }

        return rows[a.Length, b.Length];
    }
}

namespace Casewright.Engine.Tests.Cutting;

/// <summary>
/// The fewest sheets for a handful of pieces in two stages, rips first, without kerf or trim, and the fewest fence settings among all
/// layouts of so many sheets: by listing every way to part the pieces into strips and the strips into sheets.
/// </summary>
/// <remarks>
/// A setting is a direction and a size. A strip is ripped at its height, unless it is the last of strips that fill the sheet; a piece is
/// crosscut at its length, unless it is the last of pieces that fill the strip; a piece lower than its strip is ripped once more.
/// </remarks>
internal static class SettingsOracle
{
    public static (int Sheets, int Settings) Fewest(long length, long width, (long Length, long Width)[] pieces)
    {
        var best = (Sheets: int.MaxValue, Settings: int.MaxValue);
        foreach (var strips in Partitions(pieces.Length).Where(p => p.TrueForAll(strip => strip.Sum(i => pieces[i].Length) <= length)))
        {
            foreach (var sheets in Partitions(strips.Count).Where(p => p.Count <= best.Sheets))
            {
                if (!sheets.TrueForAll(sheet => sheet.Sum(s => Height(strips[s])) <= width))
                    continue;
                var settings = Settings(sheets, strips);
                if (sheets.Count < best.Sheets || settings < best.Settings)
                    best = (sheets.Count, settings);
            }
        }

        return best;

        long Height(List<int> strip) => strip.Max(i => pieces[i].Width);

        // Each row that is filled may leave out the setting of any one of its parts; all choices are tried.
        int Settings(List<List<int>> sheets, List<List<int>> strips)
        {
            var rows = sheets.Select(sheet => (Sizes: sheet.Select(s => (Rip: true, Size: Height(strips[s]))).ToArray(), Full: width))
                .Concat(strips.Select(strip => (Sizes: strip.Select(i => (Rip: false, Size: pieces[i].Length)).ToArray(), Full: length)));
            var fixedOnes = strips.SelectMany(strip => strip.Where(i => pieces[i].Width < Height(strip)).Select(i => (Rip: true, Size: pieces[i].Width))).ToHashSet();
            IEnumerable<HashSet<(bool Rip, long Size)>> choices = [fixedOnes];
            foreach (var (sizes, full) in rows)
            {
                choices = sizes.Sum(s => s.Size) < full
                    ? choices.Select(c => new HashSet<(bool, long)>(c.Concat(sizes))).ToList()
                    : choices.SelectMany(c => sizes.Select((_, left) => new HashSet<(bool, long)>(c.Concat(sizes.Where((_, i) => i != left))))).ToList();
            }

            return choices.Min(c => c.Count);
        }
    }

    /// <summary>Every way to part the numbers from 0 into groups.</summary>
    private static IEnumerable<List<List<int>>> Partitions(int count)
    {
        if (count == 0)
        {
            yield return [];
            yield break;
        }

        foreach (var smaller in Partitions(count - 1).ToList())
        {
            for (var group = 0; group < smaller.Count; group++)
                yield return [.. smaller.Select((g, i) => i == group ? new List<int>([.. g, count - 1]) : g)];
            yield return [.. smaller, [count - 1]];
        }
    }
}

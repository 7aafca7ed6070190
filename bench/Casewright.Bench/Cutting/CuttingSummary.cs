using System.Globalization;

namespace Casewright.Bench.Cutting;

/// <summary>Prints sums beside the published figures of the same instances.</summary>
internal static class CuttingSummary
{
    public static void Write(TextWriter output, CuttingOptions options, List<CuttingRow> rows)
    {
        var known = BestKnown.Read(options);
        Line(output, "group", "instances", "used", "cost", "bound", "proven", "best known", "seconds");
        foreach (var group in rows.GroupBy(GroupOf, StringComparer.Ordinal))
            Line(output, group.Key, group, known);
        if (rows.Count > 0)
            Line(output, "all", rows, known);
    }

    private static string GroupOf(CuttingRow row) =>
        row.Instance.StartsWith("Class_", StringComparison.Ordinal) ? "class " + row.Instance[6..8] : row.Set;

    private static void Line(TextWriter output, string name, IEnumerable<CuttingRow> group, BestKnown known)
    {
        var rows = group.ToList();
        var best = rows.Select(r => known.Of(r)).ToList();
        var bestText = best.TrueForAll(b => b is not null) ? best.Sum(b => b!.Value).ToString(CultureInfo.InvariantCulture) : "-";
        Line(
            output, name, Text(rows.Count), Text(rows.Sum(r => r.Used)), Text(rows.Sum(r => r.Cost)), Text(rows.Sum(r => r.Bound)), Text(rows.Count(r => r.Proven)), bestText,
            rows.Sum(r => r.Seconds).ToString("0", CultureInfo.InvariantCulture));
    }

    private static string Text(IFormattable value) => value.ToString(null, CultureInfo.InvariantCulture);

    private static void Line(TextWriter output, string name, params string[] cells) =>
        output.WriteLine(name.PadRight(22) + string.Concat(cells.Select(c => c.PadLeft(13))));
}

/// <summary>Best published values per instance, for the stages and rotation asked for.</summary>
internal sealed class BestKnown
{
    private readonly Dictionary<(string Set, string Instance), decimal> _values = [];

    public static BestKnown Read(CuttingOptions options)
    {
        var known = new BestKnown();
        var file = Path.Combine(options.Folder, "best-known.csv");
        if (!File.Exists(file))
            return known;
        foreach (var row in CuttingInstances.Rows(file))
        {
            if (row["level"] is not "instance" || row["objective"] is not ("bins" or "total sheet cost"))
                continue;
            if (!string.Equals(row["rotation"], options.Rotation ? "yes" : "no", StringComparison.Ordinal) || !Matches(row["guillotine_stages"], options.Stages))
                continue;
            var value = decimal.Parse(row["best_known"], CultureInfo.InvariantCulture);
            var key = (row["set"], row["instance"]);
            known._values[key] = known._values.TryGetValue(key, out var other) ? Math.Min(other, value) : value;
        }

        return known;
    }

    public decimal? Of(CuttingRow row) => _values.TryGetValue((row.Set, row.Instance), out var value) ? value : null;

    // Figures per instance are published for three stages and for packing without guillotine cuts.
    private static bool Matches(string published, int? stages) => stages switch
    {
        2 => published is "2",
        _ => published is "3" or "unlimited",
    };
}

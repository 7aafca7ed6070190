using System.Globalization;
using Casewright.Engine.Cutting;
using Casewright.Model.Collections;

namespace Casewright.Bench.Cutting;

/// <summary>One instance of the literature: sheets and items as read.</summary>
/// <param name="Set">Name of the set.</param>
/// <param name="Name">Name of the instance.</param>
/// <param name="Sheets">Sheets; cost 1 each when all are alike and no price is stated.</param>
/// <param name="Items">Width, height and copies.</param>
internal sealed record CuttingInstance(string Set, string Name, List<SheetType> Sheets, List<(long Width, long Height, int Copies)> Items)
{
    /// <summary>The instance as a problem.</summary>
    public CuttingProblem ToProblem(bool rotation, int? stages, FirstCut firstCut, long work) => new(
        Sheets.ToValueList(),
        Items.Select((item, i) => new CuttingDemand(
            i.ToString(CultureInfo.InvariantCulture), item.Copies, [new CuttingOption("whole", [new CuttingPiece(item.Width, item.Height, rotation)])])).ToValueList(),
        new CuttingRules(0, 0, stages, firstCut),
        work);
}

/// <summary>Reads the tables NAME_bins.csv and NAME_items.csv of a folder.</summary>
internal static class CuttingInstances
{
    public static IEnumerable<CuttingInstance> Read(string folder, IReadOnlyList<string>? sets)
    {
        var names = sets ?? [.. Directory.GetFiles(folder, "*_bins.csv").Select(f => Path.GetFileName(f)[..^"_bins.csv".Length]).Order(StringComparer.Ordinal)];
        return names.SelectMany(name => ReadSet(folder, name));
    }

    private static IEnumerable<CuttingInstance> ReadSet(string folder, string set)
    {
        var instances = new Dictionary<string, CuttingInstance>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var row in Rows(Path.Combine(folder, set + "_bins.csv")))
        {
            var name = row["instance"];
            if (!instances.TryGetValue(name, out var instance))
            {
                instance = new CuttingInstance(set, name, [], []);
                instances.Add(name, instance);
                order.Add(name);
            }

            var (width, height) = (Number(row["width"]), Number(row["height"]));
            var cost = row.GetValueOrDefault("cost") is { Length: > 0 } price ? decimal.Parse(price, CultureInfo.InvariantCulture) : width * height;
            int? copies = row.GetValueOrDefault("copies") is { Length: > 0 } number ? (int)Number(number) : null;
            instance.Sheets.Add(new SheetType(row["id"], width, height, cost, copies));
        }

        foreach (var row in Rows(Path.Combine(folder, set + "_items.csv")))
        {
            var copies = row.GetValueOrDefault("copies") is { Length: > 0 } number ? (int)Number(number) : 1;
            instances[row["instance"]].Items.Add((Number(row["width"]), Number(row["height"]), copies));
        }

        foreach (var name in order)
        {
            var instance = instances[name];
            if (instance.Sheets.Count == 1)
                instance.Sheets[0] = instance.Sheets[0] with { Cost = 1 };
            yield return instance;
        }
    }

    internal static IEnumerable<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(file);
        var header = lines[0].Split(',');
        foreach (var line in lines.Skip(1).Where(l => l.Length > 0))
        {
            var cells = line.Split(',');
            var row = new Dictionary<string, string>(StringComparer.Ordinal);
            for (var i = 0; i < Math.Min(header.Length, cells.Length); i++)
                row[header[i]] = cells[i];
            yield return row;
        }
    }

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Casewright.Model.Tests.Files;

/// <summary>
/// Spoils job files in the ways that people, editors and failing disks do. The same text and the same random source always give the
/// same spoilt text.
/// </summary>
public static class JobMutator
{
    private static readonly string[] s_texts =
    [
        "", " ", "x", "0", "0 mm", "-5 mm", "12 in", "1/3 in", "31 m", "2440", "118 5/8", "9' 14\"", "12 furlongs", "none", "wall", "true", "null", "\u0000", "棚",
        "2026-02-30", "1e400", "≈ 3 mm", "30 kg/m", "3/4", "faceFrame", "lb/ft",
    ];

    private static readonly JsonDocumentOptions s_lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>Spoils the text or its structure, in one to four places.</summary>
    public static string Mutate(string json, Random random) => random.Next(2) == 0 ? MutateText(json, random) : MutateStructure(json, random);

    /// <summary>Changes characters: dropped, doubled, swapped, replaced, cut off, or pieces of the text moved.</summary>
    public static string MutateText(string json, Random random)
    {
        var text = new StringBuilder(json);
        for (var times = random.Next(1, 5); times > 0 && text.Length > 2; times--)
            MutateTextOnce(text, random);
        return text.ToString();
    }

    /// <summary>Changes the tree: fields and items dropped, renamed, added, repeated, moved, or given other values.</summary>
    /// <param name="json">The file.</param>
    /// <param name="random">Source of chance.</param>
    /// <param name="most">Most places that are spoilt.</param>
    public static string MutateStructure(string json, Random random, int most = 4)
    {
        var root = JsonNode.Parse(json, documentOptions: s_lenient)!;
        for (var times = random.Next(1, most + 1); times > 0; times--)
            MutateNode(root, random);
        return root.ToJsonString();
    }

    private static void MutateTextOnce(StringBuilder text, Random random)
    {
        const string Characters = "{}[]\",:0123456789.-/\\ntfe'\n\r\t \u0000\u00A0½″é棚";
        var at = random.Next(text.Length);
        var length = Math.Min(random.Next(1, 30), text.Length - at);
        switch (random.Next(7))
        {
            case 0:
                text.Remove(at, 1);
                break;
            case 1:
                text.Remove(at, length);
                break;
            case 2:
                text[at] = Characters[random.Next(Characters.Length)];
                break;
            case 3:
                text.Insert(at, Characters[random.Next(Characters.Length)]);
                break;
            case 4:
                text.Insert(random.Next(text.Length), text.ToString(at, length));
                break;
            case 5:
                text.Length = random.Next(20) == 0 ? at : text.Length;
                break;
            default:
                text.Insert(at, new string(random.Next(2) == 0 ? '[' : ' ', random.Next(1, 200)));
                break;
        }
    }

    private static void MutateNode(JsonNode root, Random random)
    {
        var all = new List<JsonNode>();
        Collect(root, all);
        var node = all[random.Next(all.Count)];
        if (node is JsonObject fields && fields.Count > 0)
            MutateObject(fields, all, random);
        else if (node is JsonArray items && items.Count > 0)
            MutateArray(items, random);
        else
            Replace(node, Anything(node, all, random));
    }

    private static void MutateObject(JsonObject fields, List<JsonNode> all, Random random)
    {
        var name = fields.ElementAt(random.Next(fields.Count)).Key;
        switch (random.Next(5))
        {
            case 0:
                fields.Remove(name);
                break;
            case 1:
                var value = fields[name]?.DeepClone();
                fields.Remove(name);
                fields[Misspell(name, random)] = value;
                break;
            case 2:
                fields[Misspell(name, random)] = fields[name]?.DeepClone();
                break;
            case 3:
                // A field of another object, where it may or may not belong.
                var others = all.OfType<JsonObject>().Where(o => o.Count > 0).ToList();
                var other = others[random.Next(others.Count)].ToList();
                var (key, taken) = other[random.Next(other.Count)];
                fields[key] = taken?.DeepClone();
                break;
            default:
                fields[name] = Anything(fields[name], all, random);
                break;
        }
    }

    private static void MutateArray(JsonArray items, Random random)
    {
        var at = random.Next(items.Count);
        switch (random.Next(5))
        {
            case 0:
                items.RemoveAt(at);
                break;
            case 1:
                items.Clear();
                break;
            case 2:
                items.Add(items[at]?.DeepClone());
                break;
            case 3:
                items[at] = null;
                break;
            default:
                for (var times = random.Next(1, 40); times > 0; times--)
                    items.Add(items[at]?.DeepClone());
                break;
        }
    }

    private static JsonNode? Anything(JsonNode? present, List<JsonNode> all, Random random) => random.Next(10) switch
    {
        0 => null,
        1 => JsonValue.Create(random.Next(2) == 0),
        2 => new JsonArray(),
        3 => new JsonObject(),
        4 => JsonValue.Create(random.Next(-3, 4000)),
        5 => JsonValue.Create(random.NextDouble() * Math.Pow(10, random.Next(-6, 12))),
        6 => JsonValue.Create(s_texts[random.Next(s_texts.Length)]),
        7 => new JsonArray(present?.DeepClone()),
        8 => all[random.Next(all.Count)].DeepClone(),
        _ => Nudged(present, random),
    };

    /// <summary>A value of the same kind that is a little or grossly off.</summary>
    private static JsonNode? Nudged(JsonNode? present, Random random)
    {
        if (present is not JsonValue value)
            return present?.DeepClone();
        if (value.TryGetValue<bool>(out var flag))
            return !flag;
        if (value.TryGetValue<double>(out var number))
            return number * (random.Next(2) == 0 ? -1 : 1000.5);
        var text = value.ToString();
        return random.Next(4) switch
        {
            0 => text.ToUpperInvariant(),
            1 => text + " ",
            2 => text.Replace("mm", "in", StringComparison.Ordinal),
            _ => text + random.Next(10).ToString(CultureInfo.InvariantCulture),
        };
    }

    private static string Misspell(string name, Random random)
    {
        var at = random.Next(name.Length);
        return random.Next(3) switch
        {
            0 => name.Remove(at, 1),
            1 => name.Insert(at, "e"),
            _ => name.ToUpperInvariant(),
        };
    }

    private static void Replace(JsonNode node, JsonNode? by)
    {
        if (node.Parent is JsonObject fields)
            fields[node.GetPropertyName()] = by;
        else if (node.Parent is JsonArray items)
            items[node.GetElementIndex()] = by;
    }

    private static void Collect(JsonNode node, List<JsonNode> all)
    {
        all.Add(node);
        IEnumerable<JsonNode?> children = node switch
        {
            JsonObject fields => fields.Select(f => f.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (var child in children)
        {
            if (child is not null)
                Collect(child, all);
        }
    }
}

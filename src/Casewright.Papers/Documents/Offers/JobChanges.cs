using System.Text.Json.Nodes;
using Casewright.Model.Collections;
using Casewright.Model.Files;
using Casewright.Model.Jobs;

namespace Casewright.Papers.Documents.Offers;

/// <summary>Something that a job states otherwise than before.</summary>
/// <param name="Where">Where: the run, wall or stock by its name, and the figure.</param>
/// <param name="Old">As it was; a dash when it was not stated.</param>
/// <param name="New">As it is; a dash when it is no longer stated.</param>
public sealed record JobChange(string Where, string Old, string New);

/// <summary>Finds what two job files state differently, field by field, so that no change of an order is left out by oversight.</summary>
public static class JobChanges
{
    private const string Nothing = "–";

    /// <summary>The changes, in the order of the file.</summary>
    public static ValueList<JobChange> Between(Job old, Job now)
    {
        var changes = new List<JobChange>();
        Compare("", JsonNode.Parse(JobFile.Write(old)), JsonNode.Parse(JobFile.Write(now)), changes);
        return changes.ToValueList();
    }

    private static void Compare(string where, JsonNode? old, JsonNode? now, List<JobChange> changes)
    {
        if (JsonNode.DeepEquals(old, now))
            return;
        switch (old, now)
        {
            case (JsonObject before, JsonObject after):
                foreach (var name in before.Select(p => p.Key).Concat(after.Select(p => p.Key)).Distinct(StringComparer.Ordinal))
                    Compare(Join(where, Spaced(name)), before[name], after[name], changes);
                break;
            case (JsonArray before, JsonArray after) when before.Concat(after).All(n => n is JsonObject o && o.ContainsKey("id")):
                foreach (var id in before.Concat(after).Select(IdOf).Distinct(StringComparer.Ordinal))
                    Compare(Join(where, id), Find(before, id), Find(after, id), changes);
                break;
            default:
                changes.Add(new(where, Shown(old), Shown(now)));
                break;
        }
    }

    private static string Join(string where, string name) => where.Length == 0 ? name : $"{where}, {name}";

    private static string IdOf(JsonNode? node) => (string)node!["id"]!;

    private static JsonNode? Find(JsonArray list, string id) => list.FirstOrDefault(n => IdOf(n) == id);

    private static string Shown(JsonNode? node) => node switch
    {
        null => Nothing,
        JsonValue value when value.TryGetValue<string>(out var text) => text,
        JsonArray list => string.Join(", ", list.Select(Shown)),
        JsonObject fields when fields.ContainsKey("name") => (string)fields["name"]!,
        JsonObject fields => string.Join(", ", fields.Select(f => $"{Spaced(f.Key)} {Shown(f.Value)}")),
        _ => node.ToJsonString(),
    };

    /// <summary>A field's name in words: fixedShelvesAt becomes fixed shelves at.</summary>
    private static string Spaced(string name) =>
        string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));
}

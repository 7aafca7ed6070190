using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Casewright.Model.Files;

/// <summary>The form in which all our JSON is written: indented by two spaces, line feeds, letters as they are.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions s_options = new()
    {
        WriteIndented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The text of a tree, with a line feed at the end.</summary>
    public static string Of(JsonNode node) => node.ToJsonString(s_options) + "\n";
}

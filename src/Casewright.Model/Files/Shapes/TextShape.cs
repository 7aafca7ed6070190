using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.Shapes;

/// <summary>A text of limited length on one line.</summary>
/// <param name="longest">Most characters (Unicode code points).</param>
/// <param name="pattern">Regular expression (ECMA-262) that it matches.</param>
/// <param name="accepted">What is accepted, in words.</param>
internal sealed class TextShape(int longest, string pattern, string accepted) : ReadableShape<string>
{
    private readonly Regex _pattern = new(pattern, RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5));

    /// <summary>A name or sentence that is not blank.</summary>
    public static TextShape Words { get; } = new(
        120,
        @"^[^\u0000-\u001F\u007F]*[^\u0000-\u0020\u007F\u00A0][^\u0000-\u001F\u007F]*$",
        "a text of 1 to 120 characters on one line");

    /// <summary>A name that may be left blank.</summary>
    public static TextShape WordsOrNone { get; } = new(120, @"^[^\u0000-\u001F\u007F]*$", "a text of at most 120 characters on one line");

    /// <summary>An id: short, and plain enough for a file name, a label or a code on it.</summary>
    public static TextShape Id { get; } = new(
        40,
        "^[A-Za-z0-9][A-Za-z0-9_.\\-]*$",
        "an id of 1 to 40 letters a-z, digits, '-', '_' or '.', with a letter or digit first, such as oak-18");

    public override string Accepted => accepted;

    public override JsonNode Write(string value, UnitSystem units) => JsonValue.Create(value);

    public override JsonObject Schema(SchemaBook book) => new() { ["type"] = "string", ["maxLength"] = longest, ["pattern"] = pattern };

    public override bool TryRead(SourceNode node, NodePath path, ReadContext context, [MaybeNullWhen(false)] out string value)
    {
        if (node is not SourceText text)
            return FailKind(node, path, context, "A text is needed here.", out value);
        value = text.Value;
        if (CodePoints(value) > longest)
            return context.Fail(path, node.Position, "This text is too long.", node.Shown, accepted);
        return (!value.Contains('\n', StringComparison.Ordinal) && _pattern.IsMatch(value))
            || context.Fail(path, node.Position, "This text cannot stand here.", node.Shown, accepted);
    }

    private static int CodePoints(string text) => text.Length - text.Count(char.IsLowSurrogate);
}

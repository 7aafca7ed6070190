using System.Text.Json;
using Casewright.Model.Files;
using Json.Schema;

namespace Casewright.Model.Tests.Files;

/// <summary>The published schema against an independent validator (JsonSchema.Net), and against the reader.</summary>
public sealed class JobSchemaTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(JobSchema.Text);

    private static readonly JsonDocumentOptions s_lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };

    /// <summary>
    /// What the reader refuses and the schema cannot: sizes and exactness of lengths, quantities that are out of range, ids that are
    /// taken or lead nowhere, dates that are none, and relations between values.
    /// </summary>
    private static readonly string[] s_beyondTheSchema =
    [
        "This length ", "A fraction without a unit", "The comma could be", "A fraction cannot have 0", "After a whole number", "After feet",
        "This figure is out of range", "This id is already taken", "There is no sheet material", "There is no board material", "There is no wall with", "There is no material with",
        "A sheet material is needed here", "A board material is needed here", "This is no date.",
        // Relations between values.
        "The measured thickness", "This method is listed twice", "This shelf is not above", "A joint is asked for", "A method is asked for",
        "A trim band covers joints", "A case has two bays", "Only one tier", "There must be one interior", "The shop is not set up", "Dados this deep",
        "Grooves this deep", "A rabbet must leave", "Pin holes must not", "There are too many", "The driest season", "The work is to be", "This temperature is not above", "This operation is listed twice", "Work ends before",
        "These hours begin", "This day is listed twice", "This kind of clamp is listed twice",
        "The stages of payment",
        "The piece reaches beyond", "The sawn length is not that", "A piece cannot lie across", "Nothing before this in the list", "Two share this id",
    ];

    [Fact]
    public void The_schema_is_a_valid_schema_of_draft_2020_12()
    {
        using var document = JsonDocument.Parse(JobSchema.Text);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", document.RootElement.GetProperty("$schema").GetString());
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Every_sample_is_valid()
    {
        foreach (var text in JobSamples.Texts)
            Assert.True(IsValid(text));
    }

    [Fact]
    public void Every_field_is_described()
    {
        using var document = JsonDocument.Parse(JobSchema.Text);
        foreach (var definition in document.RootElement.GetProperty("$defs").EnumerateObject())
        {
            Assert.True(definition.Value.TryGetProperty("description", out _), definition.Name);
            if (definition.Value.TryGetProperty("properties", out var properties))
                Assert.All(properties.EnumerateObject(), p => Assert.NotEmpty(p.Value.GetProperty("description").GetString()!));
        }
    }

    [Fact]
    public void Reader_and_schema_agree_on_spoilt_files_except_on_what_a_schema_cannot_say()
    {
        var (both, neither, beyond) = (0, 0, 0);
        for (var seed = 0; seed < 1_500; seed++)
        {
            var text = JobMutator.MutateStructure(JobSamples.Texts[seed % JobSamples.Texts.Count], new(seed), most: 1);
            var outcome = JobFile.Read(text);
            var isValid = IsValid(text);
            var known = outcome.Problems.All(p => s_beyondTheSchema.Any(s => p.Message.StartsWith(s, StringComparison.Ordinal)));
            if (!isValid)
            {
                neither++;
                Assert.False(outcome.Succeeded, $"The schema refuses what the reader reads (seed {seed}): {text}");
            }
            else if (outcome.Succeeded)
            {
                both++;
            }
            else
            {
                beyond++;
                Assert.True(known, $"The schema passes what the reader refuses (seed {seed}): {string.Join('\n', outcome.Problems)}");
            }
        }

        // All three happen often, or the agreement says nothing.
        Assert.True(both > 50 && neither > 700 && beyond > 25, $"{both} read, {neither} refused by both, {beyond} by the reader only");
    }

    private static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text, s_lenient);
        return s_schema.Evaluate(document.RootElement).IsValid;
    }
}

using System.Text;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing.Rendering;

namespace Casewright.App.Tests.Planning;

/// <summary>
/// Every example has a note and a picture in docs/catalogue that this program made of its plan. With the environment variable
/// CASEWRIGHT_WRITE_CATALOGUE set, the pictures are written anew; without it they are held to what the program draws now.
/// </summary>
public sealed class CatalogueTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(e => Path.GetFileNameWithoutExtension(e))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void ItsPictureIsTheOneThatTheProgramDraws(string example)
    {
        var plan = PlannedExamples.Of(example).Plan;
        Assert.NotNull(plan);
        var drawn = SvgRenderer.ToText(RoomDrawings.Picture(plan)).ReplaceLineEndings("\n");
        var path = Path.Combine(Repository.Root, "docs", "catalogue", example + ".svg");
        if (Environment.GetEnvironmentVariable("CASEWRIGHT_WRITE_CATALOGUE") is { Length: > 0 })
            File.WriteAllText(path, drawn, new UTF8Encoding(false));

        Assert.True(File.Exists(path), $"docs/catalogue/{example}.svg is missing: run this test with CASEWRIGHT_WRITE_CATALOGUE=1.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), drawn);
    }

    [Fact]
    public void EveryExampleHasItsReasonsAndIsInTheCatalogue()
    {
        var catalogue = File.ReadAllText(Path.Combine(Repository.Root, "docs", "catalogue", "README.md"));
        Assert.True(Repository.Examples.Count() >= 8);
        Assert.All(Repository.Examples.Select(e => Path.GetFileNameWithoutExtension(e)), example =>
        {
            Assert.True(File.Exists(Path.Combine(Repository.Root, "examples", example + ".md")), $"examples/{example}.md is missing.");
            Assert.Contains($"({example}.svg)", catalogue, StringComparison.Ordinal);
            Assert.Contains($"(../../examples/{example}.md)", catalogue, StringComparison.Ordinal);
        });
    }
}

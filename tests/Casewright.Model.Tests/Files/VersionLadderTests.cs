using System.Text;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Files.Source;
using Casewright.Model.Files.Versions;

namespace Casewright.Model.Tests.Files;

/// <summary>
/// No version before 1 was ever published, so the file's own ladder has no steps; these hold that the ladder works when it gets some,
/// with a form made up for the test: version 1 says "w" in millimetre numbers, version 2 "width", version 3 adds a unit.
/// </summary>
public sealed class VersionLadderTests
{
    private static readonly VersionLadder s_ladder = new("version", 3,
    [
        new(1, "w is called width", root => Change(root, m => m.Name == "w" ? m with { Name = "width" } : m)),
        new(2, "width is a text with its unit", root => Change(root, m => m is { Name: "width", Value: SourceNumber number }
            ? m with { Value = new SourceText(number.Position, number.Digits + " mm") }
            : m)),
    ]);

    [Theory]
    [InlineData("{\"version\": 1, \"w\": 2440}")]
    [InlineData("{\"version\": 2, \"width\": 2440}")]
    [InlineData("{\"version\": 3, \"width\": \"2440 mm\"}")]
    public void Every_known_version_is_lifted_to_the_present_one(string text)
    {
        var context = new ReadContext(null);
        var lifted = s_ladder.Lift(Parse(text), context)!;
        Assert.Equal("3", ((SourceNumber)lifted["version"]!).Digits);
        Assert.Equal("2440 mm", ((SourceText)lifted["width"]!).Value);
        Assert.Null(lifted["w"]);
        Assert.Empty(context.Problems());
    }

    [Fact]
    public void What_was_moved_still_knows_its_place_in_the_file() =>
        Assert.Equal(new SourcePosition(2, 6), s_ladder.Lift(Parse("{\"version\": 1,\n\"w\": 2440}"), new(null))!["width"]!.Position);

    [Theory]
    [InlineData("{\"version\": 4}", "newer version")]
    [InlineData("{\"version\": 1e20}", "newer version")]
    [InlineData("{\"version\": 0}", "no such version")]
    [InlineData("{\"version\": -1}", "no such version")]
    [InlineData("{\"version\": 2.5}", "whole number")]
    [InlineData("{\"version\": null}", "whole number")]
    [InlineData("{}", "no job file")]
    public void Other_versions_are_refused_by_name(string text, string message)
    {
        var context = new ReadContext(null);
        Assert.Null(s_ladder.Lift(Parse(text), context));
        var problem = Assert.Single(context.Problems());
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Equal("1 to 3", problem.Accepted);
    }

    [Fact]
    public void Steps_that_form_no_ladder_are_refused() =>
        Assert.Throws<ArgumentException>(() => new VersionLadder("version", 3, [new(1, "", r => r)]));

    private static SourceObject Parse(string text) => (SourceObject)SourceReader.Read(Encoding.UTF8.GetBytes(text), out _)!;

    private static SourceObject Change(SourceObject root, Func<SourceMember, SourceMember> change) => root with { Members = [.. root.Members.Select(change)] };
}

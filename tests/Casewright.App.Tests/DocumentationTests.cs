using System.Text.RegularExpressions;

namespace Casewright.App.Tests;

/// <summary>The pages of documentation lead where they say.</summary>
public sealed partial class DocumentationTests
{
    public static TheoryData<string> Pages => new(Directory
        .EnumerateFiles(Repository.Root, "*.md", SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/'))
        .Where(file => !file.Contains("/bin/", StringComparison.Ordinal) && !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("node_modules", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Pages))]
    public void Every_link_and_picture_of_a_page_is_there(string page)
    {
        var file = Path.Combine(Repository.Root, page);
        var links = Link().Matches(File.ReadAllText(file)).Select(match => match.Groups["to"].Value.Split('#')[0])
            .Where(to => to.Length > 0 && !to.Contains("://", StringComparison.Ordinal));
        Assert.All(links, to => Assert.True(Path.Exists(Path.Combine(Path.GetDirectoryName(file)!, to)), $"{page} leads to {to}, which is not there."));
    }

    [GeneratedRegex(@"\]\((?<to>[^)\s]+)\)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Link();
}

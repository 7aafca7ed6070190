using Casewright.Model.Files;
using Casewright.Model.Jobs;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>The example jobs beside the source.</summary>
internal static class Examples
{
    /// <summary>Names of the job files in the examples folder, without ending, in order.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Directory.EnumerateFiles(Folder(), "*.json").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    /// <summary>The job of this name.</summary>
    public static Job Read(string name)
    {
        var outcome = JobFile.Read(File.ReadAllBytes(Path.Combine(Folder(), name + ".json")));
        Assert.True(outcome.Succeeded, $"{name}: {string.Join('\n', outcome.Problems)}");
        return outcome.Value;
    }

    /// <summary>The note beside the job of this name.</summary>
    public static string Note(string name) => File.ReadAllText(Path.Combine(Folder(), name + ".md"));

    private static string Folder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
                return Path.Combine(folder.FullName, "examples");
        }

        throw new DirectoryNotFoundException("The tests must run from within the source tree.");
    }
}

namespace Casewright.App.Tests;

/// <summary>Where the repository lies that the tests run in.</summary>
internal static class Repository
{
    /// <summary>Its folder.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The example job files.</summary>
    public static IEnumerable<string> Examples => Directory.EnumerateFiles(Path.Combine(Root, "examples"), "*.json").Order(StringComparer.Ordinal);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}

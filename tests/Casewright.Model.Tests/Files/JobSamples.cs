using Casewright.Model.Files;
using Casewright.Model.Measure;

namespace Casewright.Model.Tests.Files;

/// <summary>Job files that read without a problem, to start mutations and corruptions from.</summary>
internal static class JobSamples
{
    /// <summary>The starters, some random jobs, and the examples of the repository.</summary>
    public static IReadOnlyList<string> Texts { get; } =
    [
        StarterJob.Text(UnitSystem.Inches),
        StarterJob.Text(UnitSystem.Millimetres),
        .. Enumerable.Range(0, 12).Select(seed => JobFile.Write(RandomJob.Make(seed))),
        .. Examples(),
    ];

    /// <summary>The examples of the repository; empty when the tests run elsewhere.</summary>
    public static IEnumerable<string> Examples()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        var examples = folder is null ? null : Path.Combine(folder.FullName, "examples");
        return examples is null || !Directory.Exists(examples)
            ? []
            : Directory.EnumerateFiles(examples, "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText);
    }
}

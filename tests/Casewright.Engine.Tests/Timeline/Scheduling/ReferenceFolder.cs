namespace Casewright.Engine.Tests.Timeline.Scheduling;

/// <summary>The folder of published instances beside the repository; absent on most machines.</summary>
internal static class ReferenceFolder
{
    /// <summary>A folder inside it; skips the test when it is not there.</summary>
    public static string Require(string name)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var folder = Path.Combine(at.FullName, "shared", "reference", name);
            if (Directory.Exists(folder))
                return folder;
        }

        Assert.Skip($"The published instances (shared/reference/{name}, beside the repository) are not on this machine.");
        return "";
    }
}

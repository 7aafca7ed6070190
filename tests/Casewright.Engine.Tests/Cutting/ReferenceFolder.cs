namespace Casewright.Engine.Tests.Cutting;

/// <summary>Finds the reference data beside the repository, if it is there.</summary>
internal static class ReferenceFolder
{
    /// <summary>A folder of the reference data, or null when absent.</summary>
    public static string? Find(string name)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var found = Path.Combine(folder.FullName, "shared", "reference", name);
            if (Directory.Exists(found))
                return found;
        }

        return null;
    }
}

using Casewright.Model.Measure;

namespace Casewright.Model.Files;

/// <summary>The commented job file that a new job starts from.</summary>
public static class StarterJob
{
    /// <summary>The text of the file, which reads without a problem; its comments explain every field in plain words.</summary>
    /// <param name="units">Unit system that it is written in.</param>
    public static string Text(UnitSystem units)
    {
        var name = units == UnitSystem.Inches ? "starter-inches.json" : "starter-millimetres.json";
        using var stream = typeof(StarterJob).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program lacks its file {name}.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}

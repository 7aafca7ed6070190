using Casewright.Model.Plans;

namespace Casewright.App.Commands;

/// <summary>Prints problems one below the other: the place first, then what is wrong, found and accepted.</summary>
public static class ProblemText
{
    private const int Most = 40;

    /// <summary>Writes a heading and the problems, the first forty of them.</summary>
    public static void Write(TextWriter writer, string heading, IReadOnlyList<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(problems);
        writer.WriteLine(heading);
        foreach (var problem in problems.Take(Most))
        {
            writer.WriteLine(problem.Line is { } line ? $"  {problem.Path} (line {line})" : $"  {problem.Path}");
            writer.WriteLine($"    {problem.Message}");
            if (problem.Found.Length > 0)
                writer.WriteLine($"    found:    {problem.Found}");
            if (problem.Accepted.Length > 0)
                writer.WriteLine($"    accepted: {problem.Accepted}");
        }

        if (problems.Count > Most)
            writer.WriteLine($"  ... and {problems.Count - Most} more.");
    }
}

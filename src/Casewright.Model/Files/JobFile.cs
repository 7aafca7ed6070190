using System.Globalization;
using System.Text;
using Casewright.Model.Files.JobShapes;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Files.Source;
using Casewright.Model.Files.Versions;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Model.Files;

/// <summary>
/// Reads and writes job files: JSON in UTF-8, where comments, trailing commas, a byte order mark and either line ending are allowed.
/// </summary>
/// <remarks>
/// Lengths are texts such as "118 5/8 in". Unknown fields are refused. All problems of a file are reported together, each with its
/// path, line and column, what was found and what is accepted. Reading what was written gives an equal job.
/// </remarks>
public static class JobFile
{
    /// <summary>Largest file that is read, in bytes: 16 MiB. A job of 2 000 bays written out case by case is below 4 MB.</summary>
    public const int LargestSize = 16 * 1024 * 1024;

    private static readonly VersionLadder s_versions = new(JobShape.VersionField, JobShape.Version, []);

    /// <summary>Reads a job from text.</summary>
    /// <returns>The job, or its problems in the order of the file.</returns>
    public static Outcome<Job> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length > LargestSize ? TooLarge() : Read(Encoding.UTF8.GetBytes(text));
    }

    /// <summary>Reads a job from the bytes of a file.</summary>
    /// <returns>The job, or its problems in the order of the file.</returns>
    public static Outcome<Job> Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > LargestSize)
            return TooLarge();
        if (SourceReader.Read(bytes, out var fault) is not { } node)
            return Outcome<Job>.Failed([fault!]);
        if (node is not SourceObject root)
        {
            return Outcome<Job>.Failed([new("", "A job file holds one object.", node.Shown, "an object in { }")
            {
                Line = node.Position.Line,
                Column = node.Position.Column,
            }]);
        }

        return Read(root);
    }

    /// <summary>Reads a job from a stream; never more of it than a job file may hold.</summary>
    /// <returns>The job, or its problems in the order of the file.</returns>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static Outcome<Job> Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using var kept = new MemoryStream();
        var buffer = new byte[81920];
        int count;
        while ((count = stream.Read(buffer)) > 0)
        {
            if (kept.Length + count > LargestSize)
                return TooLarge();
            kept.Write(buffer, 0, count);
        }

        return Read(kept.GetBuffer().AsSpan(0, (int)kept.Length));
    }

    /// <summary>Writes a job in the one canonical form: fields in the order of the schema, two spaces of indent, line feeds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value has no name in a file, such as a covered butt among the shop's methods.</exception>
    public static string Write(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return JsonText.Of(JobShape.Shape.Write(job, job.Units)!);
    }

    private static Outcome<Job> Read(SourceObject root)
    {
        var context = new ReadContext(UnitsOf(root));
        if (s_versions.Lift(root, context) is { } lifted)
        {
            JobShape.Shape.TryRead(lifted, NodePath.Root, context, out var job);
            context.ResolveReferences();
            if (context.Count == 0 && job is not null)
                return Outcome<Job>.Of(job);
        }

        return Outcome<Job>.Failed(context.Problems());
    }

    /// <summary>The unit is needed by every length, wherever in the file it stands.</summary>
    private static UnitSystem? UnitsOf(SourceObject root) =>
        root["units"] is { } node && Choices.Units.TryRead(node, NodePath.Root, new(null), out var units) ? units : null;

    private static Outcome<Job> TooLarge() => Outcome<Job>.Failed(
    [
        new(
            "",
            "The file is too large for a job file.",
            "",
            string.Create(CultureInfo.InvariantCulture, $"at most {LargestSize / (1024 * 1024)} MB")),
    ]);
}

using System.Globalization;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Files.Source;

namespace Casewright.Model.Files.Versions;

/// <summary>Lifts files of older versions step by step to the present one; files of newer versions are refused by name.</summary>
internal sealed class VersionLadder
{
    private readonly string _field;
    private readonly int _current;
    private readonly IReadOnlyList<Migration> _steps;

    /// <summary>A ladder.</summary>
    /// <param name="field">Name of the field that holds the version.</param>
    /// <param name="current">Version that is read and written.</param>
    /// <param name="steps">Steps, one for each older version that is still read, the oldest first and the last one to <paramref name="current"/>.</param>
    /// <exception cref="ArgumentException">The steps do not form a ladder.</exception>
    public VersionLadder(string field, int current, IReadOnlyList<Migration> steps)
    {
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].From != current - steps.Count + i)
                throw new ArgumentException($"Step {i} starts at version {steps[i].From}.", nameof(steps));
        }

        (_field, _current, _steps) = (field, current, steps);
    }

    private int Oldest => _current - _steps.Count;

    /// <summary>The file at the present version; null with a problem in <paramref name="context"/> when it has none that is known.</summary>
    public SourceObject? Lift(SourceObject root, ReadContext context)
    {
        if (FindVersion(root, context) is not { } version)
            return null;
        foreach (var step in _steps.Where(s => s.From >= version))
            root = WithVersion(step.Apply(root), step.From + 1);
        return root;
    }

    private int? FindVersion(SourceObject root, ReadContext context)
    {
        var path = NodePath.Root.Field(_field);
        var accepted = Oldest == _current ? $"{_current}" : string.Create(CultureInfo.InvariantCulture, $"{Oldest} to {_current}");
        if (root[_field] is not { } node)
        {
            context.Fail(
                path, root.Position, $"This is no job file: the field \"{_field}\" with the file's version is missing.", "", accepted);
            return null;
        }

        if (node is not SourceNumber number || !number.TryWhole(out var version))
        {
            context.Fail(path, node.Position, "The version of the file is a whole number.", node.Shown, accepted);
            return null;
        }

        if (version > _current)
        {
            context.Fail(
                path,
                node.Position,
                "This file was written by a newer version of the program, which is needed to read it.",
                node.Shown,
                accepted);
            return null;
        }

        if (version < Oldest)
        {
            context.Fail(path, node.Position, "There is no such version of the file.", node.Shown, accepted);
            return null;
        }

        return (int)version;
    }

    private SourceObject WithVersion(SourceObject root, int version)
    {
        var digits = version.ToString(CultureInfo.InvariantCulture);
        return root with
        {
            Members = [.. root.Members.Select(m => m.Name == _field ? m with { Value = new SourceNumber(m.Value.Position, digits) } : m)],
        };
    }
}

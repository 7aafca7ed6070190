using Casewright.Model.Collections;
using Casewright.Model.Files.Source;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Model.Files.Shapes;

/// <summary>What one reading of a file collects: its problems, and the ids it declares and refers to.</summary>
/// <param name="units">Unit of bare numbers; null when the file does not say it rightly.</param>
internal sealed class ReadContext(UnitSystem? units)
{
    private const int MostProblems = 100;
    private const int MostKept = 5000;
    private readonly List<(Problem Problem, int Order)> _problems = [];
    private readonly Dictionary<(string Scope, string Id), Declaration> _declared = [];
    private readonly List<Reference> _references = [];

    private sealed record Declaration(string Kind, NodePath Path, SourcePosition Position);

    private sealed record Reference(string Scope, string Kind, SourceText Id, NodePath Path);

    /// <summary>Unit of bare numbers; null when the file does not say it rightly.</summary>
    public UnitSystem? Units { get; } = units;

    /// <summary>Number of problems so far.</summary>
    public int Count { get; private set; }

    /// <summary>Whether more problems are known than will ever be shown; details of further ones are not worth their time.</summary>
    public bool IsFull => _problems.Count >= MostKept;

    /// <summary>Counts a problem whose details will not be shown.</summary>
    public void FailUntold() => Count++;

    /// <summary>Notes a problem.</summary>
    /// <returns>False, so that a failed reading can end with it.</returns>
    public bool Fail(NodePath path, SourcePosition position, string message, string found, string accepted)
    {
        Count++;
        if (_problems.Count < MostKept)
        {
            var problem = new Problem(path.ToString(), message, found, accepted) { Line = position.Line, Column = position.Column };
            _problems.Add((problem, _problems.Count));
        }

        return false;
    }

    /// <summary>Notes that an id is given here.</summary>
    /// <param name="scope">Where it must be unique.</param>
    /// <param name="kind">What it names, such as "sheet material"; references may ask for one kind.</param>
    /// <param name="id">The id.</param>
    /// <param name="path">Path of the id.</param>
    public void Declare(string scope, string kind, SourceText id, NodePath path)
    {
        if (_declared.TryAdd((scope, id.Value), new(kind, path, id.Position)))
            return;
        var first = _declared[(scope, id.Value)];
        Fail(
            path,
            id.Position,
            "This id is already taken.",
            $"{id.Shown}, first given at {first.Path} (line {first.Position.Line})",
            "an id of its own");
    }

    /// <summary>
    /// Notes that something is named here that must exist; checked at the end, wherever it stands in the file. A kind that is the scope takes
    /// every kind in it.
    /// </summary>
    public void Refer(string scope, string kind, SourceText id, NodePath path) => _references.Add(new(scope, kind, id, path));

    /// <summary>Checks all references once the whole file is read.</summary>
    public void ResolveReferences()
    {
        foreach (var reference in _references)
        {
            var known = _declared.TryGetValue((reference.Scope, reference.Id.Value), out var declaration);
            if (known && (declaration!.Kind == reference.Kind || reference.Kind == reference.Scope))
                continue;
            var message = known
                ? $"A {reference.Kind} is needed here; this is a {declaration!.Kind}."
                : $"There is no {reference.Kind} with this id.";
            Fail(reference.Path, reference.Id.Position, message, reference.Id.Shown, Choices(reference));
        }
    }

    /// <summary>The problems in the order of the file, at most a hundred; a last one says how many more there are.</summary>
    public ValueList<Problem> Problems()
    {
        var sorted = _problems.OrderBy(p => p.Problem.Line).ThenBy(p => p.Problem.Column).ThenBy(p => p.Order).Select(p => p.Problem).ToList();
        if (Count <= MostProblems)
            return sorted.ToValueList();
        var rest = new Problem("", $"There are {Count - MostProblems} more problems.", "", "mend these first");
        return sorted.Take(MostProblems).Append(rest).ToValueList();
    }

    private string Choices(Reference reference)
    {
        const int Most = 8;
        var ids = _declared.Where(d => d.Key.Scope == reference.Scope && (d.Value.Kind == reference.Kind || reference.Kind == reference.Scope))
            .Select(d => d.Key.Id).Order(StringComparer.Ordinal).ToList();
        if (ids.Count == 0)
            return $"the id of a {reference.Kind}; the file has none yet";
        var nearest = NearestName.To(reference.Id.Value, ids);
        var list = string.Join(", ", ids.Take(Most)) + (ids.Count > Most ? ", ..." : "");
        return (nearest is null ? "" : $"did you mean {nearest}? ") + list;
    }
}

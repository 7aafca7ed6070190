using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Collects problems, with lengths printed in the job's unit.</summary>
internal sealed class ProblemList(UnitSystem units)
{
    private readonly List<Problem> _problems = [];
    private readonly HashSet<Problem> _seen = [];

    /// <summary>The problems so far, in the order they were found.</summary>
    public IReadOnlyList<Problem> All => _problems;

    /// <summary>A length as people of this job read it.</summary>
    public string Say(Length length) => LengthFormat.Exact(length, units);

    /// <summary>Notes a problem; what several cases of a run have in common is said once.</summary>
    public void Add(string path, string message, string found, string accepted)
    {
        var problem = new Problem(path, message, found, accepted);
        if (_seen.Add(problem))
            _problems.Add(problem);
    }

    /// <summary>Notes a problem about a length.</summary>
    public void Add(string path, string message, Length found, string accepted) => Add(path, message, Say(found), accepted);

    /// <summary>Notes a problem unless the length is at least <paramref name="least"/>.</summary>
    public void Least(string path, string what, Length found, Length least)
    {
        if (found < least)
            Add(path, $"The {what} is too small.", found, $"{Say(least)} or more");
    }

    /// <summary>Notes a problem unless the length is above zero.</summary>
    public void Positive(string path, string what, Length found)
    {
        if (found <= Length.Zero)
            Add(path, $"The {what} must be more than nothing.", found, "a length above zero");
    }
}

using Casewright.Engine.Layout;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Tests.Layout;

/// <summary>A laid-out job with parts by id.</summary>
internal sealed class Laid
{
    private readonly Dictionary<string, Part> _parts;

    private Laid(Casework casework)
    {
        Casework = casework;
        _parts = casework.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
    }

    public Casework Casework { get; }

    public Part this[string id] => _parts.TryGetValue(id, out var part)
        ? part
        : throw new KeyNotFoundException($"No part {id} among {string.Join(", ", _parts.Keys)}");

    public bool Has(string id) => _parts.ContainsKey(id);

    public static Laid Of(UnitSystem units, params Run[] runs) => Of(SampleRuns.Job(units, runs));

    public static Laid Of(Job job)
    {
        var outcome = LayoutStage.Lay(job);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        return new(outcome.Value);
    }

    /// <summary>The problem at a path; fails when there is none.</summary>
    public static Problem ProblemAt(string path, Job job)
    {
        var outcome = LayoutStage.Lay(job);
        Assert.False(outcome.Succeeded);
        var problem = outcome.Problems.FirstOrDefault(p => p.Path == path);
        Assert.True(problem is not null, $"No problem at {path}, but: {string.Join("\n", outcome.Problems)}");
        Assert.NotEmpty(problem.Message);
        Assert.NotEmpty(problem.Found);
        Assert.NotEmpty(problem.Accepted);
        return problem;
    }
}

using System.Collections.Concurrent;
using Casewright.Engine;
using Casewright.Model.Files;

namespace Casewright.App.Tests.Planning;

/// <summary>Every example planned once for all tests.</summary>
internal static class PlannedExamples
{
    private static readonly ConcurrentDictionary<string, Lazy<PlanningResult>> s_planned = new(StringComparer.Ordinal);

    public static PlanningResult Of(string example) => s_planned.GetOrAdd(example, name => new(() => Plan(name))).Value;

    private static PlanningResult Plan(string name) =>
        Planner.Plan(JobFile.Read(File.ReadAllText(Path.Combine(Repository.Root, "examples", name + ".json"))).Value!, cancellation: TestContext.Current.CancellationToken);
}

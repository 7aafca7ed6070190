using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Casewright.App.Tests;

/// <summary>Holds the arrows between the projects: Model &lt;- Engine &lt;- Papers, Store &lt;- App.</summary>
public sealed class ArchitectureTests
{
    private static readonly System.Reflection.Assembly[] Assemblies =
        [.. new[] { "Casewright.Model", "Casewright.Engine", "Casewright.Papers", "Casewright.Store", "casewright" }
            .Select(System.Reflection.Assembly.Load)];

    private static readonly Architecture House = new ArchLoader().LoadAssemblies(Assemblies).Build();

    public static TheoryData<string, string[]> Arrows => new()
    {
        { "Casewright.Model", [] },
        { "Casewright.Engine", ["Casewright.Model"] },
        { "Casewright.Papers", ["Casewright.Model", "Casewright.Engine"] },
        { "Casewright.Store", ["Casewright.Model", "Casewright.Engine"] },
        { "casewright", ["Casewright.Model", "Casewright.Engine", "Casewright.Papers", "Casewright.Store"] },
    };

    [Theory]
    [MemberData(nameof(Arrows))]
    public void A_project_references_only_what_stands_before_it(string project, string[] allowed)
    {
        var assembly = Assemblies.Single(a => a.GetName().Name == project);
        var ours = assembly.GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => Assemblies.Any(a => a.GetName().Name == name));

        Assert.Empty(ours.Except(allowed, StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("Casewright.Engine.Layout", "Splicing|Cutting|Checks|Timeline|Pricing|Verifying")]
    [InlineData("Casewright.Engine.Cutting", "Layout|Checks|Timeline|Pricing|Verifying")]
    [InlineData("Casewright.Engine.Splicing", "Layout|Checks|Timeline|Pricing|Verifying")]
    [InlineData("Casewright.Engine.Verifying", "Layout|Splicing|Cutting|Checks|Timeline|Pricing")]
    [InlineData("Casewright.Engine.Checks", "Layout|Timeline|Pricing|Verifying")]
    public void A_stage_does_not_reach_into_stages_it_must_not_know(string stage, string others)
    {
        var rule = Types().That().ResideInNamespaceMatching($@"^{stage.Replace(".", "\\.", StringComparison.Ordinal)}(\..*)?$")
            .Should().NotDependOnAny(Types().That().ResideInNamespaceMatching($@"^Casewright\.Engine\.({others})(\..*)?$"))
            .WithoutRequiringPositiveResults();

        Assert.True(rule.HasNoViolations(House), string.Join(Environment.NewLine, rule.Evaluate(House).Where(r => !r.Passed).Select(r => r.Description)));
    }
}

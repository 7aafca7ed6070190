namespace Casewright.Engine.Tests.Checks.Values;

/// <summary>Every row of the outside table of check values against our own formulas.</summary>
public class CheckValueTests
{
    // Results of another author's finite-element runs that no closed formula of ours claims to give; they went into J-FE-BOND.
    private static readonly string[] RunsOnly = ["FE-I-M", "FE-I-T", "FE-I-MT", "FE-I-ZC"];

    [Fact]
    public void Every_arithmetic_row_comes_out_of_our_formulas()
    {
        var rows = ReferenceTable.Rows();
        Assert.SkipWhen(rows.Count == 0, "The outside table of check values is not on this machine.");
        var ours = OurValues.All.ToDictionary(v => v.Id, v => v.Ours);
        var wrong = new List<string>();
        foreach (var row in rows.Where(r => r.Topic != "finite element"))
        {
            if (!ours.TryGetValue(row.Id, out var value))
                wrong.Add($"{row.Id}: nothing computes it");
            else if (Math.Abs(value() - row.Expected) > row.Tolerance + 1e-12)
                wrong.Add(FormattableString.Invariant($"{row.Id}: {value()} against {row.Expected} ± {row.Tolerance} {row.Unit}"));
        }

        Assert.Empty(wrong);
        Assert.Equal(239, rows.Count);
    }

    [Fact]
    public void Finite_element_figures_lie_within_the_stated_shares_of_our_formulas()
    {
        var rows = ReferenceTable.Rows().ToDictionary(r => r.Id);
        Assert.SkipWhen(rows.Count == 0, "The outside table of check values is not on this machine.");
        foreach (var (id, ours, within) in OurValues.FiniteElements)
            Assert.InRange(ours() / rows[id].Expected, 1 - within, 1 + within);
        var covered = OurValues.FiniteElements.Select(f => f.Id).Concat(RunsOnly).Order().ToList();
        Assert.Equal(rows.Values.Where(r => r.Topic == "finite element").Select(r => r.Id).Order(), covered);
    }
}

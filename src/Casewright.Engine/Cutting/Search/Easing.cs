using Casewright.Engine.Cutting.Bound;
using Casewright.Engine.Cutting.Layouts;
using Casewright.Engine.Cutting.Patterns;
using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Search;

/// <summary>Among answers of equal cost, takes the one that serves the person at the saw best.</summary>
internal sealed class Easing(ReducedProblem problem, WorkBudget budget, PatternPool pool, RunBounds bounds, Incumbent incumbent)
{
    private const int MostColumns = 800;

    /// <summary>Puts another answer of no higher cost in the place of the present one where that is easier.</summary>
    public void Run()
    {
        if (bounds.Costs is null)
            bounds.OfCosts();
        bounds.OfSheets();
        Prefer();
        var present = incumbent.Layouts;
        foreach (var (sheet, layout) in present)
            pool.Add(sheet, layout);
        var columns = bounds.MostPromising(MostColumns);
        columns.AddRange(present.Select(l => PatternColumn.Of(l.Sheet, Counted(l.Layout), l.Layout)));
        LayoutCharacter[] characters = [.. columns.Select(c => Of(c.Sheet, c.Layout))];
        var program = new PoolProgram(problem, columns, incumbent.Cost, exchanges: false);
        program.MinimizeEffort(
            characters, [.. columns.Select((_, c) => c >= columns.Count - present.Count ? 1 : 0)], incumbent.OptionCounts, incumbent.Sheets);
        var chosen = program.Solve(Math.Min(0.4, 0.1 * problem.Source.WorkLimit / 1e6), budget, problem.Source.Seed);
        if (chosen is { } answer && Better(answer.Layouts, answer.OptionCounts, present))
            incumbent.Exchange(answer.Layouts, answer.OptionCounts);
    }

    // The preferred option for every part, where that costs no more.
    private void Prefer()
    {
        if (PreferenceOf(incumbent.OptionCounts) == 0)
            return;
        var options = FirstOptions.Of(problem, preferred: true);
        var random = new SearchRandom(problem.Source.Seed);
        for (var order = 0; order < 5 && PreferenceOf(options) < PreferenceOf(incumbent.OptionCounts); order++)
        {
            var search = new RuinAndRecreate(problem, options, random, budget);
            if (!search.Construct(order))
                continue;
            List<(int Sheet, LayoutTree Layout)> layouts = [.. search.State.Bins.Select(b => (b.Sheet, LayoutTree.Of(b)))];
            foreach (var (sheet, layout) in layouts)
                pool.Add(sheet, layout);
            incumbent.Exchange(layouts, options);
        }
    }

    private bool Better(
        IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts, int[][] options, IReadOnlyList<(int Sheet, LayoutTree Layout)> present)
    {
        var (other, now) = (PreferenceOf(options), PreferenceOf(incumbent.OptionCounts));
        if (other != now)
            return other < now;
        return problem.Source.Aim == LayoutAim.LargestOffcut
            ? RestWorth(layouts) > RestWorth(present)
            : Settings(layouts) <= Settings(present);
    }

    private long PreferenceOf(int[][] options) =>
        problem.Demands.Index().Sum(d => d.Item.Options.Index().Sum(o => (long)options[d.Index][o.Index] * o.Item.Preference));

    private int Settings(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts) =>
        layouts.SelectMany(l => Of(l.Sheet, l.Layout).Settings).Distinct().Count();

    private long RestWorth(IReadOnlyList<(int Sheet, LayoutTree Layout)> layouts) => layouts.Sum(l => Of(l.Sheet, l.Layout).RestWorth);

    private LayoutCharacter Of(int sheet, LayoutTree layout) => LayoutCharacter.Of(LayoutTidier.Tidy(layout), problem.Sheets[sheet]);

    private int[] Counted(LayoutTree layout)
    {
        var counts = new int[problem.Kinds.Length];
        layout.Count(counts);
        return counts;
    }
}

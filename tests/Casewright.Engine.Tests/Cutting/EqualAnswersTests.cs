using Casewright.Engine.Cutting;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Cutting.Verification;
using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Splicing;
using Casewright.Engine.Verifying;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Shop;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>What decides between answers of one cost, and answers that start from an earlier one.</summary>
public class EqualAnswersTests
{
    [Fact]
    public void Of_equal_answers_the_preferred_option_is_taken()
    {
        // By hand: 100 + 60 or 80 + 80, both out of two sheets of 100 by 20 at most; nothing else distinguishes them.
        CuttingOption plain = CuttingProblems.Spliced(100, 60, 20) with { Preference = 1 };
        CuttingOption preferred = CuttingProblems.Spliced(80, 80, 20);
        foreach (ValueList<CuttingOption> options in new ValueList<CuttingOption>[] { [plain, preferred], [preferred, plain] })
        {
            var problem = new CuttingProblem([new SheetType("sheet", 100, 20, 7)], [new CuttingDemand("side", 1, options)], new CuttingRules(), 300_000);
            var solution = Solve(problem);
            Assert.Equal(14, solution.Cost);
            Assert.Equal(preferred, options[Assert.Single(solution.Choices).Option]);
        }
    }

    [Fact]
    public void An_earlier_answer_is_kept_or_bettered_with_less_work()
    {
        var problem = Shelves(9);
        var before = Solve(problem);
        var again = Solve(problem with { Start = StartOf(before, problem) });
        Assert.True(again.Cost <= before.Cost);
        Assert.True(again.Work < before.Work, $"{again.Work} units of work against {before.Work}");
    }

    [Fact]
    public void A_small_change_starts_from_the_earlier_answer()
    {
        var before = Solve(Shelves(9));
        var changed = Shelves(10);
        var fresh = Solve(changed);
        var next = Solve(changed with { Start = StartOf(before, Shelves(9)) });
        Assert.True(next.Work < fresh.Work, $"{next.Work} units of work against {fresh.Work}");
        // The earlier sheets and one more hold one part more.
        Assert.True(next.Cost <= before.Cost + 60);
    }

    [Fact]
    public void Alternatives_cost_the_same_and_are_proven_one_by_one()
    {
        var job = TallJobs.Wall(UnitSystem.Millimetres, cases: 2);
        var casework = LayoutStage.Lay(job).Value!;
        var outcome = CuttingStage.Alternatives(job, casework, PlanningEffort.Quick, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        Assert.NotEmpty(outcome.Value);
        Assert.Single(outcome.Value.Select(a => (a.Plan.Bounds.Cost, a.Plan.Bounds.Sheets)).Distinct());
        Assert.Equal(outcome.Value.Count, outcome.Value.Select(a => a.Plan.Sheets).Distinct().Count());
        Assert.All(outcome.Value, a => Assert.Empty(PlanVerifier.Verify(job, casework, a.Plan)));
    }

    [Fact]
    public void The_aim_that_the_job_records_decides_between_plans_of_one_cost()
    {
        var job = TallJobs.Wall(UnitSystem.Millimetres, cases: 2);
        job = job with { Shop = job.Shop with { Saw = job.Shop.Saw with { Aim = SheetAim.LargestOffcut } } };
        var casework = LayoutStage.Lay(job).Value!;
        var stop = TestContext.Current.CancellationToken;
        var plan = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: stop).Value!;
        Assert.Equal(CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, aim: LayoutAim.LargestOffcut, cancellation: stop).Value, plan);

        var figures = CutAlternative.Figures(CuttingStage.Alternatives(job, casework, PlanningEffort.Quick, stop).Value!);
        Assert.Equal(LayoutChoice.Of(plan, SheetAim.LargestOffcut, chosen: true), figures[0]);
        Assert.All(figures.Skip(1), f => Assert.True(!f.Chosen && f.Aim == SheetAim.FewestSettings && f.BeatsAtItsAim(figures[0])));
    }

    /// <summary>Two layouts drawn by hand: fewer settings against a larger offcut; neither is offered where it is no better.</summary>
    [Fact]
    public void A_layout_is_offered_where_it_is_better_at_what_it_aims_at()
    {
        var few = new LayoutChoice(SheetAim.FewestSettings, 5, 9, new(Mm(0), Mm(0), Mm(500), Mm(300)), 2, 0.25m, Chosen: true);
        var wide = new LayoutChoice(SheetAim.LargestOffcut, 6, 9, new(Mm(0), Mm(0), Mm(900), Mm(300)), 1, 0.27m, Chosen: false);
        Assert.True(wide.BeatsAtItsAim(few));
        Assert.True(few.BeatsAtItsAim(wide));
        Assert.False((wide with { Largest = few.Largest, KeptArea = few.KeptArea }).BeatsAtItsAim(few));
        Assert.False((few with { Settings = 7 }).BeatsAtItsAim(wide));
    }

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    [Fact]
    public void Little_is_done_after_the_search_is_cancelled()
    {
        using var source = new CancellationTokenSource();
        var stopper = new Stopper(source);
        var problem = Shelves(40) with { WorkLimit = 1_000_000_000 };
        Assert.ThrowsAny<OperationCanceledException>(() => SheetCutting.Solve(problem, stopper, source.Token));
        // The first report cancels: what comes after it is at most the reports of the same step.
        Assert.InRange(stopper.Reports, 1, 3);
    }

    private static CuttingProblem Shelves(int count) => CuttingProblems.Of(
        new CuttingRules(4, 10), [new("ply", 2440, 1220, 60)],
        (2000, 300, 5, false), (764, 284, count, false), (1850, 560, 3, false), (540, 380, 9, false));

    private static CuttingStart StartOf(CuttingSolution solution, CuttingProblem problem) => new(
        [.. solution.Sheets.Select(s => new StartSheet(s.SheetType, [.. s.Pieces.Select(p => new StartPiece(p.X, p.Y, p.SizeX, p.SizeY))]))],
        [.. problem.Demands.Select((d, i) => d.Options.Select((_, o) => solution.Choices.Count(c => c.Demand == i && c.Option == o)).ToValueList())]);

    private static CuttingSolution Solve(CuttingProblem problem)
    {
        var solution = SheetCutting.Solve(problem, null, TestContext.Current.CancellationToken).Solution;
        Assert.NotNull(solution);
        Assert.Empty(CuttingVerifier.FaultsOf(problem, solution));
        return solution;
    }

    private sealed class Stopper(CancellationTokenSource source) : ICuttingProgress
    {
        public int Reports { get; private set; }

        public void Report(CuttingProgress progress)
        {
            Reports++;
            source.Cancel();
        }
    }
}

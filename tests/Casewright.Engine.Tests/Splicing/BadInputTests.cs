using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Tests.Verifying;
using Casewright.Engine.Verifying;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Tests.Splicing;

/// <summary>Jobs that cannot be made as they stand: the answer names the place, what was found and what would mend it.</summary>
public class BadInputTests
{
    /// <summary>
    /// The uprights of the hand-made case: dado 1980 to 1998, pin holes 168 to 1800 and 2148 to 2532. With 30 kept from the dado the
    /// joint may be at 1950 and below or at 2028 and above.
    /// </summary>
    [Fact]
    public void A_height_in_a_dado_names_the_dado_and_the_nearest_heights()
    {
        var problem = Single(WithWish(new() { Height = Mm(2000) }), "runs[0].splices.height");

        Assert.Contains("dado for C1-F1", problem.Message, StringComparison.Ordinal);
        Assert.Equal("2000 mm", problem.Found);
        Assert.Contains("1950 mm or 2028 mm", problem.Accepted, StringComparison.Ordinal);
    }

    /// <summary>Nearest hole edge 1800 + 2.5, and 25 beyond it: 1827.5. Below the row nothing reaches: 140.5 leaves a stub.</summary>
    [Fact]
    public void A_height_in_a_pin_row_names_the_row()
    {
        var problem = Single(WithWish(new() { Height = Mm(1700) }), "runs[0].splices.height");

        Assert.Contains("pin row", problem.Message, StringComparison.Ordinal);
        Assert.Contains("1827.5 mm", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_height_that_can_be_had_is_kept()
    {
        var job = WithWish(new() { Height = Mm(1900) });
        var plan = Planned(job, GoodPlan.GoodCasework);

        Assert.All(plan.Splices.Where(s => s.Method != SpliceMethod.CoveredButt), s => Assert.Equal(Mm(1900), s.SightLine));
    }

    [Fact]
    public void A_run_that_may_not_be_spliced_says_so()
    {
        var problem = First(WithWish(new() { Allowed = false }), "runs[0].splices.allowed");

        Assert.Contains("C1-L and 2 alike", problem.Message, StringComparison.Ordinal);
        Assert.Equal("false", problem.Found);
    }

    [Fact]
    public void Connectors_are_refused_where_both_faces_show()
    {
        var problem = First(WithWish(new() { Method = SpliceMethod.TenonsAndConnectors }), "runs[0].splices.method");

        Assert.Contains("C1-P", problem.Message, StringComparison.Ordinal);
        Assert.Contains("both faces show", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_without_methods_says_so() =>
        Assert.Contains("set up for no method", First(WithRules(r => r with { Methods = [] }), "shop.splicing.methods").Message, StringComparison.Ordinal);

    [Fact]
    public void A_shop_that_allows_no_joints_says_so() => First(WithRules(r => r with { MostJoints = 0 }), "shop.splicing.mostJoints");

    [Fact]
    public void A_least_piece_that_no_joint_leaves_is_reported_with_what_is_in_the_way()
    {
        // At least 1500 on each side of 2700 is impossible.
        var problem = First(WithRules(r => r with { ShortestPiece = Mm(1500) }), "shop.splicing");

        Assert.NotEmpty(problem.Accepted);
    }

    [Fact]
    public void Strips_too_narrow_for_two_tenons_are_refused_and_told_why()
    {
        var casework = Reshaped(p => p with { Width = Mm(60), Machining = [] });
        var problem = First(GoodPlan.GoodJob, "shop.splicing.methods", casework);

        Assert.Contains("more room across the part than 60 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Panels_too_thin_for_tenons_are_refused_and_told_why()
    {
        var thin = GoodPlan.GoodJob with
        {
            Stock = GoodPlan.GoodJob.Stock with
            {
                Materials = [.. GoodPlan.GoodJob.Stock.Materials.Select(m => m.Id == "ply18" ? m with { Nominal = Mm(12), Measured = Mm(12) } : m)],
            },
        };
        var problem = First(thin, "shop.splicing.methods", Reshaped(p => p with { Thickness = Mm(12), Machining = [] }));

        Assert.Contains("need a thickness of 15 mm or more, and it is 12 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Thin_panels_are_scarfed_where_the_shop_does_that()
    {
        var casework = Reshaped(p => p with { Thickness = Mm(12), Machining = [] });
        casework = casework with { Parts = [.. casework.Parts.Where(p => p.Role != PartRole.Back)] };
        var job = WithRules(r => r with { Methods = [new() { Method = SpliceMethod.Scarf, Minutes = 40 }] });
        job = job with
        {
            Stock = job.Stock with { Materials = [.. job.Stock.Materials.Select(m => m.Id == "ply18" ? m with { Nominal = Mm(12), Measured = Mm(12) } : m)] },
        };
        var plan = Planned(job, casework);

        // 8 thicknesses of 12, and 3 squared off each end: 102.
        Assert.All(plan.Splices.Where(s => s.Method == SpliceMethod.Scarf), s => Assert.Equal(Mm(102), s.Consumes));
        Assert.Equal(3, plan.Splices.Count(s => s.Method == SpliceMethod.Scarf));
    }

    [Fact]
    public void No_stock_of_a_material_is_a_problem_of_the_stock()
    {
        var problem = Single(WithStock(s => s with { Sheets = [.. s.Sheets.Where(x => x.Material != "ply6")] }), "stock.sheets");

        Assert.Contains("back 6", problem.Message, StringComparison.Ordinal);
        Assert.Contains("'ply6'", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void No_boards_of_a_material_is_a_problem_of_the_boards() =>
        Single(WithStock(s => s with { Boards = [] }), "stock.boards");

    [Fact]
    public void Stock_that_runs_out_says_how_much_there_is()
    {
        var problem = Single(
            WithStock(s => s with { Sheets = [.. s.Sheets.Select(x => x.Material == "ply18" ? x with { OnHand = 1, Limit = 0 } : x)] }), "stock.sheets");

        Assert.Contains("1 on hand", problem.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_wider_than_any_sheet_is_refused_or_made_of_strips()
    {
        // Level parts 1300 wide; a sheet of 1220 takes 1210.
        var wide = GoodPlan.GoodCasework with { Parts = [.. GoodPlan.GoodCasework.Parts.Select(p => p.Role == PartRole.Top ? p with { Width = Mm(1300) } : p)] };
        var problem = First(GoodPlan.GoodJob, "runs[0].splices.allowEdgeJoint", wide);
        Assert.Contains("1300 mm wide", problem.Message, StringComparison.Ordinal);
        Assert.Contains("1210 mm", problem.Message, StringComparison.Ordinal);

        var plan = Planned(WithWish(new() { AllowEdgeJoint = true }), wide);

        // Two strips of 650, each 3 wider for squaring its joint.
        Assert.Equal([Mm(653), Mm(653)], plan.Pieces.Where(p => p.Part == "C1-T").Select(p => p.Width));
    }

    [Fact]
    public void A_back_without_a_shelf_to_lie_on_is_refused()
    {
        var bare = GoodPlan.GoodCasework with { Parts = [.. GoodPlan.GoodCasework.Parts.Where(p => p.Id != "C1-F2")] };

        Assert.Contains("no fixed shelf or trim band", First(GoodPlan.GoodJob, "runs[0].back", bare).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pin_row_from_foot_to_head_leaves_no_joint()
    {
        var rows = Reshaped(p => p with { Machining = [new PinRow("shelves", Face.Reference, Mm(37), Mm(150), Mm(32), 75, Mm(5), Mm(8))] });

        Assert.Contains("pin row", First(GoodPlan.GoodJob, "shop.splicing", rows).Message, StringComparison.Ordinal);
    }

    private static Casework Reshaped(Func<Part, Part> change) => GoodPlan.GoodCasework with
    {
        Parts = [.. GoodPlan.GoodCasework.Parts.Select(p => p.Role is PartRole.Side or PartRole.Partition ? change(p) : p)],
    };

    private static Job WithWish(SpliceWish wish) => GoodPlan.GoodJob with { Runs = [GoodPlan.GoodJob.Runs[0] with { Splices = wish }] };

    private static Job WithRules(Func<SpliceRules, SpliceRules> change) =>
        GoodPlan.GoodJob with { Shop = GoodPlan.GoodJob.Shop with { Splicing = change(GoodPlan.GoodJob.Shop.Splicing) } };

    private static Job WithStock(Func<Model.Stock.StockRoom, Model.Stock.StockRoom> change) => GoodPlan.GoodJob with { Stock = change(GoodPlan.GoodJob.Stock) };

    private static Problem Single(Job job, string path)
    {
        var problem = First(job, path);
        Assert.Single(Fail(job, GoodPlan.GoodCasework));
        return problem;
    }

    private static Problem First(Job job, string path, Casework? casework = null)
    {
        var problems = Fail(job, casework ?? GoodPlan.GoodCasework);
        var problem = problems.FirstOrDefault(p => p.Path == path);
        Assert.True(problem is not null, $"No problem at {path}, but: {string.Join("\n", problems)}");
        return problem;
    }

    private static ValueList<Problem> Fail(Job job, Casework casework)
    {
        var outcome = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.False(outcome.Succeeded, "The job was planned.");
        return outcome.Problems;
    }

    private static Model.Cutting.CutPlan Planned(Job job, Casework casework)
    {
        // A board for each piece is more than the job may buy.
        job = job with { Stock = job.Stock with { Boards = [.. job.Stock.Boards.Select(b => b with { Limit = null })] } };
        var outcome = CuttingStage.Plan(job, casework, solver: new OneByOneSolver(1), cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        Assert.Equal("", string.Join("\n", PlanVerifier.Verify(job, casework, outcome.Value)));
        return outcome.Value;
    }

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}

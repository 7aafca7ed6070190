using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Cutting.Sawn;
using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Layout;
using Casewright.Engine.Tests.Splicing;
using Casewright.Engine.Verifying;
using Casewright.Model.Cutting;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Tests.Cutting;

/// <summary>
/// A job re-planned while the saw is at work. What must hold is a fact of the shop, no source needed: wood that is cut stays cut, and
/// what it cost is spent.
/// </summary>
public class SawnTests
{
    private static readonly Job s_wall = Room(TallJobs.Wall(UnitSystem.Millimetres, cases: 3));
    private static readonly Lazy<Plan> s_plan = new(() => Planned(s_wall));

    [Fact]
    public void With_nothing_sawn_the_plan_is_a_fresh_one()
    {
        var plan = s_plan.Value;
        var job = SawnRecord.Of(plan, [], []);
        Assert.Equal(s_wall, job.Value);
        Assert.Equal(plan.Cutting, Planned(s_wall with { Sawn = new() }).Cutting);
    }

    [Fact]
    public void With_everything_sawn_the_plan_is_as_it_was_and_nothing_is_left_to_search()
    {
        var plan = s_plan.Value;
        var again = Planned(Record(plan, [.. plan.Cutting.Sheets.Select(s => s.Id)], []));
        Assert.All(again.Cutting.Sheets, s => Assert.True(s.Sawn));
        Assert.Equal(plan.Cutting.Sheets.Select(Sorted), again.Cutting.Sheets.Select(s => Sorted(s) with { Sawn = false }));
        Assert.Equal(plan.Cutting.Pieces, again.Cutting.Pieces);
        Assert.Equal(plan.Cutting.Splices, again.Cutting.Splices);
        Assert.Equal(plan.Cutting.Bounds.Cost, again.Cutting.Bounds.Cost);
        Assert.True(again.Cutting.Bounds.Proven);
    }

    [Fact]
    public void A_bay_that_changes_after_half_the_sheets_are_sawn_leaves_them_as_they_are()
    {
        var plan = s_plan.Value;
        string[] half = [.. plan.Cutting.Sheets.Take(plan.Cutting.Sheets.Count / 2).Select(s => s.Id)];
        var narrower = Narrower(Record(plan, half, []), 60);
        var again = Planned(narrower);

        foreach (var sheet in plan.Cutting.Sheets.Where(s => half.Contains(s.Id)))
            Assert.Equal(sheet.Cuts, again.Cutting.Sheets.Single(s => s.Id == sheet.Id).Cuts);

        // Uprights have not changed: each of their pieces that is sawn serves still, from the same place.
        var parts = again.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var uprights = plan.Cutting.Pieces.Where(p => half.Contains(p.Stock) && parts[p.Part].Role == PartRole.Side).ToList();
        Assert.NotEmpty(uprights);
        Assert.All(uprights, p => Assert.Contains(p, again.Cutting.Pieces));

        // Levels have: those sawn are spare, and each is told of once.
        var spare = plan.Cutting.Pieces.Where(p => half.Contains(p.Stock) && !again.Cutting.Pieces.Contains(p)).Select(p => $"{p.Id} of {p.Stock}").Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(spare);
        Assert.Equal(spare, again.Cutting.Findings.Where(f => f.Check == "sawn-spare").Select(f => f.Subject).Order(StringComparer.Ordinal));

        // Sunk cost counts in both sums; what is bought from now on is no more than a fresh plan of the whole would buy.
        var fresh = Planned(Narrower(s_wall, 60));
        var sunk = again.Cutting.Sheets.Where(s => s.Sawn).Sum(s => s.Cost);
        Assert.True(again.Cutting.Bounds.LowerBound >= sunk);
        Assert.True(again.Cutting.Sheets.Count(s => s.Bought && !s.Sawn) <= fresh.Cutting.Sheets.Count(s => s.Bought));
    }

    [Fact]
    public void A_level_that_gets_shorter_is_cut_from_the_one_that_is_sawn()
    {
        var plan = s_plan.Value;
        var again = Planned(Narrower(Record(plan, [.. plan.Cutting.Sheets.Select(s => s.Id)], []), 3));

        // Every sawn panel of the old bays is longer by 1 mm or more: nothing needs to be bought.
        Assert.DoesNotContain(again.Cutting.Sheets, s => s.Bought && !s.Sawn);
        var shelf = again.Cutting.Pieces.First(p => again.Parts.Single(q => q.Id == p.Part).Role == PartRole.AdjustableShelf);
        var from = again.Cutting.Sheets.Single(s => s.Id == shelf.Stock);
        Assert.False(from.Sawn);
        Assert.NotNull(from.LeftOver);
    }

    [Fact]
    public void A_spoiled_piece_is_made_again_and_nothing_else()
    {
        var plan = s_plan.Value;
        string[] all = [.. plan.Cutting.Sheets.Select(s => s.Id)];
        var lost = plan.Cutting.Pieces.First(p => plan.Parts.Single(q => q.Id == p.Part).Role == PartRole.Side);
        var again = Planned(Record(plan, all, [lost.Id]));

        var made = again.Cutting.Pieces.Single(p => p.Id == lost.Id);
        Assert.False(again.Cutting.Sheets.Single(s => s.Id == made.Stock).Sawn);
        Assert.Equal((lost.Length, lost.Width, lost.From, lost.To), (made.Length, made.Width, made.From, made.To));
        Assert.Equal(plan.Cutting.Pieces.Where(p => p.Id != lost.Id), again.Cutting.Pieces.Where(p => p.Id != lost.Id));
        Assert.Equal(plan.Cutting.Splices, again.Cutting.Splices);
        Assert.DoesNotContain(made.Stock, all);

        // Spoiled a second time: both spoiled panels stay where they are and neither is cut from.
        var third = Planned(Record(again, [], [lost.Id]));
        Assert.Equal(2, third.Job.Sawn!.Sheets.Sum(s => s.Pieces.Count(p => p.Lost)));
        Assert.NotEqual(made.Stock, third.Cutting.Pieces.Single(p => p.Id == lost.Id).Stock);
    }

    [Fact]
    public void When_every_part_changes_its_size_all_that_is_sawn_is_spare()
    {
        var plan = s_plan.Value;
        var record = Record(plan, [plan.Cutting.Sheets[0].Id], []);
        var again = Planned(record with { Runs = [.. record.Runs.Select(r => r with { Depth = r.Depth + SampleRuns.Mm(1) })] });

        var sawn = again.Cutting.Sheets.Single(s => s.Sawn);
        Assert.DoesNotContain(again.Cutting.Pieces, p => p.Stock == sawn.Id);
        Assert.Equal(plan.Cutting.Pieces.Count(p => p.Stock == sawn.Id), again.Cutting.Findings.Count(f => f.Check == "sawn-spare"));
    }

    [Fact]
    public void Boards_that_are_cut_stay_too()
    {
        var (job, casework) = TallJobs.Crowned();
        var cutting = CuttingStage.Plan(job, casework, cancellation: TestContext.Current.CancellationToken).Value!;
        var plan = new Plan { Job = job, Cases = casework.Cases, Parts = casework.Parts, Cutting = cutting, Findings = [] };
        var first = cutting.Boards[0];
        var lost = cutting.Pieces.First(p => p.FromBoard && p.Stock == first.Id);
        var record = Record(plan, [first.Id], [lost.Id]);

        var again = CuttingStage.Plan(record, casework, cancellation: TestContext.Current.CancellationToken).Value!;
        Assert.Empty(PlanVerifier.Verify(record, casework, again));
        Assert.Equal(first.Cuts, again.Boards.Single(b => b.Id == first.Id).Cuts);
        Assert.NotEqual(first.Id, again.Pieces.Single(p => p.Id == lost.Id).Stock);
    }

    [Fact]
    public void Ids_that_the_plan_does_not_know_are_named()
    {
        var outcome = SawnRecord.Of(s_plan.Value, ["S1", "S99"], ["S1", "nobody/a"]);
        Assert.Equal(["sawn: S99", "lost: S1", "lost: nobody/a"], outcome.Problems.Select(p => $"{p.Path}: {p.Found}"));
    }

    [Fact]
    public void The_record_goes_through_the_job_file_unchanged()
    {
        var plan = s_plan.Value;
        var job = Record(plan, [plan.Cutting.Sheets[0].Id], [plan.Cutting.Pieces.First(p => p.Stock == plan.Cutting.Sheets[0].Id).Id]);
        var read = JobFile.Read(JobFile.Write(job));
        Assert.Empty(read.Problems);
        Assert.Equal(job.Sawn, read.Value!.Sawn);
    }

    /// <summary>What is done to a plan around sawn wood, and words of the rule that must speak.</summary>
    [Theory]
    [InlineData("a sawn sheet dropped", "is not in the plan as such")]
    [InlineData("a sawn sheet cut otherwise", "is not as it was cut")]
    [InlineData("a sheet called sawn", "no record that this sheet is sawn")]
    [InlineData("a lost piece used", "No good piece of these figures")]
    [InlineData("a good piece made again", "cut anew though a good one is there")]
    [InlineData("a leftover moved", "leaves no such panel")]
    [InlineData("a leftover paid for", "costs nothing more")]
    [InlineData("a leftover of a sheet that is not cut", "Nothing is sawn that could leave this over")]
    [InlineData("a lost piece kept as an offcut", "not one of the panels left over")]
    public void Corruptions_are_caught(string corruption, string words)
    {
        var plan = s_plan.Value;
        string[] all = [.. plan.Cutting.Sheets.Select(s => s.Id)];
        var lost = plan.Cutting.Pieces.First(p => plan.Parts.Single(q => q.Id == p.Part).Role == PartRole.Side);
        var good = plan.Cutting.Pieces.First(p => p.Stock == lost.Stock && p != lost);
        var again = Planned(Narrower(Record(plan, all, [lost.Id]), 3));
        var cut = again.Cutting;
        var left = cut.Sheets.First(s => s.LeftOver is not null);
        var broken = corruption switch
        {
            "a sawn sheet dropped" => cut with { Sheets = [.. cut.Sheets.Where(s => s.Id != lost.Stock)], Pieces = [.. cut.Pieces.Select(p => p.Stock == lost.Stock ? p with { Stock = left.Id } : p)] },
            "a sawn sheet cut otherwise" => cut with { Sheets = [.. cut.Sheets.Select(s => s.Id == lost.Stock ? s with { Cuts = [.. s.Cuts.Skip(1)] } : s)] },
            "a sheet called sawn" => cut with { Sheets = [.. cut.Sheets.Select(s => s.Id == left.Id ? s with { Sawn = true } : s)] },
            "a lost piece used" => cut with { Pieces = [.. cut.Pieces.Select(p => p.Id == lost.Id ? lost : p)] },
            "a good piece made again" => cut with { Pieces = [.. cut.Pieces.Select(p => p.Id == good.Id ? p with { Stock = left.Id } : p)] },
            "a leftover moved" => Left(cut, left, s => s with { LeftOver = s.LeftOver! with { X = s.LeftOver.X + Length.FromNanometres(1) } }),
            "a leftover paid for" => Left(cut, left, s => s with { Cost = 5 }),
            "a leftover of a sheet that is not cut" => Left(cut, left, s => s with { LeftOver = s.LeftOver! with { Id = "S99" } }),
            _ => cut with { Sheets = [.. cut.Sheets.Select(s => s.Id == lost.Stock ? s with { Offcuts = s.Offcuts.Add(new(lost.X, lost.Y, lost.Length, lost.Width)) } : s)] },
        };
        var casework = new Casework(again.Cases, again.Parts, []);
        Assert.Contains(PlanVerifier.Verify(again.Job, casework, broken), p => p.Message.Contains(words, StringComparison.Ordinal));
    }

    private static CutPlan Left(CutPlan cut, SheetLayout left, Func<SheetLayout, SheetLayout> change) =>
        cut with { Sheets = [.. cut.Sheets.Select(s => s.Id == left.Id ? change(s) : s)] };

    private static SheetLayout Sorted(SheetLayout sheet) => sheet with { Offcuts = [.. sheet.Offcuts.OrderBy(o => o.X).ThenBy(o => o.Y)] };

    private static Job Room(Job job) => job with { Walls = [.. job.Walls.Select(w => w with { StatedWidth = SampleRuns.Mm(10_000) })] };

    private static Job Narrower(Job job, decimal millimetres) =>
        job with { Runs = [.. job.Runs.Select(r => r with { Width = r.Width - SampleRuns.Mm(millimetres) })] };

    private static Job Record(Plan plan, string[] sawn, string[] lost)
    {
        var outcome = SawnRecord.Of(plan, sawn, lost);
        Assert.Empty(outcome.Problems);
        return outcome.Value!;
    }

    /// <summary>Laid out, cut and proven anew; the verifier's rules on sawn wood are among those that must pass.</summary>
    private static Plan Planned(Job job)
    {
        var casework = LayoutStage.Lay(job).Value!;
        var outcome = CuttingStage.Plan(job, casework, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join("\n", outcome.Problems));
        var broken = PlanVerifier.Verify(job, casework, outcome.Value);
        Assert.True(broken.Count == 0, string.Join("\n", broken.Take(10)));
        return new Plan { Job = job, Cases = casework.Cases, Parts = casework.Parts, Cutting = outcome.Value, Findings = [] };
    }
}

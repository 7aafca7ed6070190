using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Schemes;
using Casewright.Engine.Tests.Layout;
using Casewright.Engine.Tests.Timeline;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Schemes;
using static Casewright.Engine.Tests.Timeline.SampleShop;

namespace Casewright.Engine.Tests.Schemes;

/// <summary>Three bookcases whose sides are a little or a lot over the sheet of 2440 mm, of which 5 mm are trimmed off each edge: 2430 are usable.</summary>
public class SchemeStageTests
{
    // Sides of 2460 are 30 over. Spliced: two sides in each of three cases, six joints on one line. Designed away: 30 lower, none. Stacked at
    // the fixed shelf: none, and one line all round. No longer sheet is on offer.
    [Fact]
    public void Sides_a_little_over_the_sheet()
    {
        var schemes = Compare(Bookcases(2460));
        Assert.Equal(Enum.GetValues<SchemeKind>(), schemes.Keys.Order());

        var spliced = schemes[SchemeKind.Spliced];
        Assert.True(spliced.Feasible, string.Join('\n', spliced.Why));
        Assert.Equal((6, 0), (spliced.Figures!.Splices, spliced.Figures.LeadDays));
        Assert.Equal(schemes[SchemeKind.Mixed].Figures, spliced.Figures);

        var away = schemes[SchemeKind.DesignedAway];
        Assert.Equal(["cases of a end 30 mm lower"], away.Changes);
        Assert.Equal((0, Mm(2430), 0), (away.Figures!.Splices, away.Figures.Longest, away.Figures.LinesInView));

        var stacked = schemes[SchemeKind.Stacked];
        Assert.Equal((0, 1), (stacked.Figures!.Splices, stacked.Figures.LinesInView));
        Assert.True(stacked.Figures.Longest < Mm(1400));

        var whole = schemes[SchemeKind.LongSheets];
        Assert.False(whole.Feasible);
        Assert.NotEmpty(whole.Why);
        Assert.Null(whole.Figures);
    }

    // Sides of 2830 are 400 over: more than 150 of base and 150 of head take up. A sheet of 3050 holds them whole, three weeks later.
    [Fact]
    public void Sides_far_over_the_sheet()
    {
        var job = Bookcases(2830);
        var longer = new Model.Stock.SheetStock { Id = "p2", Material = "panel", Length = Mm(3050), Width = Mm(1525), Price = 150, LeadDays = 15 };
        var schemes = Compare(job with { Stock = job.Stock with { Sheets = job.Stock.Sheets.Add(longer) } });

        var away = schemes[SchemeKind.DesignedAway];
        Assert.False(away.Feasible);
        Assert.Contains("400 mm over", away.Why[0], StringComparison.Ordinal);

        var whole = schemes[SchemeKind.LongSheets];
        Assert.True(whole.Figures is not null, string.Join('\n', whole.Why));
        Assert.Equal((0, 15), (whole.Figures.Splices, whole.Figures.LeadDays));
        Assert.Equal((6, 0), (schemes[SchemeKind.Spliced].Figures!.Splices, schemes[SchemeKind.Spliced].Figures!.LeadDays));
        Assert.True(whole.Figures.Finish > schemes[SchemeKind.Spliced].Figures!.Finish);

        // The mix may use both kinds of sheet, so it never costs more than the cheaper of the two in sheets and joints.
        Assert.True(schemes[SchemeKind.Mixed].Figures!.Material <= whole.Figures.Material);
    }

    // Sides of 2460 are glued up over their whole length, and the only bench is 2400: that is no way to build it. Sides of 2430 in one piece, and
    // of two tiers, need no glue-up on a bench.
    [Fact]
    public void A_way_whose_glue_ups_fit_no_bench_is_not_feasible_and_says_so()
    {
        var job = Bookcases(2460);
        var schemes = Compare(job with { Shop = job.Shop with { Stations = Stations(2400) } });
        foreach (var kind in new[] { SchemeKind.Spliced, SchemeKind.Mixed })
        {
            Assert.False(schemes[kind].Feasible);
            Assert.Contains(schemes[kind].Why, w => w.Contains("No station is long enough", StringComparison.Ordinal) && w.Contains("2400 mm", StringComparison.Ordinal));
            Assert.Null(schemes[kind].Figures!.Finish);
        }

        Assert.All(new[] { SchemeKind.DesignedAway, SchemeKind.Stacked }, kind => Assert.True(schemes[kind] is { Feasible: true, Figures.Finish: not null }));
    }

    // Without people there is no timetable for any way, which says nothing against one of them; the list says it once.
    [Fact]
    public void What_keeps_every_way_from_a_timetable_is_said_once()
    {
        var job = Bookcases(2460);
        var list = SchemeStage.Compare(job with { Shop = job.Shop with { People = [] } }, PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken).Value!;
        Assert.Equal(["There is nobody to do the work."], list.NoTimetable);
        Assert.True(list.Schemes.Single(s => s.Kind == SchemeKind.Spliced) is { Feasible: true, Figures.Finish: null });
    }

    // What is done of the job as it stands has other tasks than the other ways: all are compared from the beginning, and none loses the records.
    [Fact]
    public void Ways_are_compared_from_the_beginning_and_keep_the_records()
    {
        var job = Bookcases(2460);
        var begun = job with { Progress = new(Monday.ToDateTime(new(12, 0)), [new("glue/C1-L", Monday.ToDateTime(new(9, 0)), Monday.ToDateTime(new(9, 10)))]) };
        var (fresh, later) = (Compare(job), Compare(begun));
        Assert.All(Enum.GetValues<SchemeKind>(), kind => Assert.Equal((fresh[kind].Figures, fresh[kind].Feasible), (later[kind].Figures, later[kind].Feasible)));
        Assert.All(later.Values, s => Assert.Equal(begun.Progress, s.Job.Progress));
    }

    [Fact]
    public void A_scheme_can_be_adopted_as_a_job_file()
    {
        // The sample's wall of 60 m is longer than a file allows.
        var stated = Bookcases(2460);
        stated = stated with { Walls = [stated.Walls[0] with { Width = Mm(20_000) }] };
        var job = new SchemeVariations(stated, Laid.Of(stated).Casework).All().Single(v => v.Kind == SchemeKind.DesignedAway).Job;
        var read = Model.Files.JobFile.Read(Model.Files.JobFile.Write(job));
        Assert.True(read.Succeeded, string.Join('\n', read.Problems));
        Assert.Equal(job, read.Value);
    }

    private static Job Bookcases(int height)
    {
        var run = SampleRuns.Plain(UnitSystem.Millimetres, Mm(2400), Mm(height), Mm(300)) with { Division = new() { Bays = 3, BaysPerCase = 1 } };
        var sample = SampleRuns.Job(UnitSystem.Millimetres, run);
        return sample with { StartOn = Monday, Shop = SampleShop.Job(2, Stations(3200, 3200)).Shop };
    }

    private static Dictionary<SchemeKind, Scheme> Compare(Job job)
    {
        var outcome = SchemeStage.Compare(job, PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value.Schemes.ToDictionary(s => s.Kind);
    }
}

using Casewright.Engine.Layout;
using Casewright.Engine.Tests.Layout;
using Casewright.Engine.Timeline;
using Casewright.Engine.Timeline.Scheduling;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Timeline;
using static Casewright.Engine.Tests.Timeline.SampleShop;

namespace Casewright.Engine.Tests.Timeline;

public class TimelineStageTests
{
    private static readonly SchedulingEffort Effort = new() { Work = 4, LevelWork = 1 };

    [Fact]
    public void A_whole_job_keeps_every_rule_of_the_shop_and_repeats()
    {
        var job = Bookcases(bays: 3, people: 2);
        var schedule = Make(job);
        ScheduleRules.AssertKept(job, schedule);
        Assert.Equal(schedule, Make(job));
        Assert.Equal(
            [WorkPhase.Breakdown, WorkPhase.Splicing, WorkPhase.Joinery, WorkPhase.Drilling, WorkPhase.Assembly, WorkPhase.Sanding, WorkPhase.Finishing, WorkPhase.Delivery, WorkPhase.Install],
            schedule.Tasks.Select(t => t.Phase).Distinct().Order());

        // A primer and two coats, two hours of drying after each.
        var coats = schedule.Tasks.Where(t => t.Phase == WorkPhase.Finishing).ToList();
        Assert.Equal(3, coats.Count);
        Assert.True(coats[1].Start >= coats[0].Finish.AddHours(2) && coats[2].Start >= coats[1].Finish.AddHours(2));
        Assert.Equal(DateOnly.FromDateTime(coats[2].Finish.AddDays(7)) is var dry && dry > DateOnly.FromDateTime(schedule.Finish) ? dry : DateOnly.FromDateTime(schedule.Finish), schedule.LoadShelvesFrom);
    }

    // Every pair of hands at every task, added up by hand from the standard times, is what people do day by day.
    [Fact]
    public void Hands_on_minutes_by_day_add_up_to_the_work()
    {
        var schedule = Make(Bookcases(bays: 2, people: 2));
        Assert.Equal(schedule.WorkMinutes, schedule.Load.Sum(d => d.Minutes));
        Assert.All(schedule.Load, day => Assert.InRange(day.Minutes, 1, 390));
    }

    [Fact]
    public void A_forty_bay_job_is_scheduled_and_its_gap_is_stated()
    {
        var job = Bookcases(bays: 40, people: 3);
        var schedule = Make(job);
        ScheduleRules.AssertKept(job, schedule);

        // Eighty uprights on two stations. Three people cannot do it in less than the work divided by three.
        Assert.Equal(80, schedule.Tasks.Count(t => t.Id.StartsWith("glue/", StringComparison.Ordinal)));
        Assert.True(schedule.WorkingDays >= schedule.WorkMinutes / (3.0 * 390));
        Assert.InRange(schedule.Gap, 0, 0.40);
    }

    [Fact]
    public void Floor_for_four_cases_makes_loads_of_four()
    {
        var job = Bookcases(bays: 6, people: 2);
        job = job with { Shop = job.Shop with { FloorPlaces = 4 } };
        var schedule = Make(job);
        ScheduleRules.AssertKept(job, schedule);
        var delivered = schedule.Tasks.Where(t => t.Phase == WorkPhase.Delivery).ToList();
        Assert.Equal(2, delivered.Count);
        foreach (var assembled in schedule.Tasks.Where(t => t.Id.StartsWith("assemble/", StringComparison.Ordinal)))
        {
            var standing = schedule.Tasks.Where(t => t.Id.StartsWith("assemble/", StringComparison.Ordinal) && t.Start <= assembled.Start)
                .Count(t => delivered.Single(d => d.Name.Contains(t.Id[9..], StringComparison.Ordinal)).Finish > assembled.Start);
            Assert.InRange(standing, 1, 4);
        }
    }

    // Three working days from Monday the 2nd: Thursday the 5th; the Wednesday between is a holiday: Friday.
    [Fact]
    public void Stock_arrives_after_its_lead_time_in_working_days()
    {
        var job = Bookcases(bays: 1, people: 2);
        job = job with
        {
            Shop = job.Shop with { Hours = new() { DaysOff = [new(2026, 3, 4)] } },
            Stock = job.Stock with { Sheets = [new() { Id = "stock-panel", Material = "panel", Length = Mm(2440), Width = Mm(1220), Price = 80, LeadDays = 3 }] },
        };
        var schedule = Make(job);
        Assert.Equal(new DateOnly(2026, 3, 6), DateOnly.FromDateTime(schedule.Tasks.Single(t => t.Id == "unload/stock-panel").Start));
        Assert.Contains(new StockOrder("stock-panel", 1, new(2026, 3, 2), new(2026, 3, 6)), schedule.Orders.Select(o => o with { Count = 1 }));
    }

    // Two working days from Monday the 2nd: Wednesday the 4th; ten: Monday the 16th. What is there is sawn on Wednesday, without waiting.
    [Fact]
    public void Sheets_that_come_late_do_not_keep_the_saw_waiting()
    {
        var job = Bookcases(bays: 3, people: 2);
        Model.Stock.SheetStock Stock(string id, int lead) => new() { Id = id, Material = "panel", Length = Mm(2440), Width = Mm(1220), Price = 80, LeadDays = lead };
        job = job with { Stock = job.Stock with { Sheets = [Stock("stock-panel", 2), Stock("late", 10)] } };
        var laid = LayoutStage.Lay(job).Value!;
        var cutting = Cut(laid);
        var last = cutting.Sheets.Last(s => s.Material == "panel").Id;
        cutting = cutting with { Sheets = [.. cutting.Sheets.Select(s => s.Id == last ? s with { Stock = "late" } : s)] };
        var outcome = TimelineStage.Schedule(job, laid, cutting, null, Effort, null, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        ScheduleRules.AssertKept(job, outcome.Value);
        DateOnly Day(string task) => DateOnly.FromDateTime(outcome.Value.Tasks.Single(t => t.Id == task).Start);
        Assert.Equal((new DateOnly(2026, 3, 4), new DateOnly(2026, 3, 16)), (Day("rip/panel"), Day("rip/panel/2")));
        Assert.True(Day("crosscut/panel") < new DateOnly(2026, 3, 16));
    }

    [Fact]
    public void A_deadline_that_cannot_be_met_says_by_how_much_and_what_would()
    {
        var job = Bookcases(bays: 3, people: 2);
        var finish = DateOnly.FromDateTime(Make(job).Finish);
        var met = Make(job with { FinishBy = finish });
        Assert.Equal(Severity.Pass, met.Findings.Single(f => f.Check == "deadline").Severity);

        var promised = job.Shop.Hours.WorkingDayBefore(finish, 2)!.Value;
        var late = Make(job with { FinishBy = promised });
        var finding = late.Findings.Single(f => f.Check == "deadline");
        Assert.Equal((Severity.Stop, 2.0), (finding.Severity, finding.Value));
        Assert.Contains("Begin 2 working days earlier", finding.Advice, StringComparison.Ordinal);
        Assert.NotEmpty(late.Remedies);
        Assert.All(late.Remedies, r => Assert.True(r.Finish < finish && r.Meets == (r.Finish <= promised)));
    }

    [Fact]
    public void A_holiday_every_day_is_a_problem_not_an_endless_search()
    {
        var job = Bookcases(bays: 1, people: 1);
        var hours = new WorkingHours { DaysOff = Enumerable.Range(0, 1200).Select(d => Monday.AddDays(d)).ToValueList() };
        var problem = Assert.Single(Run(job with { Shop = job.Shop with { Hours = hours } }).Problems);
        Assert.Equal(("shop.hours", "1200 days off"), (problem.Path, problem.Found));
    }

    [Fact]
    public void Without_a_first_day_there_is_no_timetable() =>
        Assert.Equal("startOn", Assert.Single(Run(Bookcases(bays: 1, people: 1) with { StartOn = null, Date = null }).Problems).Path);

    [Fact]
    public void Hours_that_overlap_are_refused()
    {
        var job = Bookcases(bays: 1, people: 1);
        var hours = new WorkingHours { Day = [new(new(8, 0), new(12, 0)), new(new(11, 0), new(15, 0))] };
        Assert.Equal("shop.hours.day[1]", Assert.Single(Run(job with { Shop = job.Shop with { Hours = hours } }).Problems).Path);
    }

    [Fact]
    public void Work_that_only_some_can_lead_waits_for_them()
    {
        var job = Bookcases(bays: 2, people: 2);
        var painter = new Person { Id = "painter", Name = "painter", Skills = [Skill.Finishing], DaysOff = [Monday, Monday.AddDays(1)] };
        var joiners = People(2).Select(p => p with { Skills = [Skill.Machining, Skill.Assembling, Skill.Installing] });
        job = job with { Shop = job.Shop with { People = joiners.Append(painter).ToValueList() } };
        var schedule = Make(job);
        ScheduleRules.AssertKept(job, schedule);
        Assert.All(schedule.Tasks.Where(t => t.Phase is WorkPhase.Finishing or WorkPhase.Sanding), t => Assert.Equal("painter", t.People[0]));
        Assert.Equal("shop.people", Assert.Single(Run(job with { Shop = job.Shop with { People = joiners.ToValueList() } }).Problems).Path);
    }

    // Half of the job is done by Wednesday at 10:00, with the primer drying. What is left keeps the rules and begins after now; what is done stays.
    [Fact]
    public void What_is_left_is_scheduled_from_what_is_done()
    {
        var job = Bookcases(bays: 2, people: 2);
        var first = Make(job);
        var now = first.Tasks.Single(t => t.Id == "coat1/lot1").Finish.AddMinutes(10);
        var records = first.Tasks.Where(t => t.Start < now).Select(t => new WorkRecord(t.Id, t.Start, t.Finish <= now ? t.Finish : null)).ToValueList();
        var rest = Make(job, new(now, records));
        ScheduleRules.AssertKept(job, rest);
        Assert.All(rest.Tasks, t => Assert.True(t.Done == records.Any(r => r.Task == t.Id && r.Finish is not null)));
        Assert.All(rest.Tasks.Where(t => records.All(r => r.Task != t.Id)), t => Assert.True(t.Start >= now));
        Assert.True(rest.Tasks.Single(t => t.Id == "coat2/lot1").Start >= first.Tasks.Single(t => t.Id == "coat1/lot1").Finish.AddHours(2));

        // Nothing was late, so the finish stays the least there is.
        Assert.Equal(first.Finish, rest.Finish);
    }

    [Fact]
    public void A_record_of_a_task_that_is_not_there_is_refused_at_its_place()
    {
        var job = Bookcases(bays: 1, people: 1);
        var morning = Monday.ToDateTime(new(8, 0));
        var problems = Run(job, new(morning.AddHours(4), [new("unload/stock-panel", morning, morning.AddHours(1)), new("glue/C9-L", morning, null), new("sweep", morning, null)])).Problems;
        Assert.Equal([("progress.tasks[1].task", "glue/C9-L"), ("progress.tasks[2].task", "sweep")], problems.Select(p => (p.Path, p.Found)));

        // One bay: its two sides are the only glue-ups.
        Assert.Equal(["glue/C1-L, glue/C1-R, or no record", "a task of the timetable, or no record"], problems.Select(p => p.Accepted));
    }

    [Fact]
    public void A_station_loaded_before_now_stays_taken_until_it_is_unloaded()
    {
        var (casework, cutting) = Splices(2, 2500);
        var job = Job(1, Stations(3200));
        var glued = Monday.ToDateTime(new(8, 45));
        var records = new[] { "splice-setup/tenons/panel", "splice-prepare/tenons/panel/lot1", "glue/A" }.Select((id, i) => new WorkRecord(id, glued.AddMinutes((i * 5) - 10), glued.AddMinutes(i * 5) - TimeSpan.FromMinutes(5))).ToValueList();
        var outcome = TimelineStage.Schedule(job, casework, cutting, new(glued.AddMinutes(15), records), Effort, null, TestContext.Current.CancellationToken);
        Assert.True(outcome.Succeeded);

        // A was done at 8:50, so it comes off at 9:50 to 9:54, and only then is the bench free for B.
        Assert.Equal(Monday.ToDateTime(new(9, 50)), outcome.Value.Tasks.Single(t => t.Id == "unclamp/A").Start);
        Assert.Equal(Monday.ToDateTime(new(9, 54)), outcome.Value.Tasks.Single(t => t.Id == "glue/B").Start);
    }

    private static Job Bookcases(int bays, int people)
    {
        var run = SampleRuns.Plain(UnitSystem.Millimetres, Mm(800 * bays), Mm(2500), Mm(300)) with { Division = new() { Bays = bays, BaysPerCase = 1 } };
        var sample = SampleRuns.Job(UnitSystem.Millimetres, run);
        var shop = Job(people, Stations(3200, 3200)).Shop;
        return sample with { StartOn = Monday, Shop = shop with { Finish = FinishSystem.WaterBasedPaint } };
    }

    private static Schedule Make(Job job, ShopProgress? progress = null)
    {
        var outcome = Run(job, progress);
        Assert.True(outcome.Succeeded, string.Join('\n', outcome.Problems));
        return outcome.Value;
    }

    private static Outcome<Schedule> Run(Job job, ShopProgress? progress = null)
    {
        var laid = LayoutStage.Lay(job);
        Assert.True(laid.Succeeded, string.Join('\n', laid.Problems));
        return TimelineStage.Schedule(job, laid.Value, Cut(laid.Value), progress, Effort, null, TestContext.Current.CancellationToken);
    }
}

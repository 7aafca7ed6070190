using Casewright.Engine;
using Casewright.Engine.Schemes;
using Casewright.Engine.Cutting.Planning;
using Casewright.Model.Files;
using Casewright.Model.Plans;
using Casewright.Papers.Documents;
using Casewright.Papers.Documents.Offers;
using Casewright.Papers.Documents.Timetable;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>The papers that promise: timetable, glue-ups, day sheets, finish, quote, ways to build it, change order.</summary>
public class PromisePaperTests
{
    private static readonly Lazy<Plan> Alcove = new(() => Planned("alcove-pair"));
    private static readonly Lazy<Plan> Wall = new(() => Planned("display-wall"));

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Client_papers_are_clean_on_both_papers(PaperSize size)
    {
        foreach (var plan in new[] { Alcove.Value, Wall.Value, Compared(Wall.Value) })
        {
            AssertClean(ClientPapers.Of(plan, new(size, new(2026, 1, 1))).Pages, size);
            var other = plan with { Job = plan.Job with { Revision = plan.Job.Revision + 1, FinishBy = null, Runs = [plan.Job.Runs[0] with { Depth = plan.Job.Runs[0].Depth + plan.Job.Shop.Saw.Kerf }, .. plan.Job.Runs.Skip(1)] } };
            AssertClean(ClientPapers.OfChange(plan, other, "The client wants the shelves a little deeper than first drawn.", new(size, new(2026, 1, 1))).Pages, size);
        }
    }

    [Fact]
    public void The_chart_for_screens_is_clean_and_shows_every_task()
    {
        foreach (var plan in new[] { Alcove.Value, Wall.Value })
        {
            var chart = TimetableChart.Drawing(plan)!;
            Assert.Empty(LayoutCheck.Faults(chart));
            var shown = chart.Groups.Select(g => g.Id).ToList();
            Assert.All(plan.Schedule!.Tasks, task => Assert.Contains(shown, id => id.Contains("/" + task.Id + "/", StringComparison.Ordinal) || id.EndsWith("/" + task.Id, StringComparison.Ordinal)));
        }
    }

    // A day sheet is what people work from: every stretch of every task stands on the sheet of its day with its clock times.
    [Fact]
    public void Every_stretch_of_work_is_on_the_sheet_of_its_day()
    {
        var plan = Wall.Value;
        var index = new TimetableIndex(plan.Job, plan.Schedule!);
        var pages = DaySheets.Pages(plan, new(PaperSize.Letter, new(2026, 1, 1)));
        foreach (var day in index.Days)
        {
            var title = day.ToString("dddd d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture);
            var texts = pages.Where(p => p.Heading!.Title == title).SelectMany(p => new Scene(300, 300, "", "", p.Body).Texts).Select(t => t.Text).ToList();
            foreach (var task in index.Tasks.Where(t => t.Spans.Any(s => DateOnly.FromDateTime(s.From) == day)))
            {
                Assert.Contains(index.NumberOf(task).ToString(System.Globalization.CultureInfo.InvariantCulture), texts);
                Assert.Contains(TimetableIndex.Clock(task.Spans.First(s => DateOnly.FromDateTime(s.From) == day).From), texts);
                Assert.Contains(TimetableIndex.Clock(task.Spans.Last(s => DateOnly.FromDateTime(s.From) == day).To), texts);
            }
        }
    }

    [Fact]
    public void Every_glue_up_stands_on_the_sheet_of_its_station_with_in_and_out()
    {
        var plan = Wall.Value;
        var glued = plan.Schedule!.Tasks.Where(t => t.Station is not null).ToList();
        Assert.NotEmpty(glued);
        var pages = GlueUpTimetable.Pages(plan, new(PaperSize.Letter, new(2026, 1, 1)));
        foreach (var task in glued)
        {
            var station = plan.Job.Shop.Stations.Single(s => s.Id == task.Station);
            var texts = pages.Where(p => p.Heading!.Title.EndsWith(station.Name, StringComparison.Ordinal)).SelectMany(p => new Scene(300, 300, "", "", p.Body).Texts).Select(t => t.Text).ToList();
            Assert.Contains(TimetableIndex.Clock(task.Start), texts);
            Assert.Contains(texts, t => t.Contains(TimetableIndex.Clock(task.StationUntil!.Value), StringComparison.Ordinal));
            Assert.Contains(texts, t => t.Contains(task.Parts[0], StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_quote_tells_the_client_where_lines_run_and_nothing_of_the_shops_own_costs()
    {
        var plan = Wall.Value;
        var texts = string.Join(' ', Quote.Pages(plan, new(PaperSize.Letter, new(2026, 1, 1))).SelectMany(p => new Scene(300, 300, "", "", p.Body).Texts).Select(t => t.Text));
        Assert.Contains("joint line", texts, StringComparison.Ordinal);
        Assert.Contains("12 uprights", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("mark-up", texts, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("margin", texts, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("contingency", texts, StringComparison.OrdinalIgnoreCase);

        // 20 April and 30 days: 20 May.
        Assert.Contains("20 May 2026", Quote.Pages(plan, new(PaperSize.Letter, new(2026, 1, 1)))[0].Heading!.Subtitle, StringComparison.Ordinal);
    }

    // Order on Monday 27 April; crown takes eight working days.
    [Fact]
    public void The_buying_list_says_when_to_order()
    {
        var lines = BuyingList.Lines(Wall.Value);
        foreach (var line in lines.Where(l => l.Stock.Length > 0 && l.Buy > 0))
        {
            var needed = Wall.Value.Schedule!.Orders.Single(o => o.Stock == line.Stock).NeededOn;
            Assert.Equal(needed, Wall.Value.Job.Shop.Hours.WorkingDayAfter(line.OrderBy!.Value, line.LeadDays!.Value));
        }

        // Four pins a shelf, four loose shelves in each of six bays.
        Assert.Equal(4 * 4 * 6, lines.Single(l => l.Name == "shelf pins").Buy);
    }

    [Fact]
    public void A_change_order_lists_every_field_that_differs()
    {
        var job = Alcove.Value.Job;
        var run = job.Runs[1];
        var changed = job with
        {
            FinishBy = job.FinishBy!.Value.AddDays(7),
            Runs = [job.Runs[0], run with { Base = run.Base with { Height = run.Base.Height + job.Shop.Saw.Kerf } }],
            Shop = job.Shop with { HourlyRate = 50 },
        };
        Assert.Equal(
            [("finish by", "2026-04-02", "2026-04-09"), ("runs, right, base, height", "100 mm", "103 mm"), ("shop, hourly rate", "48.00", "50")],
            JobChanges.Between(job, changed).Select(c => (c.Where, c.Old, c.New)));
        Assert.Empty(JobChanges.Between(job, job));
    }

    private static void AssertClean(IEnumerable<Page> pages, PaperSize size) => Assert.All(pages, page =>
    {
        var faults = LayoutCheck.Faults(page.Scene, new PageFormat(size, page.Scene.Width > page.Scene.Height).Printed);
        Assert.True(faults is [], $"{size} {page.Document} {page.Number}: {string.Join("; ", faults.Take(4))}");
    });

    private static Plan Compared(Plan plan) => plan with { Schemes = SchemeStage.Compare(plan.Job, PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken).Value!.Schemes };

    private static Plan Planned(string example)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Casewright.slnx")))
            folder = folder.Parent;
        var job = JobFile.Read(File.ReadAllText(Path.Combine(folder!.FullName, "examples", example + ".json")));
        return Planner.Plan(job.Value!, effort: PlanningEffort.Quick).Plan!;
    }
}

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

    // By the prices of the job: a tenon 0.40, a connector 1.90; 5.2 litres of sealer are six to buy, at 17.00. Nothing is bought twice.
    [Fact]
    public void What_is_bought_comes_to_its_number_times_its_price()
    {
        var lines = BuyingList.Lines(Wall.Value);
        var tenons = Wall.Value.Cutting.Splices.Sum(s => s.Tenons.Count);
        var connectors = Wall.Value.Cutting.Splices.Sum(s => s.Connectors.Count);
        Assert.Equal(tenons * 0.40m, lines.Where(l => l.Name == "loose tenon").Sum(l => l.Cost));
        Assert.Equal(connectors * 1.90m, lines.Where(l => l.Name == "draw connector").Sum(l => l.Cost));
        Assert.Equal((6, 102m), lines.Where(l => l.Name == "sealer, litres").Select(l => (l.Buy, l.Cost!.Value)).Single());
        Assert.All(lines.Where(l => l.Price is not null), l => Assert.Equal(l.Buy * l.Price, l.Cost));

        var doors = Planned("dining-dresser");
        var hinges = BuyingList.Lines(doors).Where(l => l.Name.StartsWith("concealed hinge", StringComparison.Ordinal)).ToList();
        Assert.Equal(doors.Estimate!.Lines.Single(l => l.Name.StartsWith("concealed hinges", StringComparison.Ordinal)).Quantity, Assert.Single(hinges).Buy);
    }

    // Without longer sheets on offer the mix is the spliced way again, and an alcove in which nothing outruns the sheet has one way only.
    [Fact]
    public void A_client_is_asked_to_choose_only_between_ways_that_differ()
    {
        var settings = new PaperSettings(PaperSize.Letter, new(2026, 1, 1));
        var texts = Texts(SchemePage.Pages(Compared(Wall.Value), settings));
        Assert.Contains("Stacked", texts);
        Assert.Contains("Spliced", texts);
        Assert.DoesNotContain("Mixed", texts);
        Assert.Empty(SchemePage.Pages(Compared(Alcove.Value), settings));
    }

    // ISO 4217: the yen has no smaller coin. 3310 before tax and 20 % of it, whatever the currency.
    [Theory]
    [InlineData("GBP", "£3,972.00", "662.00")]
    [InlineData("EUR", "€3,972.00", "662.00")]
    [InlineData("USD", "$3,972.00", "662.00")]
    [InlineData("JPY", "JPY\u00a03,972", "662")]
    public void A_quote_is_written_in_the_places_and_the_sign_of_its_currency(string currency, string gross, string tax)
    {
        var plan = Alcove.Value;
        plan = plan with { Job = plan.Job with { Currency = currency }, Estimate = plan.Estimate! with { Currency = currency, Net = 3310, Tax = 662, Gross = 3972, Payments = [new("now", 1, 3972)] } };
        var texts = Texts(Quote.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))));
        Assert.Contains(gross, texts);
        Assert.Contains(tax, texts);
        Assert.Contains(currency, texts);
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

    private static List<string> Texts(IEnumerable<PageDraft> pages) => [.. pages.SelectMany(p => new Scene(300, 300, "", "", p.Body).Texts).Select(t => t.Text)];

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

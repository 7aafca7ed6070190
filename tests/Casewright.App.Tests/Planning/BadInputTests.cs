using System.Text;
using Casewright.Engine;
using Casewright.Engine.Cutting.Planning;
using Casewright.Engine.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Files;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;

namespace Casewright.App.Tests.Planning;

/// <summary>Jobs that cannot be built, or only just: each ends in a plan or in an error that names the place and what would mend it.</summary>
public sealed class BadInputTests
{
    private static Job Starter { get; } = JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!;

    [Fact]
    public void A_wall_narrower_than_its_fillers_is_named_at_its_path()
    {
        var job = Starter with { Walls = [Starter.Walls[0] with { Width = Length.FromMillimetres(60) }] };

        var result = Plan(job);

        Assert.Equal(PlanningEnd.JobWrong, result.End);
        Assert.All(result.Problems, p => Assert.NotEmpty(p.Path));
        Assert.Contains(result.Problems, p => p.Path.StartsWith("runs[0]", StringComparison.Ordinal) || p.Path.StartsWith("walls[0]", StringComparison.Ordinal));
    }

    [Fact]
    public void Shelves_that_leave_no_room_between_them_are_refused() => Refused(InRun(r => r with
    {
        Tiers = [new TierDesign { Interior = new Interior { FixedAt = [Length.FromMillimetres(900), Length.FromMillimetres(905)] } }],
    }), "runs[0]");

    [Fact]
    public void A_shelf_above_the_top_is_refused() => Refused(InRun(r => r with
    {
        Tiers = [new TierDesign { Interior = new Interior { FixedAt = [Length.FromMillimetres(9000)] } }],
    }), "runs[0]");

    [Fact]
    public void A_part_wider_than_any_sheet_is_a_clear_stop_unless_edge_joints_are_allowed()
    {
        var deep = InRun(r => r with { Depth = Length.FromMillimetres(1300), Nosing = null, Back = r.Back });

        var refused = Plan(deep);

        Assert.NotEqual(PlanningEnd.Planned, refused.End);
        Assert.NotEqual(PlanningEnd.NotVerified, refused.End);
        Assert.All(refused.Problems, p => Assert.True(p.Message.Length > 0 && p.Accepted.Length > 0, p.ToString()));
    }

    [Fact]
    public void A_material_without_any_stock_says_which_and_where_to_add_it()
    {
        var sheet = Starter.Stock.Sheets.First(s => s.Material == Starter.Runs[0].Material);
        var job = Starter with { Stock = Starter.Stock with { Sheets = Starter.Stock.Sheets.Where(s => s.Material != sheet.Material).ToValueList() } };

        var result = Plan(job);

        Assert.NotEqual(PlanningEnd.Planned, result.End);
        Assert.Contains(result.Problems, p => p.ToString().Contains("stock", StringComparison.Ordinal));
    }

    [Fact]
    public void A_joint_forced_into_a_fixed_shelf_is_refused_with_the_heights_that_serve()
    {
        // The shelf's dado itself: trade rule "never nearer than half a tenon to a dado edge" (common practice, no source).
        var job = InRun(r => r with
        {
            Head = new HeadDesign { Height = Length.FromMillimetres(2700) },
            Tiers = [new TierDesign { Interior = new Interior { FixedAt = [Length.FromMillimetres(1900)] } }],
            Splices = r.Splices with { Height = Length.FromMillimetres(1895) },
        }) with
        { Walls = [Starter.Walls[0] with { Height = Length.FromMillimetres(2800) }] };

        var result = Plan(job);

        Assert.True(result.Plan is null, "The joint was allowed inside the dado.");
        Assert.Contains(result.Problems, p => p.Path.Contains("splices", StringComparison.Ordinal) && p.Accepted.Length > 0);
    }

    [Fact]
    public void Kerf_zero_is_planned_and_needs_no_more_sheets_than_a_real_kerf()
    {
        var sheared = Starter with { Shop = Starter.Shop with { Saw = Starter.Shop.Saw with { Kerf = Length.Zero } } };

        var plain = Plan(Starter).Plan!;
        var without = Plan(sheared).Plan!;

        Assert.True(without.Cutting.Bounds.SheetsLowerBound <= plain.Cutting.Bounds.Sheets);
    }

    [Fact]
    public void A_thousand_bays_are_laid_out()
    {
        var job = InRun(r => r with { Columns = [], Division = new BayDivision { Bays = 1000 } }) with
        {
            Walls = [Starter.Walls[0] with { Width = Length.FromMillimetres(800_000) }],
        };

        var laid = LayoutStage.Lay(job);

        Assert.True(laid.Succeeded, string.Join("; ", laid.Problems.Take(3)));
        Assert.Equal(1000, laid.Value.Cases.Count);
        Assert.Equal(laid.Value.Parts.Count, laid.Value.Parts.Select(p => p.Id).Distinct().Count());
    }

    [Theory]
    [InlineData("\"price\": -1.00", "price")]
    [InlineData("\"length\": 2440", "length")]
    [InlineData("\"length\": \"2440 furlong\"", "length")]
    public void Wrong_figures_of_a_sheet_are_named_with_what_is_accepted(string field, string name)
    {
        var text = JobFile.Write(Starter);
        var at = text.IndexOf($"\"{name}\"", text.IndexOf("\"sheets\"", StringComparison.Ordinal), StringComparison.Ordinal);
        var end = text.IndexOfAny([',', '\n'], at);
        var wrong = text[..at] + field + text[end..];

        var problem = Assert.Single(JobFile.Read(wrong).Problems);

        Assert.StartsWith("stock.sheets[0]." + name, problem.Path, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Found);
        Assert.NotEmpty(problem.Accepted);
    }

    [Fact]
    public void A_file_of_fifty_megabytes_is_refused_with_the_limit()
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(new string(' ', 50 * 1024 * 1024)));

        Assert.NotEmpty(JobFile.Read(stream).Problems[0].Accepted);
    }

    [Fact]
    public void A_byte_order_mark_and_carriage_returns_do_not_matter()
    {
        var text = JobFile.Write(Starter);
        byte[] marked = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text.Replace("\n", "\r\n"))];

        Assert.Equal(Starter, JobFile.Read(new MemoryStream(marked)).Value);
    }

    private static PlanningResult Plan(Job job) => Planner.Plan(job, effort: PlanningEffort.Quick, cancellation: TestContext.Current.CancellationToken);

    private static Job InRun(Func<Run, Run> change) => Starter with { Runs = [change(Starter.Runs[0]), .. Starter.Runs.Skip(1)] };

    private static void Refused(Job job, string path)
    {
        var result = Plan(job);
        Assert.Equal(PlanningEnd.JobWrong, result.End);
        Assert.Contains(result.Problems, p => p.Path.StartsWith(path, StringComparison.Ordinal));
    }
}

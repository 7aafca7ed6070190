using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Surveying;
using Casewright.Engine.Tests.Layout;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using CsCheck;
using Google.OrTools.LinearSolver;
using static Casewright.Engine.Tests.Surveying.CrookedAlcove;

namespace Casewright.Engine.Tests.Surveying;

/// <summary>Readings that contradict each other, readings that cannot be, and readings that are missing.</summary>
public sealed class SurveyReadingTests
{
    private static ValueList<Finding> Contradictions(WallSurvey survey) =>
        Read(Job(survey)).Survey.Findings.Where(f => f.Check == "survey-contradiction").ToValueList();

    [Fact]
    public void One_width_that_does_not_fit_the_plumb_is_named()
    {
        // 1200 up at the wall 1820 was written for 1806: it gives 1820 at the foot, the others 1806 to 1806.39.
        var found = Assert.Single(Contradictions(Metric with { Widths = [Metric.Widths[0], Up(1200, 1820), Metric.Widths[2]], Diagonals = [] }));
        Assert.Equal("walls[0].survey.widths[1].back", found.Subject);
        Assert.Equal(14, found.Value!.Value, 0.01);
    }

    [Fact]
    public void Two_widths_that_disagree_are_both_named()
    {
        var found = Assert.Single(Contradictions(Metric with { FrontLine = null, Floor = [At(0, 1000)], Ceiling = [At(0, 1490)], Widths = [Up(0, 1806), Up(2400, 1795)], Diagonals = [], LeftEnd = Bare(Metric.LeftEnd!), RightEnd = Bare(Metric.RightEnd!) }));
        Assert.Equal("walls[0].survey.widths", found.Subject);
        Assert.Contains("2400 mm up", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_false_diagonal_is_named_with_what_it_should_be()
    {
        // √(1811.83² + 2400²) = 3007.1; the right end is 5.83 away at 2400.
        var found = Assert.Single(Contradictions(Metric with { Diagonals = [new() { LeftHeight = Mm(0), RightHeight = Mm(2400), Distance = Mm(3027) }] }));
        Assert.Equal("walls[0].survey.diagonals[0]", found.Subject);
        Assert.Contains("3007.1 mm", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_floor_above_the_highest_point_is_named()
    {
        var found = Assert.Single(Contradictions(Metric with { Floor = [.. Metric.Floor.Take(3), At(1800, 990)] }));
        Assert.Equal("walls[0].survey.floor", found.Subject);
        Assert.Contains("10 mm", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_width_below_the_readings_is_told_and_one_above_them_is_refused()
    {
        var job = Job();
        var below = job with { Walls = [job.Walls[0] with { Width = Mm(1790) }] };
        Assert.Contains(Read(below).Survey.Findings, f => f.Check == "survey-contradiction" && f.Value == -10);
        Laid.ProblemAt("walls[0].width", job with { Walls = [job.Walls[0] with { Width = Mm(1810) }] });
        Laid.ProblemAt("walls[0].height", job with { Walls = [job.Walls[0] with { Height = Mm(2500) }] });
    }

    [Fact]
    public void One_corner_measured_from_both_walls_must_read_alike()
    {
        var left = new Wall { Id = "east", Name = "east wall", Width = Mm(2000), Height = Mm(2490), Survey = new() { Datum = Mm(1000), RightEnd = new() { Wall = "north", Corner = new() { Degrees = 88 } } } };
        var job = Job(Metric with { LeftEnd = Metric.LeftEnd! with { Wall = "east" } });
        var found = SurveyStage.Read(job with { Walls = [job.Walls[0], left] }, Laid.Of(job).Casework).Findings;
        Assert.Contains(found, f => f.Subject == "walls[0].survey.leftEnd.corner");
    }

    [Fact]
    public void What_cannot_be_is_refused_at_its_place()
    {
        void At(string path, WallSurvey survey) => Laid.ProblemAt("walls[0].survey." + path, Job(survey));
        At("widths", Metric with { Widths = [], Diagonals = [] });
        At("ceiling", Metric with { Ceiling = [] });
        At("widths", Metric with { Widths = [Up(0, 5)] });
        At("frontLine", Metric with { FrontLine = null });
        At("floor[1].at", Metric with { Floor = [CrookedAlcove.At(300, 1004), CrookedAlcove.At(300, 1005)] });
        At("floor[0].at", Metric with { Floor = [CrookedAlcove.At(2600, 1004)] });
        At("leftEnd.plumb[1].height", Metric with { LeftEnd = Metric.LeftEnd! with { Plumb = [Up(0, 40), Up(0, 41)] } });
        At("rightEnd.corner", Metric with { RightEnd = Metric.RightEnd! with { Corner = new() { Degrees = 20 } } });
        At("rightEnd.corner", Metric with { RightEnd = Metric.RightEnd! with { Corner = new() { AlongWall = Mm(600), AlongOther = Mm(800), Across = Mm(1500) } } });
        At("leftEnd.wall", Metric with { LeftEnd = Metric.LeftEnd! with { Wall = "north" } });
        At("studs[1]", Metric with { Studs = [Mm(250), Mm(250)] });
    }

    [Fact]
    public void Openings_that_overlap_and_features_off_the_wall_are_refused()
    {
        var window = new WallFeature { Name = "window", Kind = FeatureKind.Window, X = Mm(200), Y = Mm(900), Width = Mm(800), Height = Mm(1200), Casing = Mm(70) };
        Laid.ProblemAt("walls[0].survey.features[1]", Job(Metric with { Features = [window, window with { Name = "second window", X = Mm(950) }] }));
        Laid.ProblemAt("walls[0].survey.features[0].x", Job(Metric with { Features = [window with { X = Mm(1300) }] }));
        Laid.ProblemAt("walls[0].survey.features[0].y", Job(Metric with { Features = [window with { Y = Mm(1600) }] }));
    }

    [Fact]
    public void A_run_through_a_door_is_refused_and_one_over_it_is_not()
    {
        var door = new WallFeature { Name = "pantry door", Kind = FeatureKind.Door, X = Mm(500), Y = Mm(0), Width = Mm(800), Height = Mm(2000), Casing = Mm(70) };
        var problem = Laid.ProblemAt("runs[0]", Job(Metric with { Features = [door] }));
        Assert.Contains("pantry door", problem.Message, StringComparison.Ordinal);
        Assert.Contains("2070 mm", problem.Accepted, StringComparison.Ordinal);

        // A low door hatch under a base of 100 is bridged.
        Assert.NotNull(Laid.Of(Job(Metric with { Features = [door with { Height = Mm(60), Casing = Mm(40) }] })));
    }

    [Fact]
    public void A_wall_shorter_than_its_parts_is_refused() =>
        Laid.ProblemAt("runs[0].width", Job(change: r => r with { Width = Mm(1801) }));

    [Fact]
    public void A_case_before_a_window_stops_the_job_unless_it_is_moved()
    {
        var radiator = new WallFeature { Name = "radiator", Kind = FeatureKind.Radiator, X = Mm(500), Y = Mm(200), Width = Mm(600), Height = Mm(500) };
        Assert.Contains(Read(Job(Metric with { Features = [radiator] })).Survey.Findings, f => f.Check == "survey-openings" && f.Severity == Severity.Stop);
        Assert.DoesNotContain(Read(Job(Metric with { Features = [radiator with { Moves = true }] })).Survey.Findings, f => f.Check == "survey-openings");
    }

    [Fact]
    public void Missing_readings_are_listed_with_what_they_decide()
    {
        // Nothing but one width and one ceiling: floor, second ceiling, three widths, front, diagonal, both plumbs and corners, bow, lean, structure, studs, features.
        var bare = new WallSurvey { Datum = Mm(1000), Ceiling = [At(0, 1490)], Widths = [Up(0, 1806)] };
        var missing = Read(Job(bare)).Survey.Missing;
        Assert.Equal(14, missing.Count);
        Assert.Contains(missing, m => m.What.Contains("left end", StringComparison.Ordinal) && m.Decides.Contains("left filler", StringComparison.Ordinal));
        Assert.All(missing, m => Assert.NotEmpty(m.Decides));

        // The full survey lacks nothing.
        Assert.Empty(Read(Job()).Survey.Missing);
        Assert.Equal("the whole survey", Assert.Single(Read(SampleRuns.Job(UnitSystem.Millimetres, SampleRuns.Plain(UnitSystem.Millimetres, Mm(900), Mm(2000), Mm(300)))).Survey.Missing).What);
    }

    /// <summary>min e, −e ≤ y − (s x + c) ≤ e, by a general solver (GLOP), on random readings.</summary>
    [Fact]
    public void The_best_straight_line_is_the_optimum_of_the_linear_programme() =>
        Gen.Double[-8, 8].Array[2, 12].Sample(
            heights =>
            {
                var readings = heights.Select((y, i) => (X: i * 300.0, Y: y)).ToList();
                using var solver = Solver.CreateSolver("GLOP");
                var (slope, level, most) = (solver.MakeNumVar(-1, 1, "s"), solver.MakeNumVar(-100, 100, "c"), solver.MakeNumVar(0, 100, "e"));
                foreach (var (x, y) in readings)
                {
                    solver.Add(y - (slope * x) - level <= most);
                    solver.Add((slope * x) + level - y <= most);
                }

                solver.Minimize(most);
                Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
                Assert.Equal(solver.Objective().Value(), MinimaxLine.Through(readings).Deviation, 1e-6);
            },
            iter: 60,
            threads: 1);

    private static WallEnd Bare(WallEnd end) => new() { Plumb = [.. end.Plumb.Select(r => r with { Front = null })] };
}

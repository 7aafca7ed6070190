using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;
using static Casewright.Engine.Tests.Surveying.CrookedAlcove;

namespace Casewright.Engine.Tests.Surveying;

/// <summary>Every output of the survey worked out by hand, in millimetres and in inches.</summary>
public sealed class SurveyWorkedExampleTests
{
    private static void Near(decimal expected, Length found) => Assert.Equal((double)expected, (double)found.Millimetres, 0.011);

    [Fact]
    public void The_opening_is_the_plumb_box_between_the_ends_at_all_heights_and_depths()
    {
        // Left end: 40 − 34 = 6 in at the top, at the wall; 5 at the front. Right end: nowhere in. 1806 − 6 − 0 = 1800.
        var opening = Metric.Opening!;
        Assert.Equal((Mm(1806), Mm(6), Mm(0), Mm(1800)), (opening.Foot, opening.LeftIn, opening.RightIn, opening.Width));

        // Lowest ceiling reading 1490 up from a line 1000 above the high point.
        Assert.Equal(Mm(2490), Metric.LowestCeiling);
        var wall = Job().Walls[0];
        Assert.Equal((Mm(1800), Mm(2490)), (wall.Width, wall.Height));

        // 49.25 − 0.25 in at the left top − 0 = 49; the upper width gives 49 + 0.25 = 49.25 at the foot too.
        Assert.Equal(In(49), Inches.Opening!.Width);
        Assert.Equal(In(96.25m), Inches.LowestCeiling);
    }

    [Fact]
    public void A_corner_off_square_moves_the_front_of_an_end()
    {
        // 350 / tan 91° = −6.1093.
        Near(-6.11m, new CornerReading { Degrees = 91 }.ComesIn(Mm(350))!.Value);

        // Legs 600 and 800 with 1000 across are square; with 1010 across cos = (360000 + 640000 − 1020100)/960000 = −0.0209375, 91.2°.
        Assert.Equal(90, new CornerReading { AlongWall = Mm(600), AlongOther = Mm(800), Across = Mm(1000) }.Angle!.Value, 1e-9);
        Assert.Equal(91.19971, new CornerReading { AlongWall = Mm(600), AlongOther = Mm(800), Across = Mm(1010) }.Angle!.Value, 1e-4);

        // 3, 4 and 5 ft are square, in inches as in anything else.
        Assert.Equal(90, new CornerReading { AlongWall = In(36), AlongOther = In(48), Across = In(60) }.Angle!.Value, 1e-9);
    }

    [Fact]
    public void The_level_line_stands_on_the_highest_point()
    {
        var level = Read(Job()).Survey.Walls[0].Level!;
        Assert.Equal((Mm(600), ReadingLine.Back, Mm(0), Mm(12)), (level.HighAt, level.HighLine, level.High, level.Fall));
        var inches = Read(InchJob()).Survey.Walls[0].Level!;
        Assert.Equal((In(24), In(0), In(0.625m)), (inches.HighAt, inches.High, inches.Fall));
    }

    [Fact]
    public void Base_heights_and_shims_at_every_station()
    {
        // B = 100, 10 for shims. At 600 the floor is highest: 100 and 10. At 1800 in front it lies 12 below: 112 and 22.
        var stations = Read(Job()).Survey.Runs[0].Base;
        Assert.Equal(8, stations.Count);
        Assert.Equal(new(Mm(600), ReadingLine.Back, Mm(0), Mm(100), Mm(10), Measured: true), stations[2]);
        Assert.Equal(new(Mm(1800), ReadingLine.Front, Mm(12), Mm(112), Mm(22), Measured: true), stations[7]);

        // B = 4, 3/8 for shims; at 48 in front 5/8 below: 4 5/8 and 1. The run ends at 49, past the last station: the same there.
        var inches = Read(InchJob()).Survey.Runs[0].Base;
        Assert.Equal(new(In(48), ReadingLine.Front, In(0.625m), In(4.625m), In(1), Measured: true), inches[5]);
        Assert.Equal(new(In(49), ReadingLine.Front, In(0.625m), In(4.625m), In(1), Measured: false), inches[7]);
    }

    [Fact]
    public void The_filler_is_scribed_to_the_lean_of_its_wall()
    {
        var (laid, survey) = Read(Job());
        var left = survey.Runs[0].Fillers[0];

        // Innermost 6 at the back; at the front line the end is 0, 1, 3, 5 in at 0, 1000, 2000, 2480: the gap is 30 + 6 − that.
        // The blank: 30 + 6 + 10 left on for scribing. Its foot is on the base, at 100: 0.1 in, gap 35.9, 10.1 to take off.
        Assert.Equal(Mm(46), laid["A-XL"].Width);
        Assert.Equal("A-XL", left.Part);
        Near(35.9m, left.Scribe.Rows[0].Stands);
        Near(10.1m, left.Scribe.Rows[0].TakeOff);
        var atOneMetre = left.Scribe.Rows.Single(r => r.At == Mm(900));
        Assert.Equal((Mm(35), Mm(11), true), (atOneMetre.Stands, atOneMetre.TakeOff, atOneMetre.Measured));
        Assert.Equal(Mm(35.9m), left.WidestGap);

        // At the top, 2300: 3 + 2 × 300/480 = 4.25 in, gap 31.75.
        Near(31.75m, left.LeastGap);

        // Right: 6.11 away at the front foot and 6 more at the top: 30 + 12.11 + 10 = 52.11, to 0.1.
        Assert.Equal(Mm(52.1m), laid["A-XR"].Width);
        Near(30 + 6.11m + 0.1m, survey.Runs[0].Fillers[1].Scribe.Rows[0].Stands);
        Assert.Equal(Mm(30), survey.Runs[0].EvenFiller);

        // Inches: blank 1 1/4 + 1/4 + 3/8. At 44 up (40 on the blank) the end is 1/4 × 44/80 = 0.1375 in: gap 1.5 − 0.1375.
        var (inchLaid, inches) = Read(InchJob());
        Assert.Equal(In(1.875m), inchLaid["A-XL"].Width);
        Near(1.3625m * 25.4m, inches.Runs[0].Fillers[0].Scribe.Rows.Single(r => r.At == In(40)).Stands);
    }

    [Fact]
    public void The_toe_face_covers_the_fall_of_the_floor_and_is_scribed_to_it()
    {
        var (laid, survey) = Read(Job());

        // The toe face stands 300 out: below the floor's high point 4 + 2 × 300/350 = 5.714 at 0, 2.571 at 600, 8.714 at 1200, 11.714 at 1800.
        // Blank 100 + 11.714 + 10 = 121.714, to 0.1.
        Assert.Equal(Mm(121.7m), laid["A-T1"].Width);
        var toe = survey.Runs[0].Scribes.Single(s => s.Part == "A-T1");
        var low = laid["A-T1"].Place.Origin.X;
        Near(102.571m, toe.Rows.Single(r => r.At == Mm(600) - low).Stands);
        Near(121.7m - 102.571m, toe.Rows.Single(r => r.At == Mm(600) - low).TakeOff);
        Assert.True(toe.Covers);

        // Inches: 12 out of 14: below 1/2 + 1/8 × 12/14 = 0.607 at the right: 4 + 0.607 + 3/8 = 4.982, to 1/32 = 4 31/32.
        Assert.Equal(In(4.96875m), Read(InchJob()).Laid["A-T1"].Width);
    }

    [Fact]
    public void An_end_panel_is_scribed_to_bow_and_lean_of_the_wall_behind_it()
    {
        // Bow at x = 0: 20 − 14 = 6 behind the foremost point. Lean: 0 at the floor, 4 at 2400. Panel 350 deep.
        var (laid, survey) = Read(Job(change: r => r with { Left = new() { Kind = Model.Design.EndKind.Finished, Panel = "panel" } }));
        var panel = survey.Runs[0].Scribes.Single(s => s.Part == "A-EL");

        // The middle of the panel is 9 along: bow 6 × 891/900 = 5.94.
        Near(355.94m, panel.Rows[0].Stands);
        Near(355.94m + (4 * 2300m / 2400), panel.Rows[^1].Stands);

        // Blank: 350 + 6 + 4 × 2490/2490 (the last reading holds above 2400) + 10.
        Assert.Equal(Mm(370), laid["A-EL"].Width);
    }

    [Fact]
    public void Studs_behind_each_nailer_and_what_is_packed_out_there()
    {
        var studs = Read(Job()).Survey.Runs[0].Studs;
        var first = studs.First(s => s.Case == "C1");

        // C1 from 30 to 900, its nailer between the sides; studs at 250 and 650, of which a pipe takes the second.
        Assert.Equal([Mm(250)], first.Studs);
        Assert.Equal([Mm(650)], first.Kept);
        Assert.Equal([Mm(1050), Mm(1450)], studs.First(s => s.Case == "C2").Studs);

        // Gap at 250: bow 6 × 650/900 = 4.333; lean 4 × h/2400 at the nailer's middle, 2300 − 18 − 45 = 2237: 3.728.
        Near(4.333m + 3.728m, first.Gaps[0]);

        // Inches: cases from 1 1/4 to 24 1/2 and on to 47 3/4: stud 8 in the first (24 is in the side), 40 in the second.
        var inches = Read(InchJob()).Survey.Runs[0].Studs;
        Assert.Equal([In(8)], inches.First(s => s.Case == "C1").Studs);
        Assert.Equal([In(40)], inches.First(s => s.Case == "C2").Studs);
    }

    [Fact]
    public void The_envelope_at_every_height()
    {
        var rows = Read(Job()).Survey.Walls[0].Envelope;

        // At 2000 at the wall: left 5 in of 6: −1 from x = 0; right 5 away: 1806 − 6 + 5 = 1805. Behind: bow 6 at most, lean 4 × 2000/2400.
        var row = rows.Single(r => r.Height == Mm(2000) && r.Line == ReadingLine.Back);
        Assert.Equal((Mm(-1), Mm(1805), Mm(1806)), (row.Left, row.Right, row.Width));
        Near(6 + 3.333m, row.Behind);

        // At the floor in front: 6.11 wider on the right.
        Near(1806 + 6.11m, rows.Single(r => r.Height == Mm(0) && r.Line == ReadingLine.Front).Width);
    }

    [Fact]
    public void Readings_that_agree_contradict_nothing_and_blanks_cover_their_gaps()
    {
        Assert.DoesNotContain(Read(Job()).Survey.Findings, f => f.Check == "survey-contradiction");
        Assert.DoesNotContain(Read(InchJob()).Survey.Findings, f => f.Check == "survey-contradiction");
        Assert.All(Read(Job()).Survey.Findings.Where(f => f.Check == "scribe-blank"), f => Assert.Equal(Model.Findings.Severity.Pass, f.Severity));
    }
}

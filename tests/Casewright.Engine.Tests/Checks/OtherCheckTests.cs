using Casewright.Engine.Checks.Fitting;
using Casewright.Engine.Checks.Gluing;
using Casewright.Engine.Checks.Seasons;
using Casewright.Engine.Checks.Sheets;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using Casewright.Model.Stock;

namespace Casewright.Engine.Tests.Checks;

public class OtherCheckTests
{
    private static readonly SiteFacts Seasons = new() { RoomTemperature = 21.1, DriestHumidity = 30, DampestHumidity = 50 };

    private static Bookcase Job(Func<Job, Job> change) => new() { ChangeJob = change };

    private static Bookcase Shop(Func<Workshop, Workshop> change) => Job(j => j with { Shop = change(j.Shop) });

    [Fact]
    public void Board_is_not_for_damp_rooms()
    {
        Assert.Equal(Severity.Stop, Checked.SeverityBy<MaterialClimateCheck>(new Bookcase { Kind = MaterialKind.Mdf, Site = new() { Climate = Climate.Damp } }, "panel"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<MaterialClimateCheck>(new Bookcase { Site = new() { Climate = Climate.Damp } }, "panel"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<MaterialClimateCheck>(new Bookcase(), "panel"));
    }

    [Fact]
    public void Solid_wood_moves_as_the_handbook_says()
    {
        // 70 °F, 30 to 50 %: 6.2 to 9.2 % moisture (Wood Handbook table 4-2); red oak C 0.00369 (table 13-5); 63.5 mm: 0.70 mm.
        var bookcase = new Bookcase { Nosing = (19, 63.5m), Site = Seasons };
        var finding = Checked.By<SolidMovementCheck>(bookcase).Single();
        Assert.Equal(63.5 * 0.00369 * 3.0, finding.Value!.Value, 0.03);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.Caution, Checked.By<SolidMovementCheck>(bookcase with { Nosing = (19, 90) }).Single().Severity);
        Assert.Equal(Severity.NotChecked, Checked.By<SolidMovementCheck>(bookcase with { Site = new() }).Single().Severity);
    }

    [Fact]
    public void A_long_run_between_walls_moves()
    {
        // 0.0002 per 10 % of humidity (panel trade): 936 mm over 20 %: 0.37 mm; a run of 6 m 2.4 mm.
        Assert.Equal(936 * 0.0002 * 2, Checked.By<RunMovementCheck>(new Bookcase { Site = Seasons }, "R").Value!.Value, 1e-6);
        Assert.Equal(Severity.Caution, Checked.SeverityBy<RunMovementCheck>(new Bookcase { Site = Seasons, Width = 6000, Bays = 6 }, "R"));
    }

    [Fact]
    public void Stock_lies_before_it_is_cut()
    {
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<AcclimatisingCheck>(new Bookcase(), "job"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<AcclimatisingCheck>(new Bookcase { Site = new() { AcclimatisingDays = 2 } }, "job"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<AcclimatisingCheck>(new Bookcase { Site = new() { AcclimatisingDays = 3 } }, "job"));
    }

    [Fact]
    public void Cold_glue_stops()
    {
        // Below 10 °C stop; at 15 °C the 60 minutes become 90 (common practice, no source).
        Assert.Equal(Severity.Stop, Checked.SeverityBy<GlueTemperatureCheck>(Shop(s => s with { Temperature = 9.5 }), "job"));
        Assert.Contains("90 minutes", Checked.By<GlueTemperatureCheck>(Shop(s => s with { Temperature = 15 }), "job").Message, StringComparison.Ordinal);
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<GlueTemperatureCheck>(new Bookcase(), "job"));
    }

    [Fact]
    public void A_joint_that_takes_longer_than_the_glue_is_pointed_out()
    {
        var splice = Bookcase.TenonSplice("L", 1000);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<OpenTimeCheck>(new Bookcase { Splices = [splice] }, "L/1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<OpenTimeCheck>(Shop(s => s with { Glue = new() { OpenMinutes = 2 } }) with { Splices = [splice] }, "L/1"));
    }

    [Fact]
    public void Parts_over_the_sheet_need_a_joint()
    {
        // 2440 less 5 mm of trim at both ends: 2430.
        var bookcase = new Bookcase { Height = 2430 };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PartOverSheetCheck>(bookcase, "L"));
        var over = bookcase with { Height = 2431 };
        Assert.Equal(Severity.Stop, Checked.SeverityBy<PartOverSheetCheck>(over, "L"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PartOverSheetCheck>(over with { Splices = [Bookcase.TenonSplice("L", 1200)] }, "L"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<PartOverSheetCheck>(new Bookcase { Depth = 1211 }, "L"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<PartOverSheetCheck>(new Bookcase { SheetLength = null }, "L"));
    }

    [Fact]
    public void A_small_overrun_is_designed_away()
    {
        Assert.DoesNotContain(Checked.By<SmallOverrunCheck>(new Bookcase()), f => f.Subject == "L");
        Assert.Equal(Severity.Caution, Checked.SeverityBy<SmallOverrunCheck>(new Bookcase { Height = 2489 }, "L"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SmallOverrunCheck>(new Bookcase { Height = 2490 }, "L"));
        var finding = Checked.By<SmallOverrunCheck>(new Bookcase { Height = 2460 }, "L");
        Assert.Contains("30 mm", finding.Advice, StringComparison.Ordinal);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PartOverSheetCheck>(new Bookcase { Height = 2430 }, "L"));
    }

    [Fact]
    public void A_depth_just_over_a_rip_step_is_pointed_out()
    {
        // Usable 1210, kerf 3: four rips up to 300.25 (usual trade figure 300), three up to 401.3.
        Assert.Equal(Severity.Pass, Checked.SeverityBy<StripYieldCheck>(new Bookcase { Depth = 300 }, "L"));
        var finding = Checked.By<StripYieldCheck>(new Bookcase { Depth = 305 }, "L");
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains("gives 3; 300.2 mm would give 4", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<StripYieldCheck>(new Bookcase { Depth = 300.2m }, "L"));
    }

    [Fact]
    public void A_piece_across_the_grain_stops()
    {
        Piece piece = new() { Id = "L/a", Part = "L", Stock = "S1", FromBoard = false, Length = Bookcase.Mm(2400), Width = Bookcase.Mm(300), X = Length.Zero, Y = Length.Zero, From = Length.Zero, To = Bookcase.Mm(2400) };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<GrainDirectionCheck>(new Bookcase { Pieces = [piece] }, "L/a"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<GrainDirectionCheck>(new Bookcase { Pieces = [piece with { Rotated = true }] }, "L/a"));
    }

    private static SheetLayout Sheet(string stock) => new()
    {
        Id = "S1",
        Stock = stock,
        Material = "panel",
        Length = Bookcase.Mm(2440),
        Width = Bookcase.Mm(1220),
        Trim = Bookcase.Mm(5),
        Kerf = Bookcase.Mm(3),
        Cost = 80,
        Bought = true,
        Cuts = [],
    };

    [Fact]
    public void Late_sheets_stop()
    {
        // Friday 2 January 2026 to Wednesday 7: three working days.
        Assert.Equal(3, StockLeadCheck.WorkingDays(new(2026, 1, 2), new(2026, 1, 7)));
        Bookcase Needed(DateOnly by) => new() { Sheets = [Sheet("full")], ChangeJob = j => j with { Date = new(2026, 1, 2), StockNeededBy = by } };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<StockLeadCheck>(Needed(new(2026, 1, 7)), "full"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<StockLeadCheck>(Needed(new(2026, 1, 6)), "full"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<StockLeadCheck>(new Bookcase { Sheets = [Sheet("full")] }, "full"));
    }

    [Fact]
    public void Large_sheets_are_asked_for_their_grain()
    {
        Bookcase Of(decimal length, decimal width, bool across) => new()
        {
            Sheets = [Sheet("big")],
            ChangeJob = j => j with { Stock = j.Stock with { Sheets = [new() { Id = "big", Material = "panel", Length = Bookcase.Mm(length), Width = Bookcase.Mm(width), GrainAcross = across, Price = 1 }] } },
        };
        Assert.Equal(Severity.Caution, Checked.SeverityBy<LongSheetGrainCheck>(Of(3050, 1525, false), "big"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<LongSheetGrainCheck>(Of(1525, 3050, true), "big"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<LongSheetGrainCheck>(Of(2440, 1220, false), "big"));
    }

    [Fact]
    public void Stock_is_measured_before_it_is_cut()
    {
        Bookcase Unmeasured(string id) => Job(j => j with { Stock = j.Stock with { Materials = [.. j.Stock.Materials.Select(m => m.Id == id ? m with { Measured = null } : m)] } });
        Assert.Equal(Severity.Stop, Checked.SeverityBy<MeasuredThicknessCheck>(Unmeasured("panel"), "panel"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<MeasuredThicknessCheck>(Unmeasured("thin"), "thin"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<MeasuredThicknessCheck>(new Bookcase(), "panel"));
    }

    [Fact]
    public void Finish_takes_the_play_of_loose_shelves()
    {
        // 2 mm less four films of 0.1 leaves 1.6; four of 0.3 leave 0.8.
        Assert.Equal(Severity.Pass, Checked.SeverityBy<FinishFilmCheck>(new Bookcase(), "R"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<FinishFilmCheck>(new Bookcase { Limits = new() { FilmThickness = Bookcase.Mm(0.3m) } }, "R"));
    }

    [Fact]
    public void Nosings_are_taken_off_the_depth()
    {
        // The fixture glues the nosing in front of full-depth shelves, as someone would who forgot it.
        Assert.Equal(Severity.Caution, Checked.SeverityBy<EdgingDepthCheck>(new Bookcase { Nosing = (19, 38) }, "F1"));
        var mended = new Bookcase { Nosing = (19, 38), CaseDepth = 319 };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<EdgingDepthCheck>(mended, "F1"));
    }

    [Fact]
    public void Handed_sides_are_marked()
    {
        Assert.Equal(Severity.Stop, Checked.SeverityBy<HandedSidesCheck>(new Bookcase(), "L"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<HandedSidesCheck>(new Bookcase { Change = p => p.Id == "L" ? p with { Hand = Hand.Left } : p }, "L"));

        // One dado in the middle over the whole width is the same end for end.
        var middle = new Dado("F1", Face.Reference, Bookcase.Mm(1191), Bookcase.Mm(18), Bookcase.Mm(6), Length.Zero, Bookcase.Mm(300));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<HandedSidesCheck>(new Bookcase { Change = p => p.Id == "L" ? p with { Machining = [middle] } : p }, "L"));
    }

    [Fact]
    public void Runs_stay_inside_the_tightest_width()
    {
        Assert.Equal(Severity.Pass, Checked.SeverityBy<RunWidthCheck>(new Bookcase(), "R"));
        var tight = Job(j => j with { Walls = [j.Walls[0] with { Width = Bookcase.Mm(990) }] });
        Assert.Equal(Severity.Stop, Checked.SeverityBy<RunWidthCheck>(tight, "R"));
    }

    [Fact]
    public void Shelves_go_in_through_the_frame_or_not()
    {
        // A shelf of 900 × 18 through an opening 820 wide: tilted by φ it takes 900 cos φ + 18 sin φ. 30° gives 788, and 466 of height.
        Assert.True(ShelfThroughFrameCheck.Enters(900, 18, 820, 470));
        Assert.False(ShelfThroughFrameCheck.Enters(900, 18, 820, 380));
        Assert.True(ShelfThroughFrameCheck.Enters(800, 18, 820, 30));
        Assert.Empty(Checked.By<ShelfThroughFrameCheck>(new Bookcase()));
        Part Stile(Part part, decimal x) => part with
        {
            Role = PartRole.Stile,
            Length = Bookcase.Mm(2400),
            Width = Bookcase.Mm(50),
            Place = new("A", new(Bookcase.Mm(x), Length.Zero, Bookcase.Mm(300)), Axis.Up, Axis.Right, Axis.In),
        };
        var framed = new Bookcase { Change = p => p.Id switch { "S1" => Stile(p, 30), "S2" => Stile(p, 916), _ => p } };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<ShelfThroughFrameCheck>(framed, "S3"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<ShelfThroughFrameCheck>(framed with { FixedShelves = 11 }, "S3"));
    }

    [Fact]
    public void Only_the_signed_revision_is_printed()
    {
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<RevisionCheck>(new Bookcase(), "job"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<RevisionCheck>(Job(j => j with { Revision = 3, ApprovedRevision = 2 }), "job"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<RevisionCheck>(Job(j => j with { Revision = 2, ApprovedRevision = 2 }), "job"));
    }

    [Fact]
    public void Old_paint_is_tested()
    {
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<OldPaintCheck>(new Bookcase(), "job"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<OldPaintCheck>(new Bookcase { Site = new() { YearBuilt = 1935 } }, "job"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<OldPaintCheck>(new Bookcase { Site = new() { YearBuilt = 1990 } }, "job"));
    }
}

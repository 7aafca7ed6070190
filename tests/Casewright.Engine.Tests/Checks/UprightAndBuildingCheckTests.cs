using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Uprights;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Site;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

public class UprightAndBuildingCheckTests
{
    private static readonly SiteFacts Studs = new() { Walls = WallStructure.WoodStuds, StudSpacing = Length.FromInches(16) };

    [Fact]
    public void Facing_dados_leave_a_third()
    {
        // 18 − 2·6 = 6 = t/3 just passes; 7 deep leaves 4 (common practice, no source).
        var two = new Bookcase { Bays = 2, Width = 1200 };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PartitionWebCheck>(two, "P1"));
        var deep = Checked.By<PartitionWebCheck>(two with { Dado = 7 }, "P1");
        Assert.Equal(Severity.Stop, deep.Severity);
        Assert.Equal(4, deep.Value!.Value, 1e-9);
        Assert.Contains("6 mm", deep.Advice, StringComparison.Ordinal);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PartitionWebCheck>(two with { Dado = 7 }, "L"));

        // A panel of 17.8 mm leaves 5.8, 0.13 short of a third: within the 1/64 in that a sanded panel may be thin (PS 1-19).
        Assert.Equal(Severity.Caution, Checked.SeverityBy<PartitionWebCheck>(two with { Thickness = 17.8m }, "P1"));
    }

    [Fact]
    public void Pin_holes_on_both_faces_do_not_meet()
    {
        var row = new PinRow("pins", Face.Reference, Bookcase.Mm(37), Bookcase.Mm(150), Bookcase.Mm(32), 10, Bookcase.Mm(5), Bookcase.Mm(10));
        Bookcase With(params PinRow[] rows) => new() { Change = p => p.Id == "L" ? p with { Machining = [.. rows] } : p };
        Assert.Equal(Severity.Stop, Checked.SeverityBy<PinRowsMeetCheck>(With(row, row with { Face = Face.Opposite }), "L"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PinRowsMeetCheck>(With(row, row with { Face = Face.Opposite, FirstX = Bookcase.Mm(166) }), "L"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PinRowsMeetCheck>(With(row with { Depth = Bookcase.Mm(8) }, row with { Face = Face.Opposite, Depth = Bookcase.Mm(8) }), "L"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<PinRowsMeetCheck>(With(row with { Depth = Bookcase.Mm(14) }), "L"));
    }

    [Fact]
    public void Dado_pressure_is_reaction_over_bearing()
    {
        // (30 + 680·0.3·0.018) kg/m · 9.80665 · 0.9 m/2 · 1.5 over 300 × 6 mm = 0.124 N/mm².
        var finding = Checked.By<DadoBearingCheck>(new Bookcase(), "F1");
        Assert.Equal(1.5 * (30 + (680 * 0.3 * 0.018)) * 9.80665 * 0.9 / 2 / (300 * 6), finding.Value!.Value, 1e-4);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<DadoBearingCheck>(new Bookcase { Dado = 0 }, "F1"));
    }

    [Fact]
    public void Uprights_hold_between_fixed_shelves_and_not_without()
    {
        // A 6 mm side 2.4 m free without a back: EI of 300 × 6 mm at about 12.9 kN/mm² is 69 N·m²; π²·69/2.36² = 123 N, less than what two
        // sides carry of 5 × 0.9 m × 30 kg/m. With 18 mm and a shelf in the middle it is hundreds of times as much.
        Assert.Equal(Severity.Pass, Checked.SeverityBy<UprightBucklingCheck>(new Bookcase(), "C1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<UprightBucklingCheck>(new Bookcase { Thickness = 6, FixedShelves = 0, Back = false, Dado = 2 }, "C1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<UprightBucklingCheck>(new Bookcase { Load = null }, "C1"));
        var free = UprightBucklingCheck.FreeLength(new Bookcase().Context, new Bookcase().Box);
        Assert.InRange(free, 1.18, 1.20);
    }

    [Fact]
    public void A_case_without_a_back_racks()
    {
        Assert.Equal(Severity.Pass, Checked.SeverityBy<CaseRackingCheck>(new Bookcase(), "C1"));
        var bare = Checked.By<CaseRackingCheck>(new Bookcase { Back = false }, "C1");
        Assert.Equal(Severity.Caution, bare.Severity);
        Assert.True(bare.Value > 50 * Checked.By<CaseRackingCheck>(new Bookcase(), "C1").Value);
    }

    [Fact]
    public void An_empty_tall_case_tips_from_a_small_pull()
    {
        // W d/2y with the case's own weight: 47.6 kg or so of birch, 300 deep, pulled at 1524 mm: about 46 N, under 222 N.
        var finding = Checked.By<TipOverCheck>(new Bookcase(), "C1");
        var mass = new Bookcase().Casework.Parts.Sum(p => new Bookcase().Context.Mass(p));
        Assert.Equal(mass * 9.80665 * 0.3 / 2 / 1.524, finding.Value!.Value, 1e-6);
        Assert.Equal(Severity.Caution, finding.Severity);
    }

    [Fact]
    public void Low_hung_and_open_cases_raise_no_false_alarm()
    {
        // 27 in is 685.8 mm: the scope of the rule for clothing storage (ASTM F2057-23) begins there.
        Assert.Equal(Severity.Pass, Checked.SeverityBy<TipOverCheck>(new Bookcase { Height = 685 }, "C1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<TipOverCheck>(new Bookcase { Height = 686 }, "C1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<NailerStudsCheck>(new Bookcase { Height = 500, Nailers = false, Site = Studs }, "C1"));
        var hung = new Bookcase { ChangeJob = j => j with { Runs = [j.Runs[0] with { Bridge = new() }] } };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<TipOverCheck>(hung, "C1"));

        // A knee space has cleats and an apron, no uprights: it neither racks, tips, buckles nor is carried in.
        var open = new Bookcase { Back = false, Change = p => p.Role is PartRole.Side ? p with { Role = PartRole.Cleat } : p };
        Assert.Empty(Checked.By<TipOverCheck>(open));
        Assert.Empty(Checked.By<CaseRackingCheck>(open));
        Assert.Empty(Checked.By<UprightBucklingCheck>(open));
        Assert.Empty(Checked.By<CaseWeightCheck>(open));
        Assert.Empty(Checked.By<NailerStudsCheck>(open));
    }

    [Fact]
    public void A_light_strip_is_carried_by_one_however_long()
    {
        // 60 × 18 mm birch of 3 m weighs 2.2 kg; a side of 300 mm 11 kg.
        Bookcase With(decimal width) => new() { Height = 3000, Ceiling = 3300, Change = p => p.Id == "L" ? p with { Width = Bookcase.Mm(width) } : p };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PieceWeightCheck>(With(60), "L"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<PieceWeightCheck>(With(300), "L"));
    }

    [Fact]
    public void The_floor_bears_the_deepest_case_on_it()
    {
        // The run's own depth is that of its upper tier; the footprint is as deep as the case that stands on the floor.
        var deep = new Bookcase { CaseDepth = 450, Site = new() { FloorRating = 20 } };
        var shallow = deep with { CaseDepth = null };
        Assert.Equal(0.3 / 0.45, Checked.By<FloorLoadCheck>(deep, "R").Value!.Value / Checked.By<FloorLoadCheck>(shallow, "R").Value!.Value, 1e-9);
    }

    [Fact]
    public void Anchors_hold_the_published_withdrawal()
    {
        // No. 10 screw, 1.5 in of thread in a stud of specific gravity 0.42: 143.3 lbf = 637 N (NDS equation). 1000 N takes two.
        var finding = Checked.By<AnchorageCheck>(new Bookcase { Site = Studs }, "C1");
        Assert.Equal(2, finding.Value);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<AnchorageCheck>(new Bookcase(), "C1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<AnchorageCheck>(new Bookcase { Site = Studs with { Walls = WallStructure.SteelStuds } }, "C1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<AnchorageCheck>(new Bookcase { Site = Studs with { Walls = WallStructure.Masonry } }, "C1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<AnchorageCheck>(new Bookcase { Site = Studs, Limits = new CheckLimits { FixingForce = 3000 } }, "C1"));
    }

    [Fact]
    public void A_narrow_case_misses_studs()
    {
        // Studs at 16 in: a 900 mm nailer is sure of two, a 700 mm nailer only of one.
        Assert.Equal(Severity.Pass, Checked.SeverityBy<NailerStudsCheck>(new Bookcase { Site = Studs }, "C1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<NailerStudsCheck>(new Bookcase { Site = Studs, Width = 736 }, "C1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<NailerStudsCheck>(new Bookcase { Site = Studs, Nailers = false }, "C1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<NailerStudsCheck>(new Bookcase(), "C1"));
    }

    [Fact]
    public void Cases_say_how_many_hands_they_take()
    {
        var finding = Checked.By<CaseWeightCheck>(new Bookcase { LooseShelves = 0 }, "C1");
        var mass = new Bookcase { LooseShelves = 0 }.Casework.Parts.Sum(p => new Bookcase { LooseShelves = 0 }.Context.Mass(p));
        Assert.Equal(mass, finding.Value!.Value, 1e-9);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Contains($"{Math.Ceiling(mass / 23):0} people", finding.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Stop, Checked.SeverityBy<CaseWeightCheck>(new Bookcase { Width = 2400, Depth = 600, Bays = 3 }, "C1"));
    }

    [Fact]
    public void Long_and_heavy_pieces_take_two()
    {
        Assert.Equal(Severity.Pass, Checked.SeverityBy<PieceWeightCheck>(new Bookcase(), "L"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<PieceWeightCheck>(new Bookcase { Height = 2700 }, "L"));
    }

    [Fact]
    public void A_large_birch_sheet_takes_two()
    {
        // 1525 × 3050 × 18 mm birch weighs 56 kg (common practice, no source); by volume 680·1.525·3.05·0.018 = 56.9 kg.
        var sheet = new SheetLayout
        {
            Id = "S1",
            Stock = "full",
            Material = "panel",
            Length = Bookcase.Mm(3050),
            Width = Bookcase.Mm(1525),
            Trim = Bookcase.Mm(5),
            Kerf = Bookcase.Mm(3),
            Cost = 80,
            Bought = true,
            Cuts = [],
        };
        var finding = Checked.By<SheetWeightCheck>(new Bookcase { Sheets = [sheet] }, "full");
        Assert.Equal(56.9, finding.Value!.Value, 0.1);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SheetWeightCheck>(new Bookcase { Sheets = [sheet with { Length = Bookcase.Mm(1525) }] }, "full"));
    }

    [Fact]
    public void The_floor_bears_what_it_is_rated_for()
    {
        // All shelves 0.9 m at 30 kg/m: fixed, four loose and the bottom = 162 kg, on 0.936 × 0.3 m and over 1.2 m with the aisle.
        var bookcase = new Bookcase { Site = new() { FloorRating = 2.5 } };
        var mass = 162 + bookcase.Casework.Parts.Sum(p => bookcase.Context.Mass(p));
        var finding = Checked.By<FloorLoadCheck>(bookcase, "R");
        Assert.Equal(mass * 9.80665 / (0.936 * 0.3) / 1000, finding.Value!.Value, 1e-6);
        Assert.Equal(Severity.Caution, finding.Severity);
        var stopped = Checked.By<FloorLoadCheck>(bookcase with { Site = new() { FloorRating = 1.5 } }, "R");
        Assert.Equal(mass * 9.80665 / (0.936 * 1.2) / 1000, stopped.Value!.Value, 1e-6);
        Assert.Equal(Severity.Stop, stopped.Severity);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<FloorLoadCheck>(bookcase with { Site = new() { FloorRating = 20 } }, "R"));
        var unknown = Checked.By<FloorLoadCheck>(bookcase with { Site = new() }, "R");
        Assert.Equal(Severity.NotChecked, unknown.Severity);
        Assert.Contains("engineer", unknown.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_tilts_up_only_under_its_diagonal()
    {
        // √(2400² + 300²) = 2418.7; + 10 of play.
        Assert.Equal(2428.7, Checked.By<TiltUpCheck>(new Bookcase(), "C1").Value!.Value, 0.05);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<TiltUpCheck>(new Bookcase { Ceiling = 2429 }, "C1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<TiltUpCheck>(new Bookcase { Ceiling = 2428 }, "C1"));
    }

    [Fact]
    public void The_advised_height_tilts_up() => Gen.Select(Gen.Int[2100, 3200], Gen.Int[250, 600]).Sample(
        (ceiling, depth) =>
        {
            var bookcase = new Bookcase { Height = ceiling - 5, Ceiling = ceiling, Depth = depth };
            var finding = Checked.By<TiltUpCheck>(bookcase, "C1");
            Assert.Equal(Severity.Stop, finding.Severity);
            var words = finding.Advice.Split(' ');
            var height = decimal.Parse(words[3], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(Severity.Pass, Checked.SeverityBy<TiltUpCheck>(bookcase with { Height = height }, "C1"));
            Assert.Equal(Severity.Stop, Checked.SeverityBy<TiltUpCheck>(bookcase with { Height = height + 0.2m }, "C1"));
        },
        iter: 60);

    [Fact]
    public void A_toe_recess_lets_a_case_up_from_its_face()
    {
        // 94 × 16 in with a recess 3 × 4 in: 94.895 in from its face, 95.352 from its back; play 10 mm.
        var bookcase = new Bookcase
        {
            Height = 94 * 25.4m,
            Depth = 16 * 25.4m,
            Ceiling = 95.3m * 25.4m,
            ChangeJob = j => j with { Runs = [j.Runs[0] with { Base = new() { Kind = BaseKind.SidesToFloor, Height = Length.FromInches(4), Setback = Length.FromInches(3) } }] },
        };
        Assert.Equal(Severity.Caution, Checked.SeverityBy<TiltUpCheck>(bookcase, "C1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<TiltUpCheck>(bookcase with { Ceiling = 95.2m * 25.4m }, "C1"));
    }

    [Fact]
    public void A_case_needs_room_to_be_lifted()
    {
        Assert.Equal(Severity.Pass, Checked.SeverityBy<LiftRoomCheck>(new Bookcase { Ceiling = 2400 }, "C1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<LiftRoomCheck>(new Bookcase { Ceiling = 2399 }, "C1"));
    }

    [Fact]
    public void The_way_in_decides()
    {
        Passage door = new() { Name = "front door", Kind = PassageKind.Doorway, Width = Bookcase.Mm(900), Height = Bookcase.Mm(2000) };
        Bookcase Through(params Passage[] route) => new() { Width = 850, Site = new() { Route = [.. route] } };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<AccessRouteCheck>(Through(door), "C1"));
        Assert.Equal(Severity.Stop, Checked.SeverityBy<AccessRouteCheck>(Through(door with { Width = Bookcase.Mm(319), Height = Bookcase.Mm(840) }), "C1"));

        // Upright is too high under 2000; lying, 2400 + 20 long and 320 deep round a turn of 900 by 1000 passes only up to about 1985 + ...
        var turn = new Passage { Name = "landing", Kind = PassageKind.Turn, Width = Bookcase.Mm(900), NextWidth = Bookcase.Mm(1000), Height = Bookcase.Mm(2000) };
        Assert.Equal(Severity.Stop, Checked.SeverityBy<AccessRouteCheck>(Through(turn), "C1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<AccessRouteCheck>(Through(turn with { Height = Bookcase.Mm(2440) }), "C1"));
        var lift = new Passage { Name = "lift", Kind = PassageKind.LiftCar, Width = Bookcase.Mm(1100), NextWidth = Bookcase.Mm(1400), Height = Bookcase.Mm(2100) };
        Assert.Equal(Severity.Stop, Checked.SeverityBy<AccessRouteCheck>(Through(lift), "C1"));
        Assert.Equal(Severity.Pass, Checked.SeverityBy<AccessRouteCheck>(Through(), "C1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<AccessRouteCheck>(new Bookcase(), "job"));
    }
}

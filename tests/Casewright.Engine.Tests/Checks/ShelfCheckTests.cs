using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Model.Stock;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

public class ShelfCheckTests
{
    private static readonly SiteFacts Heated = new() { Climate = Climate.Heated };

    [Fact]
    public void Sag_in_time_is_the_code_factor_on_load_and_own_weight()
    {
        // EN 1995-1-1: plywood in a heated room k_def 0.80, everything stays: 1.8 times the first day's sag.
        var bookcase = new Bookcase { Site = Heated };
        var first = Checked.By<ShelfSagCheck>(bookcase, "F1").Value!.Value;
        Assert.Equal(1.8 * first, Checked.By<FinalSagCheck>(bookcase, "F1").Value!.Value, 1e-9);

        // Fibreboard 2.25: 3.25 times.
        var board = bookcase with { Kind = MaterialKind.Mdf };
        Assert.Equal(3.25 * Checked.By<ShelfSagCheck>(board, "F1").Value!.Value, Checked.By<FinalSagCheck>(board, "F1").Value!.Value, 1e-9);
    }

    [Fact]
    public void Sag_in_time_needs_the_climate_and_a_material_for_it()
    {
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<FinalSagCheck>(new Bookcase(), "F1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<FinalSagCheck>(new Bookcase { Kind = MaterialKind.Mdf, Site = new() { Climate = Climate.Damp } }, "F1"));
    }

    [Theory]
    [InlineData(0.95, 0.75, 37)]
    [InlineData(1.8, 0.75, 46)]
    public void The_standard_load_stops_at_the_spans_of_the_published_table(double millionPsi, double inches, int longest)
    {
        // Architectural Woodwork Standards 2009, p. 279, 50 psf, whole inches rounded down. Shear, which the table leaves out, is worth a
        // quarter inch of span; the 200 lb cap is out of reach on an 11 in shelf of these lengths.
        Bookcase Of(int span) => new()
        {
            Elasticity = millionPsi * 6894.757,
            Thickness = (decimal)inches * 25.4m,
            Depth = 279.4m,
            Width = (span * 25.4m) + (2 * (decimal)inches * 25.4m),
            LooseShelves = 0,
        };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<StandardLoadCheck>(Of(longest - 1), "F1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<StandardLoadCheck>(Of(longest + 1), "F1"));
    }

    [Fact]
    public void Stress_is_the_hand_computed_one()
    {
        // 900 mm span, 300 × 18, 2.4 kPa in all: 4.5 N/mm², with the factor 1.5 6.75. Birch of 18 mm bears 0.6·40.1/1.2 = 20 N/mm² for good.
        var finding = Checked.By<ShelfStrengthCheck>(new Bookcase { Load = (2400 * 0.3 / 9.80665) - (680 * 0.3 * 0.018) }, "F1");
        Assert.Equal(6.75, finding.Value!.Value, 0.001);
        Assert.Equal(20.1, finding.Limit!.Value, 0.1);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.Stop, Checked.SeverityBy<ShelfStrengthCheck>(new Bookcase { Load = 300 }, "F1"));
    }

    [Fact]
    public void A_shelf_across_the_grain_is_weaker_and_softer()
    {
        var along = new Bookcase();
        var across = along with { ShelfGrain = Grain.AlongWidth };
        Assert.True(Checked.By<ShelfSagCheck>(across, "F1").Value > Checked.By<ShelfSagCheck>(along, "F1").Value);
        Assert.True(Checked.By<ShelfStrengthCheck>(across, "F1").Limit < Checked.By<ShelfStrengthCheck>(along, "F1").Limit);
    }

    [Fact]
    public void Bare_board_keeps_to_the_trade_rule()
    {
        // Common practice, no source: 500 mm at 30 kg/m; at 45 kg/m 0.87 and at 60 kg/m 0.79 of it.
        var board = new Bookcase { Kind = MaterialKind.Particleboard, Width = 536, LooseShelves = 1 };
        Assert.Equal(Severity.Pass, Checked.SeverityBy<BoardSpanCheck>(board, "F1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<BoardSpanCheck>(board with { Width = 546 }, "F1"));
        Assert.Equal(500 * 0.794, Checked.By<BoardSpanCheck>(board with { Load = 60 }, "F1").Limit!.Value, 0.5);
        Assert.Empty(Checked.By<BoardSpanCheck>(board with { Kind = MaterialKind.BirchPlywood }));
        Assert.Empty(Checked.By<BoardSpanCheck>(board with { Nosing = (19, 38) }));
    }

    [Fact]
    public void The_eye_sees_two_hundredths_of_an_inch_in_a_foot()
    {
        // 0.02 in per foot: 900 mm / 600 = 1.5 mm.
        var finding = Checked.By<VisibleSagCheck>(new Bookcase(), "S1");
        Assert.Equal(1.5, finding.Limit!.Value, 1e-9);
        Assert.Equal(Severity.Caution, finding.Severity);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<VisibleSagCheck>(new Bookcase { Width = 536 }, "S1"));
    }

    [Fact]
    public void A_pin_in_birch_holds_what_hand_computation_gives()
    {
        // f = 0.11·680·5^−0.3 = 46.15 N/mm²; l = 10, e = 4: √(18² + 10²) − 18 = 2.591 mm; 46.15·5·2.591 = 597.9 N; × 0.6/1.2 = 298.9 N.
        var finding = Checked.By<ShelfPinCheck>(new Bookcase(), "S1");
        Assert.Equal(298.9, finding.Limit!.Value, 0.5);

        // (30 kg/m + 680·0.295·0.018)·9.80665·0.9 m/4·1.5 = 111.2 N.
        Assert.Equal(1.5 * (30 + (680 * 0.295 * 0.018)) * 9.80665 * 0.9 / 4, finding.Value!.Value, 0.1);
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Equal(Severity.Caution, Checked.SeverityBy<ShelfPinCheck>(new Bookcase { Kind = MaterialKind.Particleboard, Load = 60 }, "S1"));
        Assert.Equal(Severity.NotChecked, Checked.SeverityBy<ShelfPinCheck>(new Bookcase { Change = p => p with { Machining = [] } }, "S1"));
    }

    [Fact]
    public void The_load_that_the_pins_advise_passes()
    {
        var bookcase = new Bookcase { Kind = MaterialKind.Particleboard, Load = 60 };
        var finding = Checked.By<ShelfPinCheck>(bookcase, "S1");

        // The pins bear the shelf's own weight too, 640·0.295·0.018 kg/m or so, and what they hold is shared with it.
        var own = bookcase.Context.Figures(bookcase.Context.Part("S1")!).Density * 0.295 * 0.018;
        var most = ((60 + own) * finding.Limit!.Value / finding.Value!.Value) - own;
        var told = Math.Floor(most * 10) / 10;
        Assert.Contains(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Keep the load to {told:0.#} kg/m"), finding.Advice, StringComparison.Ordinal);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<ShelfPinCheck>(bookcase with { Load = told }, "S1"));
        Assert.Equal(Severity.Caution, Checked.SeverityBy<ShelfPinCheck>(bookcase with { Load = told + 0.1 }, "S1"));
    }

    [Fact]
    public void A_top_over_a_partition_is_a_continuous_beam()
    {
        // Two equal spans: the largest sag is 0.0054161/(5/384) = 0.416 of a simple span's.
        var loaded = new Bookcase { Bays = 2, Width = 1854, Change = p => p.Role == PartRole.Top ? p with { LoadPerMetre = 30 } : p };
        var context = loaded.Context;
        var top = ShelfReader.Read(context, context.Part("T")!, 30);
        Assert.Equal([0.9, 0.9], top.Spans);
        var simple = top with { Spans = [0.9] };
        Assert.InRange(top.Sag / simple.Sag, 0.416, 0.44);
        Assert.Equal(Checked.By<ShelfSagCheck>(loaded, "T").Value!.Value, top.Sag * 1000, 1e-9);
    }

    [Fact]
    public void A_bottom_on_base_rails_lies_on_them()
    {
        static Part Rail(Part part, decimal front) => part with
        {
            Role = PartRole.BaseRail,
            Length = Bookcase.Mm(936),
            Width = Bookcase.Mm(90),
            Place = new("A", new(Bookcase.Mm(30), Length.Zero, Bookcase.Mm(front)), Axis.Right, Axis.Down, Axis.In),
        };
        var bookcase = new Bookcase { LooseShelves = 2, Change = p => p.Id switch { "S1" => Rail(p, 250), "S2" => Rail(p, 18), _ => p } };
        var finding = Checked.By<ShelfSagCheck>(bookcase, "B");
        Assert.Equal(Severity.Pass, finding.Severity);
        Assert.Null(finding.Value);
    }

    [Fact]
    public void Remedies_of_the_other_shelf_checks_pass_too() => Gen.Select(Gen.Int[600, 1500], Gen.Int[14, 25], Gen.Int[20, 90]).Sample(
        (width, thickness, load) =>
        {
            var bookcase = new Bookcase { Width = width, Thickness = thickness, Load = load, LooseShelves = 0, Site = Heated };
            var context = bookcase.Context;
            var shelf = ShelfReader.Read(context, context.Part("F1")!, load);
            bool Lasts(Shelf s) => FinalSagCheck.Final(s, 0.8, 1) <= s.LongestSpan / 240;
            bool Holds(Shelf s) => ShelfStrengthCheck.Stress(s, bookcase.Limits) <= ShelfStrengthCheck.Strength(s);
            foreach (var passes in (Func<Shelf, bool>[])[Lasts, Holds])
            {
                if (passes(shelf))
                    continue;
                var remedies = ShelfRemedies.For(shelf, passes, UnitSystem.Inches);
                Assert.True(remedies.Span is not { } span || passes(ShelfRemedies.WithSpan(shelf, span)));
                Assert.True(remedies.Thickness is not { } t || passes(shelf with { Thickness = t }));
                Assert.True(remedies.Load is not { } least || passes(shelf with { LoadPerMetre = least }));
            }
        },
        iter: 150);
}

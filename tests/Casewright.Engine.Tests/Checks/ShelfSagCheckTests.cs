using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Model.Stock;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

public class ShelfSagCheckTests
{
    private static Finding Sag(Bookcase bookcase, string subject) => new ShelfSagCheck().Run(bookcase.Context).Single(f => f.Subject == subject);

    [Fact]
    public void A_plain_shelf_sags_as_the_handbook_example()
    {
        // 900 × 300 × 18 mm, 8500 N/mm², 2.4 kPa: 4.963 mm bending + shear (Beam theory, solid finite elements 5.03). Here 2.4 kPa = 73.4 kg/m
        // with the own weight of 680·0.3·0.018 = 3.67 kg/m taken off, and planar shear modulus 170 instead of 200: 0.095 mm.
        var bookcase = new Bookcase { Elasticity = 8500, Load = (2400 * 0.3 / 9.80665) - (680 * 0.3 * 0.018) };
        var finding = Sag(bookcase, "F1");
        Assert.Equal(4.963 + (0.081 * 200 / 170), finding.Value!.Value, 0.003);
        Assert.Equal(900.0 / 360, finding.Limit!.Value, 1e-9);
        Assert.Equal(Severity.Stop, finding.Severity);
    }

    [Fact]
    public void A_shelf_with_a_nosing_and_a_cleat_sags_as_solid_finite_elements_say()
    {
        // Finite elements: 1.353 mm in front for a 19 × 38 strip of 12 600 N/mm² (here 10 000) with the back on a cleat. The softer strip
        // may only sag more, and by no more than the whole ratio of stiffness.
        var load = (2400 * 0.3 / 9.80665) - (680 * 0.3 * 0.018) - (650 * 0.019 * 0.038);
        var bookcase = new Bookcase { Elasticity = 8500, Load = load, Nosing = (19, 38), CleatUnderFixedShelf = true };
        Assert.InRange(Sag(bookcase, "F1").Value!.Value, 1.353, 1.353 * 1.26);
    }

    [Fact]
    public void A_shelf_without_a_load_says_that_it_was_not_checked()
    {
        var finding = Sag(new Bookcase { Load = null }, "S1");
        Assert.Equal(Severity.NotChecked, finding.Severity);
        Assert.Contains("load", finding.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_loose_shelf_a_little_over_is_a_caution_and_a_fixed_one_a_stop()
    {
        var bookcase = new Bookcase { Load = 40 };
        Assert.Equal(Severity.Stop, Sag(bookcase, "F1").Severity);
        Assert.Equal(Severity.Caution, Sag(bookcase, "S1").Severity);
        Assert.Equal(Severity.Stop, Sag(bookcase with { Load = 120 }, "S1").Severity);
    }

    [Fact]
    public void The_shop_limit_is_told_with_the_usual_one_beside_it()
    {
        var finding = Sag(new Bookcase { Limits = new CheckLimits { SagRatio = 300 } }, "F1");
        Assert.Contains(finding.Inputs, i => i.Value.StartsWith("300 set by the shop; 360 is usual", StringComparison.Ordinal));
    }

    private static readonly MaterialKind[] Kinds =
        [MaterialKind.BirchPlywood, MaterialKind.Mdf, MaterialKind.Particleboard, MaterialKind.HardwoodPlywood, MaterialKind.Osb];

    private static readonly Gen<Bookcase> Bookcases =
        from width in Gen.Int[400, 1600]
        from depth in Gen.Int[150, 450]
        from thickness in Gen.Int[12, 32]
        from load in Gen.Int[1, 80]
        from kind in Gen.Int[0, Kinds.Length - 1]
        from nosed in Gen.Bool
        from cleat in Gen.Bool
        select new Bookcase
        {
            Width = width,
            Depth = depth,
            Thickness = thickness,
            Load = load,
            Kind = Kinds[kind],
            LooseShelves = 1,
            Nosing = nosed ? (19m, 42m) : null,
            CleatUnderFixedShelf = cleat,
        };

    [Fact]
    public void Thicker_shorter_stiffer_and_less_loaded_never_sags_more() => Bookcases.Sample(
        bookcase =>
        {
            // Under one and the same load: a thicker panel is also heavier, and with almost nothing on it that can win.
            double Value(Bookcase b) => ShelfReader.Read(b.Context, b.Context.Part("F1")!, 0).SagUnder(bookcase.Load!.Value * 9.80665);
            var sag = Value(bookcase);
            Assert.True(Value(bookcase with { Thickness = bookcase.Thickness + 1, Width = bookcase.Width + 2 }) <= sag, "thicker");
            Assert.True(Value(bookcase with { Width = bookcase.Width - 10 }) < sag, "shorter");
            var stiff = bookcase with { Elasticity = 6000 };
            Assert.True(Value(stiff with { Elasticity = 6500 }) < Value(stiff), "stiffer");
            Assert.True(Sag(bookcase with { Load = bookcase.Load - 0.5 }, "F1").Value < Sag(bookcase, "F1").Value, "less loaded");
        },
        iter: 300);

    [Fact]
    public void More_load_never_passes_what_less_failed() => Bookcases.Sample(
        bookcase =>
        {
            if (Sag(bookcase, "S1").Severity != Severity.Pass)
                Assert.NotEqual(Severity.Pass, Sag(bookcase with { Load = bookcase.Load + 1 }, "S1").Severity);
        },
        iter: 300);

    [Fact]
    public void Every_remedy_makes_the_shelf_pass_and_a_step_less_does_not() => Bookcases.Sample(
        bookcase =>
        {
            var context = bookcase.Context;
            var shelf = ShelfReader.Read(context, context.Part("F1")!, bookcase.Load!.Value);
            static bool Passes(Shelf s) => ShelfSagCheck.Passes(s, 360);
            if (Passes(shelf))
                return;
            var remedies = ShelfRemedies.For(shelf, Passes, UnitSystem.Millimetres);
            if (remedies.Span is { } span)
            {
                var narrower = bookcase with { Width = span.Millimetres + (2 * bookcase.Thickness) };
                Assert.Equal(Severity.Pass, Sag(narrower, "F1").Severity);
                Assert.NotEqual(Severity.Pass, Sag(narrower with { Width = narrower.Width + 5 }, "F1").Severity);
            }

            if (remedies.Thickness is { } thickness)
                Assert.True(Passes(shelf with { Thickness = thickness }) && !Passes(shelf with { Thickness = thickness - Length.FromMillimetres(0.5m) }));
            if (remedies.Nosing is { } nosing)
                Assert.Equal(Severity.Pass, Sag(bookcase with { Nosing = (19.05m, nosing.Millimetres) }, "F1").Severity);
            if (remedies.NosingAndCleat is { } both)
                Assert.Equal(Severity.Pass, Sag(bookcase with { Nosing = (19.05m, both.Millimetres), CleatUnderFixedShelf = true }, "F1").Severity);
            if (remedies.Load is { } load)
                Assert.Equal(Severity.Pass, Sag(bookcase with { Load = load }, "F1").Severity);
        },
        iter: 200);

    [Fact]
    public void Units_of_the_job_change_words_and_not_figures()
    {
        var metric = CheckStage.Run([new ShelfSagCheck()], new Bookcase().Context);
        var imperial = CheckStage.Run([new ShelfSagCheck()], new Bookcase { Units = UnitSystem.Inches }.Context);
        Assert.Equal(metric.Select(f => (f.Subject, f.Severity, f.Value, f.Limit, f.Unit)), imperial.Select(f => (f.Subject, f.Severity, f.Value, f.Limit, f.Unit)));
        Assert.All(imperial, f => Assert.DoesNotContain(" mm ", f.Message, StringComparison.Ordinal));
    }
}

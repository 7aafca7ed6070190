using Casewright.Engine.Checks;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Splices;
using Casewright.Engine.Checks.Uprights;
using Casewright.Engine.Tests.Checks.Fixtures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Splices;
using CsCheck;

namespace Casewright.Engine.Tests.Checks;

/// <summary>Laws that every check keeps, on random bookcases.</summary>
public class CheckLawTests
{
    private static readonly Gen<Bookcase> Bookcases = Gen.Select(Gen.Int[500, 1400], Gen.Int[150, 230], Gen.Int[220, 450], Gen.Int[15, 25], Gen.Int[1, 3], Gen.Int[0, 3], Gen.Int[5, 70], Gen.Bool).Select(
        (clear, dozens, depth, thickness, bays, shelves, load, spliced) => new Bookcase
        {
            Width = (clear * bays) + (thickness * (bays + 1)),
            Height = 12 * dozens,
            Depth = depth,
            Thickness = thickness,
            Bays = bays,
            FixedShelves = shelves,
            Load = load,
            Splices = spliced ? [Bookcase.TenonSplice("L", (6 * dozens) + 111, depth, thickness), Bookcase.TenonSplice("B", (clear * bays / 2) + 60, depth, thickness)] : [],
        });

    private static string Said(Bookcase b) => $"{b.Width} × {b.Height} × {b.Depth}, {b.Thickness} thick, {b.Bays} bays, {b.FixedShelves} fixed, {b.Load} kg/m, {b.Splices.Count} joints";

    private static Dictionary<(string Check, string Subject), Finding> Found(Bookcase bookcase) =>
        CheckStage.Run(bookcase.Job, bookcase.Casework, bookcase.Plan).GroupBy(f => (f.Check, f.Subject)).ToDictionary(g => g.Key, g => g.First());

    [Fact]
    public void More_load_never_passes_what_less_failed() => Bookcases.Select(Gen.Int[1, 40]).Sample(
        (bookcase, more) =>
        {
            var (less, loaded) = (Found(bookcase), Found(bookcase with { Load = bookcase.Load + more }));
            Assert.Equal(less.Keys.Order(), loaded.Keys.Order());
            foreach (var (key, finding) in less.Where(f => f.Value.Severity is Severity.Stop or Severity.Caution))
                Assert.True(loaded[key].Severity >= finding.Severity, $"{key}: {finding.Severity} with {bookcase.Load} kg/m, {loaded[key].Severity} with more");
        },
        iter: 60,
        print: x => Said(x.Item1));

    [Fact]
    public void The_unit_of_the_job_changes_words_and_no_verdict() => Bookcases.Sample(
        bookcase =>
        {
            var (metric, imperial) = (Found(bookcase), Found(bookcase with { Units = UnitSystem.Inches }));
            Assert.Equal(metric.Keys.Order(), imperial.Keys.Order());
            foreach (var (key, finding) in metric)
            {
                Assert.Equal(
                    (key, finding.Severity, finding.Value, finding.Limit, finding.Unit),
                    (key, imperial[key].Severity, imperial[key].Value, imperial[key].Limit, imperial[key].Unit));
            }
        },
        iter: 40,
        print: Said);

    [Fact]
    public void Thicker_and_shorter_shelves_never_get_a_worse_word_for_sag() => Bookcases.Select(Gen.Int[1, 6], Gen.Int[10, 200]).Sample(
        (bookcase, thicker, shorter) =>
        {
            string[] sags = ["shelf-sag", "shelf-sag-in-time", "loose-shelf-visible-sag", "shelf-standard-load", "shelf-one-bay-loaded"];
            bookcase = bookcase with { Splices = [] };
            var before = Found(bookcase);
            var stronger = Found(bookcase with { Thickness = bookcase.Thickness + thicker, Width = bookcase.Width + (thicker * (bookcase.Bays + 1)) });
            var narrower = Found(bookcase with { Width = bookcase.Width - (shorter * bookcase.Bays) });
            foreach (var (key, finding) in before.Where(f => sags.Contains(f.Key.Check) && f.Value.Limit is not null))
            {
                Assert.True(stronger[key].Value / stronger[key].Limit <= finding.Value / finding.Limit * (1 + 1e-9), $"thicker: {key}");
                Assert.True(narrower[key].Value / narrower[key].Limit <= finding.Value / finding.Limit * (1 + 1e-9), $"shorter: {key}");
            }
        },
        iter: 40,
        print: x => Said(x.Item1));

    [Fact]
    public void A_dado_as_shallow_as_advised_leaves_enough_web() => Gen.Select(Gen.Int[12, 25], Gen.Int[4, 12], Gen.Int[1, 2]).Sample((thickness, dado, bays) =>
    {
        var bookcase = new Bookcase { Thickness = thickness, Dado = dado, Bays = bays, Width = 900 * bays };
        foreach (var finding in Checked.By<PartitionWebCheck>(bookcase).Where(f => f.Severity != Severity.Pass))
        {
            var advised = System.Text.RegularExpressions.Regex.Match(finding.Advice, @"at most (?<mm>[\d.]+) mm", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["mm"].Value;
            var mended = bookcase with { Dado = decimal.Parse(advised, System.Globalization.CultureInfo.InvariantCulture) };
            Assert.Equal(Severity.Pass, Checked.SeverityBy<PartitionWebCheck>(mended, finding.Subject));
        }
    });

    [Fact]
    public void What_serves_a_weak_tenon_joint_in_a_shelf_makes_it_pass() => Gen.Select(Gen.Int[600, 900], Gen.Int[20, 45]).Sample((span, load) =>
    {
        // The advice: over an upright, or backed by a plate as thick as the panel. Where the unjoined panel itself would pass, so does the plate.
        var splice = Bookcase.TenonSplice("F1", span / 2);
        var bookcase = new Bookcase { Width = span + 36, Load = load, Splices = [splice] };
        if (Checked.SeverityBy<SpliceStrengthCheck>(bookcase, "F1/1") == Severity.Pass)
            return;
        var glue = bookcase with { ChangeJob = j => j with { Shop = j.Shop with { Glue = new() { Creeps = false } } } };
        var plated = glue with { Splices = [splice with { Method = SpliceMethod.BackedButt, Tenons = [] }] };
        Assert.Equal(Checked.SeverityBy<ShelfStrengthCheck>(glue, "F1") == Severity.Pass, Checked.SeverityBy<SpliceStrengthCheck>(plated, "F1/1") == Severity.Pass);
        Assert.Equal(Severity.Pass, Checked.SeverityBy<SpliceStrengthCheck>(bookcase with { Splices = [Bookcase.TenonSplice("F1", 3)] }, "F1/1"));
    });

    [Fact]
    public void No_unconfirmed_code_stands_in_any_finding()
    {
        // Not confirmed, so never printed as code values.
        string[] unconfirmed = ["16121", "14749", "Z39.73", "BIFMA", "12369", "A208"];
        var bookcase = new Bookcase { Load = 90, Bays = 2, Width = 2400, Thickness = 12, Splices = [Bookcase.TenonSplice("L", 1190), Bookcase.TenonSplice("F1.1", 456)] };
        foreach (var each in (Bookcase[])[bookcase, bookcase with { Load = null }, bookcase with { Kind = Casewright.Model.Stock.MaterialKind.Particleboard }, bookcase with { Units = UnitSystem.Inches }])
        {
            foreach (var finding in CheckStage.Run(each.Job, each.Casework, each.Plan))
            {
                var text = string.Join(' ', finding.Inputs.Select(i => $"{i.Name} {i.Value}").Append(finding.Message).Append(finding.Advice).Append(finding.Source).Append(finding.Formula));
                Assert.All(unconfirmed, code => Assert.DoesNotContain(code, text, StringComparison.Ordinal));
            }
        }

        var rest = CheckCatalogue.All.SelectMany(c => c.Sheet.Limits.Select(l => l.Source).Append(c.Sheet.Source)).Concat(ShelfContents.Usual.Select(c => c.Source)).Concat(WorkCaution.Usual.Select(c => c.Source + c.Text))
            .Concat(Enum.GetValues<Casewright.Model.Stock.MaterialKind>().Select(kind => Casewright.Engine.Checks.Materials.MaterialTable.For(new() { Id = "m", Name = "m", Kind = kind, Nominal = Length.FromMillimetres(18) }).Source));
        Assert.All(rest, text => Assert.All(unconfirmed, code => Assert.DoesNotContain(code, text, StringComparison.Ordinal)));
    }
}

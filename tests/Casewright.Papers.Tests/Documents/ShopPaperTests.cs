using System.Globalization;
using Casewright.Engine.Checks;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Story sticks, drilling layouts, assembly sheets and the cautions on the papers of the work.</summary>
public class ShopPaperTests
{
    private static readonly PaperSettings A4 = new(PaperSize.A4, new(2026, 1, 1));

    private static IEnumerable<string> Texts(IEnumerable<PageDraft> pages) => pages.SelectMany(page => new Scene(300, 300, "", "", page.Body).Texts).Select(text => text.Text);

    private static double Mm(Length length) => (double)length.Millimetres;

    [Theory]
    [InlineData(UnitSystem.Millimetres)]
    [InlineData(UnitSystem.Inches)]
    public void Marks_of_a_story_stick_stand_at_full_size_from_the_foot(UnitSystem units)
    {
        // Full size is the fact checked: a line's distance on the paper from the lower end of its strip, plus where that strip starts, is
        // the distance of the dado from the foot in the part.
        var plan = HandPlan.Of(units, cases: 2);
        var side = plan.Parts.First(part => part.Role == PartRole.Side);
        var strips = StripsOf(StorySticks.Pages(plan, A4));
        var step = strips.Max(strip => strip.Height);
        Assert.Equal(Mm(side.Length), strips.Sum(strip => strip.Height), 1e-6);
        Assert.All(strips.SkipLast(1), strip => Assert.Equal(step, strip.Height, 1e-6));
        var drawn = strips.SelectMany((strip, i) => strip.Lines.Select(y => (i * step) + y)).ToList();
        foreach (var dado in side.Machining.OfType<Dado>())
        {
            Assert.Contains(drawn, y => Math.Abs(y - Mm(dado.X)) < 1e-6);
            Assert.Contains(drawn, y => Math.Abs(y - Mm(dado.X + dado.Width)) < 1e-6);
        }

        var holes = strips.SelectMany((strip, i) => strip.Holes.Select(y => (i * step) + y)).ToList();
        foreach (var row in side.Machining.OfType<PinRow>())
            Assert.All(Enumerable.Range(0, row.Count), hole => Assert.Contains(holes, y => Math.Abs(y - Mm(row.FirstX + (row.Pitch * hole))) < 1e-6));
    }

    private sealed record Strip(double Height, List<double> Lines, List<double> Holes);

    private static List<Strip> StripsOf(IEnumerable<PageDraft> pages) =>
    [
        .. pages.SelectMany(page => new Scene(300, 300, "", "", page.Body).Groups).Where(group => group.Kind == "strip").Select(group =>
        {
            var edge = group.Items.OfType<LineItem>().First(line => line.Pen == Pen.Reference);
            var foot = edge.To.Y;
            return new Strip(
                foot - edge.From.Y,
                [.. group.Items.OfType<LineItem>().Where(line => line.Pen == Pen.Object && line.From.Y == line.To.Y).Select(line => foot - line.From.Y)],
                [.. group.Items.OfType<CircleItem>().Select(circle => foot - circle.Centre.Y)]);
        }),
    ];

    [Fact]
    public void Every_stick_page_proves_its_own_size()
    {
        foreach (var (units, length) in ((UnitSystem, double)[])[(UnitSystem.Millimetres, 100), (UnitSystem.Inches, 101.6)])
        {
            foreach (var page in StorySticks.Pages(HandPlan.Of(units, cases: 1), A4))
            {
                var bar = page.Body.OfType<LineItem>().First(line => line.From.Y == line.To.Y);
                Assert.Equal(length, bar.To.X - bar.From.X, 1e-9);
            }
        }
    }

    [Fact]
    public void Left_and_right_side_are_both_drawn_with_their_front_edges_away_from_each_other()
    {
        // Seen on the inside with the foot down, the front edge of a left side is at its left and that of a right side at its right: stand
        // in a bookcase and look at either side.
        var pages = DrillingLayouts.Pages(HandPlan.Of(cases: 3), A4);
        var drawings = pages.SelectMany(page => new Scene(300, 300, "", "", page.Body).Groups).Where(group => group.Id.StartsWith("upright:", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(drawings);
        foreach (var drawing in drawings)
        {
            var body = drawing.Items.OfType<PathItem>().First().Bounds;
            var front = drawing.Items.OfType<LineItem>().Single(line => line.Pen == Pen.Reference).From.X;
            Assert.Equal(drawing.Id.Contains("-L:", StringComparison.Ordinal) ? body.Left : body.Right, front, 1e-9);
        }

        Assert.Contains(drawings, drawing => drawing.Id == "upright:C1-L:Reference");
        Assert.Contains(drawings, drawing => drawing.Id == "upright:C1-R:Reference");
        Assert.DoesNotContain(Texts(pages), text => text.Contains("mirror", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Heights_on_a_drilling_layout_are_those_of_the_part()
    {
        var plan = HandPlan.Of(cases: 1);
        var side = plan.Parts.First(part => part.Role == PartRole.Side);
        var texts = Texts(DrillingLayouts.Pages(plan, A4)).ToList();
        foreach (var dado in side.Machining.OfType<Dado>())
            Assert.Contains(Mm(dado.X).ToString("0.#", CultureInfo.InvariantCulture), texts);
        Assert.Contains(texts, text => text.Contains("37 and 263 from the front", StringComparison.Ordinal));
    }

    [Fact]
    public void Alike_cases_share_an_assembly_sheet_and_every_part_goes_on_once()
    {
        var plan = HandPlan.Of(cases: 5);
        var group = Assert.Single(CaseGroups.Of(plan));
        Assert.Equal(5, group.Cases.Count);
        Assert.Single(AssemblySheets.Pages(plan, A4).Select(page => page.Key).Distinct());
        var steps = AssemblyOrder.Of(plan, group);
        Assert.Equal(Enumerable.Range(1, steps.Count), steps.Select(step => step.Number));
        var on = steps.SelectMany(step => step.Parts).Select(part => part.Id).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(group.Parts.Where(part => part.Role != PartRole.AdjustableShelf).Select(part => part.Id).Order(StringComparer.Ordinal), on);

        // Overlaid backs go on after the case is square, and both sides before them.
        int StepOf(PartRole role, Hand hand = Hand.None) => steps.Single(step => step.Parts.Any(part => part.Role == role && (hand == Hand.None || part.Hand == hand))).Number;
        Assert.True(StepOf(PartRole.Side, Hand.Left) < StepOf(PartRole.Side, Hand.Right));
        Assert.True(StepOf(PartRole.Side, Hand.Right) < StepOf(PartRole.Back));
    }

    [Fact]
    public void A_captured_back_goes_in_before_the_last_side()
    {
        var plan = HandPlan.Of(cases: 1);
        var run = plan.Job.Runs[0];
        plan = plan with { Job = plan.Job with { Runs = [run with { Back = run.Back with { Kind = Casewright.Model.Design.BackKind.Captured } }] } };
        var steps = AssemblyOrder.Of(plan, CaseGroups.Of(plan)[0]);
        var back = steps.Single(step => step.Parts.Any(part => part.Role == PartRole.Back));
        var right = steps.Single(step => step.Parts.Any(part => part.Hand == Hand.Right));
        Assert.True(back.Number < right.Number);
    }

    [Fact]
    public void The_diagonal_is_that_of_the_right_angled_triangle()
    {
        // 5, 12, 13: 1000 and 2400 give 2600.
        Assert.Equal(Length.FromMillimetres(2600), AssemblySheets.Diagonal(Length.FromMillimetres(1000), Length.FromMillimetres(2400), UnitSystem.Millimetres));
        Assert.Equal(Length.FromInches(104), AssemblySheets.Diagonal(Length.FromInches(40), Length.FromInches(96), UnitSystem.Inches));
    }

    [Fact]
    public void An_assembly_sheet_tells_weight_and_hands()
    {
        // One case by hand: 680 kg/m³ birch plywood, loose shelves left out. Sides 2 × 2.710 × 0.300, bottom, top and two fixed shelves
        // (0.9104 − 0.036 + 0.012) × 0.300 at 18 mm; back 2.708 × 0.9084 at 6 mm; two beech nosings 0.8864 × 0.040 × 0.010 at 650.
        var plan = HandPlan.Of(cases: 1);
        var mass = (680 * 0.018 * 0.300 * ((2 * 2.710) + (4 * 0.8864))) + (680 * 0.006 * 2.708 * 0.9084) + (2 * 650 * 0.8864 * 0.040 * 0.010);
        var texts = string.Join(' ', Texts(AssemblySheets.Pages(plan, A4)));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"weighs {mass:0.#} kg"), texts, StringComparison.Ordinal);

        // 23 kg for each pair of hands.
        Assert.Contains($"{Math.Ceiling(mass / 23)} people", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_stand_where_the_work_is_shown()
    {
        var plan = HandPlan.Of(cases: 2);
        string Words(IEnumerable<PageDraft> pages) => string.Join(' ', Texts(pages));
        var rip = Words(RipSchedule.Pages(plan, A4));
        Assert.Contains("riving knife", rip, StringComparison.Ordinal);
        Assert.Contains("Wood dust", rip, StringComparison.Ordinal);
        Assert.All(SheetLayouts.Pages(plan, A4).GroupBy(page => page.Key), pages => Assert.Contains("wear a mask", Words(pages), StringComparison.Ordinal));
        var glued = SpliceCards.Pages(plan, A4).Where(page => page.Key.Length > 0).ToList();
        Assert.NotEmpty(glued);
        Assert.All(glued, card => Assert.Contains("glue's label", Words([card]), StringComparison.Ordinal));
        Assert.Contains("close to the body", Words(AssemblySheets.Pages(plan, A4)), StringComparison.Ordinal);
        var site = Words(InstallSheet.Pages(plan, A4));
        foreach (var word in (string[])["Overhead", "wires and pipes", "lead", "tips until it is fixed", "Lift together", "licensed"])
            Assert.Contains(word, site, StringComparison.Ordinal);
    }

    // One caution at least for every kind of work, and each that defers says to whom.
    [Fact]
    public void Nothing_in_a_card_s_few_words_is_cut_off() =>
        Assert.All(WorkCaution.Usual.Where(caution => caution.Brief.Length > 0), caution => Assert.EndsWith(".", caution.Brief, StringComparison.Ordinal));
}

using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Shop;
using Casewright.Papers.Documents;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Tests.Documents;

/// <summary>Every document, by structure: nothing missing, nothing outside, nothing over anything else.</summary>
public class DocumentTests
{
    public static TheoryData<UnitSystem, PaperSize, int> Kinds => new()
    {
        { UnitSystem.Millimetres, PaperSize.A4, 1 },
        { UnitSystem.Millimetres, PaperSize.Letter, 5 },
        { UnitSystem.Inches, PaperSize.Letter, 2 },
        { UnitSystem.Inches, PaperSize.A4, 5 },
        { UnitSystem.Inches, PaperSize.Letter, 24 },
    };

    // Papers by themselves, and those that need a timetable, a price, rules of finish, a survey or parts cut to a shape, which the plan by hand has not.
    private static readonly DocumentKind[] Elsewhere =
    [
        DocumentKind.SpanTables, DocumentKind.ScribeTemplates, DocumentKind.Timetable, DocumentKind.GlueUps, DocumentKind.FinishSchedule, DocumentKind.DaySheets,
        DocumentKind.Quote, DocumentKind.Schemes, DocumentKind.ChangeOrder, DocumentKind.PartDrawings,
    ];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void EveryPageIsCleanAndNumbered(UnitSystem units, PaperSize size, int cases)
    {
        var packet = Packet.Of(HandPlan.Of(units, cases), new(size, new(2026, 1, 1)) { Calculations = true });
        Assert.Equal(Enum.GetValues<DocumentKind>().Except(Elsewhere).Order(), packet.Pages.Select(page => page.Document).Distinct().Order());
        foreach (var page in packet.Pages)
        {
            Assert.Equal("", string.Join('\n', LayoutCheck.Faults(page.Scene, PrintedArea(page, size))));
            Assert.Contains(page.Scene.Texts, text => text.Text.Contains($"page {page.Number} of {packet.Pages.Count}", StringComparison.Ordinal));
            Assert.Contains(page.Scene.Texts, text => text.Text.Contains("revision 7 · 25 Nov 2026", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void NamesThatNobodyExpectsBreakNoPage()
    {
        var name = "Bibliothèque «Łódź» & Söhne <b>α→漢</b> " + new string('W', 80) + " " + string.Concat(Enumerable.Repeat("a long name of a job ", 8));
        var plan = HandPlan.Of(cases: 2, jobName: name);
        var long1 = plan.Parts.Select(part => part with { Name = part.Name + " " + new string('x', 50) + " beside the window seat with the radiator" }).ToValueList();
        var packet = Packet.Of(plan with { Parts = long1 }, new(PaperSize.A4, new(2026, 1, 1)));
        var faults = packet.Pages.SelectMany(page => LayoutCheck.Faults(page.Scene, PrintedArea(page, PaperSize.A4)).Select(fault => (page.Number, Fault: fault)));
        Assert.Equal("", string.Join('\n', faults.Where(fault => fault.Fault.Kind != LayoutFaultKind.MissingGlyph).Select(fault => $"page {fault.Number}: {fault.Fault}")));
    }

    [Fact]
    public void TheSamePlanGivesTheSamePacketToTheByte()
    {
        Assert.Equal(Bytes(), Bytes());
        static byte[] Bytes()
        {
            using var stream = new MemoryStream();
            Packet.Of(HandPlan.Of(cases: 2), new(PaperSize.A4, new(2026, 1, 1))).WritePdf(stream);
            return stream.ToArray();
        }
    }

    [Fact]
    public void ContentsNameTheRightPages()
    {
        var packet = Packet.Of(HandPlan.Of(cases: 3), new(PaperSize.A4, new(2026, 1, 1)));
        var cover = packet.Pages.Where(page => page.Document == DocumentKind.Cover).SelectMany(page => page.Scene.Texts).Select(text => text.Text).ToList();
        foreach (var document in packet.Pages.Where(page => page.Document != DocumentKind.Cover).GroupBy(page => page.Document))
        {
            var (first, last) = (document.Min(page => page.Number), document.Max(page => page.Number));
            var at = cover.IndexOf(Packet.TitleOf(document.Key));
            Assert.Equal(first == last ? $"{first}" : $"{first} to {last}", cover[at + 1]);
        }
    }

    [Fact]
    public void StopsComeFirstOnTheCoverAndEveryFindingIsOnTheFindingSheet()
    {
        var plan = HandPlan.Of();
        var packet = Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1)));
        var cover = string.Join('\n', packet.Pages[0].Scene.Texts.Select(text => text.Text));
        Assert.True(cover.IndexOf("C2: the case does not stand up", StringComparison.Ordinal) < cover.IndexOf("C1-S2: the shelf sags", StringComparison.Ordinal));
        Assert.Contains("1 stop, 1 caution, 1 not checked", cover, StringComparison.Ordinal);
        var sheet = string.Join('\n', TextsOf(packet, DocumentKind.Findings));
        foreach (var finding in plan.Findings)
            Assert.Contains(finding.Source, sheet, StringComparison.Ordinal);
        Assert.Contains("2861 against 2830 mm", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryPartIsOnThePartListAtSixteenPointsWithBothUnits()
    {
        var plan = HandPlan.Of();
        var items = Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1))).Pages.Where(page => page.Document == DocumentKind.PartList).SelectMany(page => page.Scene.Texts).ToList();
        var codes = string.Join(' ', items.Where(item => item.Lettering.Size >= 16).Select(item => item.Text));
        Assert.All(PartGroups.Of(new PlanIndex(plan)), group => Assert.Contains(CodeList.Of(group.Parts.Select(part => part.Id)), codes, StringComparison.Ordinal));
        // 2710 mm = 106.693 in = 106 22.2/32, so 106 11/16.
        Assert.Contains(items, item => item.Text == "2710");
        Assert.Contains(items, item => item.Text == "106 11⁄16");
    }

    [Fact]
    public void EveryPieceHasALabelWithItsScannableCode()
    {
        var plan = HandPlan.Of();
        var pages = Packet.Of(plan, new(PaperSize.Letter, new(2026, 1, 1))).Pages.Where(page => page.Document == DocumentKind.Labels).ToList();
        var codes = pages.SelectMany(page => page.Scene.Leaves).OfType<QrItem>().Select(code => code.Content).ToList();
        Assert.Equal(plan.Cutting.Pieces.Select(piece => piece.Id + " r7").Order(StringComparer.Ordinal), codes.Order(StringComparer.Ordinal));
        foreach (var piece in plan.Cutting.Pieces)
        {
            var label = pages.SelectMany(page => page.Scene.Groups).Single(group => group.Id == "label:" + piece.Id);
            Assert.Contains(label.Items.OfType<TextItem>(), text => text.Text == piece.Id && text.Lettering.Size >= 16);
        }
    }

    [Fact]
    public void EverySheetIsOnOneLayoutPageWithAllItsCutsAndPieces()
    {
        var plan = HandPlan.Of();
        var index = new PlanIndex(plan);
        var groups = SheetGroups.Of(index);
        Assert.Equal(plan.Cutting.Sheets.Count, groups.Sum(group => group.Sheets.Count));
        var pages = Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1))).Pages.Where(page => page.Document == DocumentKind.SheetLayouts).ToList();
        foreach (var group in groups)
        {
            var texts = pages.Where(page => page.Key == group.First.Id).SelectMany(page => page.Scene.Texts).Select(text => text.Text).ToList();
            var all = string.Join('\n', texts);
            Assert.All(group.First.Cuts, cut => Assert.Contains($"{cut.Order}", texts, StringComparer.Ordinal));
            Assert.All(group.Sheets.SelectMany(sheet => index.PiecesFrom(sheet.Id)), piece => Assert.Contains(piece.Id, all, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void EveryGluedSpliceHasACardWithItsOffsetsLetterAndBothFaces()
    {
        var plan = HandPlan.Of();
        var figures = new Figures(plan.Job.Units);
        var pages = Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1))).Pages.Where(page => page.Document == DocumentKind.SpliceCards).ToList();
        foreach (var splice in plan.Cutting.Splices.Where(splice => splice.Tenons.Count > 0))
        {
            var page = pages.Single(p => p.Key == splice.Id);
            var texts = page.Scene.Texts.ToList();
            Assert.Contains(texts, text => text.Text == splice.Part && text.Lettering.Size >= 40);
            Assert.Contains(texts, text => text.Text == "INSIDE face up");
            Assert.Contains(texts, text => text.Text == "OUTSIDE face up");
            foreach (var offset in splice.Tenons.Select(tenon => tenon.Offset).Concat(splice.Connectors.Select(connector => connector.Offset)).Append(splice.MarkOffset))
            {
                Assert.Contains(texts, text => text.Text == figures.Main(offset));
                Assert.Contains(texts, text => text.Text == figures.Other(offset));
            }

            Assert.True(texts.Count(text => text.Text == splice.PairLetter) >= 4);
        }
    }

    // A left side stands with its foot down, its front edge towards the maker and its inside face to the right. Laid on the bench with
    // the inside face up and the foot to the left, its front edge lies away from the maker; turned over, towards him. A right side
    // lies the other way round. (Geometry; try it with a sheet of paper.)
    [Theory]
    [InlineData("C2-L", true)]
    [InlineData("C2-R", false)]
    public void ASideIsDrawnAsItLiesOnTheBench(string id, bool referenceEdgeUp)
    {
        var plan = HandPlan.Of();
        var splice = plan.Cutting.Splices.Single(s => s.Part == id);
        var scene = SpliceCards.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))).Single(page => page.Key == splice.Id);
        var lines = new Scene(300, 300, "", "", scene.Body).Leaves.OfType<LineItem>().ToList();
        var heavy = lines.Where(line => line.Pen == Pen.Reference).Select(line => line.From.Y).Distinct().Order().ToList();
        var edges = lines.Where(line => line.Pen == Pen.Object && line.From.Y == line.To.Y).Select(line => line.From.Y).Distinct().Order().ToList();
        Assert.Equal(2, heavy.Count);
        Assert.Equal(4, edges.Count);
        Assert.Equal(referenceEdgeUp ? [edges[0], edges[3]] : [edges[1], edges[2]], heavy);
    }

    // Marks must not run over hardware: no stroke of the triangle may enter a mortise or a connector.
    [Fact]
    public void TheMatchTriangleCrossesNoHardware()
    {
        var plan = HandPlan.Of();
        foreach (var page in SpliceCards.Pages(plan, new(PaperSize.A4, new(2026, 1, 1))).Where(page => page.Key.Length > 0))
        {
            var leaves = new Scene(300, 300, "", "", page.Body).Leaves.ToList();
            var triangles = leaves.OfType<PathItem>().Where(path => path.Pen == Pen.Hidden && path.Points.Count == 3).ToList();
            var hardware = leaves.OfType<PathItem>().Where(path => path.Fill == Tone.Ink).Select(path => path.Bounds)
                .Concat(leaves.OfType<CircleItem>().Where(circle => circle.Radius > 1).Select(circle => circle.Bounds)).ToList();
            Assert.Equal(2, triangles.Count);
            Assert.NotEmpty(hardware);
            Assert.All(triangles, triangle => Assert.DoesNotContain(hardware, box => triangle.Bounds.Overlaps(box)));
        }
    }

    [Fact]
    public void TheElevationShowsCasesSightLineAndFindingsAndNamesItsParts()
    {
        var plan = HandPlan.Of();
        var scene = Elevation.Drawing(plan, "R1");
        Assert.Empty(LayoutCheck.Faults(scene));
        Assert.All(plan.Cases, box => Assert.Contains(scene.Texts, text => text.Text == box.Id));
        Assert.Contains(scene.Texts, text => text.Text == "sight line 2085");
        Assert.Contains(scene.Texts, text => text.Text == "10 splices");
        Assert.Single(scene.Groups, group => group.Kind == "sight-line");
        Assert.Equal(["finding:1:C2", "finding:2:C1-S2"], scene.Groups.Where(group => group.Kind == "finding").Select(group => group.Id), StringComparer.Ordinal);
        Assert.Equal(plan.Parts.Select(part => "part:" + part.Id).Order(StringComparer.Ordinal), scene.Groups.Where(group => group.Kind == "part").Select(group => group.Id).Order(StringComparer.Ordinal));
        // A case of 910.4 at 1 : 20 is 45.52 mm wide.
        var box1 = scene.Groups.Single(group => group.Id == "case:C1").Items.OfType<PathItem>().First().Bounds;
        Assert.Equal(45.52, box1.Width, 0.001);
    }

    [Fact]
    public void BuyingListCountsWhatThePlanUses()
    {
        var plan = HandPlan.Of();
        var lines = BuyingList.Lines(plan);
        Assert.Equal(plan.Cutting.Sheets.Count, lines.Where(line => line.Kind == "Sheets").Sum(line => line.Buy + line.OnHand));
        Assert.Equal(1, lines.Single(line => line.Stock == "ply18-8").OnHand);
        Assert.Equal(plan.Cutting.Sheets.Sum(sheet => sheet.Cost) + plan.Cutting.Boards.Sum(board => board.Cost), lines.Sum(line => line.Cost ?? 0));
        // Ten sides with three tenons each; eight of them between neighbours with two connectors each.
        Assert.Equal(30, lines.Single(line => line.Name == "loose tenon").Buy);
        Assert.Equal(16, lines.Single(line => line.Name == "draw connector").Buy);
    }

    [Fact]
    public void RipScheduleHoldsEveryRipOnce()
    {
        var plan = HandPlan.Of();
        var texts = string.Join(' ', TextsOf(Packet.Of(plan, new(PaperSize.A4, new(2026, 1, 1))), DocumentKind.RipSchedule));
        foreach (var sheet in plan.Cutting.Sheets)
            Assert.Contains($"{sheet.Id} ({sheet.Cuts.Count(cut => cut is { Kind: CutKind.Rip, Stage: > 0 })})", texts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void RipScheduleTellsOfOtherLayoutsOfTheSameCost(PaperSize size)
    {
        var offcut = new KeptOffcut(Length.Zero, Length.Zero, Length.FromMillimetres(2430), Length.FromMillimetres(963));
        var plan = HandPlan.Of() with
        {
            Layouts = [new(SheetAim.FewestSettings, 28, 90, null, 0, 0, Chosen: true), new(SheetAim.LargestOffcut, 30, 91, offcut, 7, 2.86m, Chosen: false)],
        };
        var packet = Packet.Of(plan, new(size, new(2026, 1, 1)));
        var texts = string.Join(' ', TextsOf(packet, DocumentKind.RipSchedule));
        foreach (var word in (string[])["Layouts of the same cost", "the most useful offcut", "2430 × 963", "7, 2.86 m²"])
            Assert.Contains(word, texts, StringComparison.Ordinal);
        Assert.All(packet.Pages.Where(page => page.Document == DocumentKind.RipSchedule), page => Assert.Empty(LayoutCheck.Faults(page.Scene, PrintedArea(page, size))));
    }

    /// <summary>Sheets that are cut are neither bought nor ripped again; their page says so.</summary>
    [Fact]
    public void PapersKnowWhatIsCutAlready()
    {
        var plan = HandPlan.Of();
        var first = plan.Cutting.Sheets[0];
        var half = plan with { Cutting = plan.Cutting with { Sheets = [.. plan.Cutting.Sheets.Select(s => s == first ? s with { Sawn = true } : s)] } };
        Assert.Equal(BuyingList.Lines(plan).Sum(line => line.Buy + line.OnHand) - 1, BuyingList.Lines(half).Sum(line => line.Buy + line.OnHand));
        var packet = Packet.Of(half, new(PaperSize.A4, new(2026, 1, 1)));
        Assert.DoesNotContain($"{first.Id} (", string.Join(' ', TextsOf(packet, DocumentKind.RipSchedule)), StringComparison.Ordinal);
        Assert.Contains("Sheet layout: cut already", TextsOf(packet, DocumentKind.SheetLayouts));
        Assert.Contains("1 sheet is cut already", string.Join(' ', TextsOf(packet, DocumentKind.BuyingList)), StringComparison.Ordinal);
    }

    private static IEnumerable<string> TextsOf(Packet packet, DocumentKind kind) =>
        packet.Pages.Where(page => page.Document == kind).SelectMany(page => page.Scene.Texts).Select(text => text.Text);

    private static Box PrintedArea(Page page, PaperSize size) => page.Document == DocumentKind.Labels
        ? page.Scene.Area
        : new PageFormat(size, page.Scene.Width > page.Scene.Height).Printed;
}

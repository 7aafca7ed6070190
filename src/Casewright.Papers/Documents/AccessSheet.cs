using Casewright.Engine.Access;
using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Getting in and up: every case with its weight and hands, and a drawing of the worst case at each narrow place and under the ceiling.</summary>
public static class AccessSheet
{
    private const int Across = 3;
    private const double Gap = 8;
    private const double PictureHeight = 46;
    private const double CaptionHeight = 24;

    private static readonly Lettering Figure = Lettering.Figure;

    /// <summary>The pages.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        var study = AccessStage.Study(plan.Job, new(plan.Cases, plan.Parts, []));
        var site = new SiteFigures(index.Figures);
        var flow = Drafting.Flow(
            DocumentKind.AccessSheet, settings, landscape: true, new("Getting in and up", $"sizes and sums in {index.Figures.Unit}; a batten of the size, carried through before the job is cut, beats arithmetic"),
            "Whether each case gets through the way in and up under the ceiling.", index.Figures.FootNote);
        DrawTable(flow, site, new(plan.Job.Units), study);
        DrawAdvice(flow, study);
        DrawPictures(flow, site, study);
        if (plan.Job.Site.Route is null)
            flow.Paragraph("Nobody has measured the way in. Measure doors, turns, stairs and lifts between the van and the room before the cases are made.", Lettering.BodyStrong);
        flow.Gap(2);
        foreach (var caution in WorkCaution.Usual.Where(c => c.Work == Work.Lifting))
            flow.Paragraph(caution.Text + " Local rules on lifting come first.", Lettering.Body);
        return flow.Finish();
    }

    private static void DrawTable(PageFlow flow, SiteFigures site, Say say, ValueList<CaseAccess> study)
    {
        Column[] columns =
        [
            new("", Fixed: 7), new("Cases", 1.2, Lettering: Lettering.ListCode.Sized(13)), new("Width × height × depth", 1.2, Lettering: Figure), new("Weight, hands", 1, Lettering: Figure),
            new("Standing it up", 1.7), new("Tightest place on the way in", 1.7),
        ];
        var alike = study.GroupBy(c => string.Join('|', TextsOf(site, say, c)), StringComparer.Ordinal);
        Table.Draw(flow, columns, [.. alike.Select(group => RowOf(site, say, group.First(), [.. group.Select(c => c.Case.Id)]))]);
    }

    private static Row RowOf(SiteFigures site, Say say, CaseAccess access, IReadOnlyList<string> cases)
    {
        var sign = new Cell("", Drawing: (sketch, area) => FindingSheet.DrawSign(sketch, access.Passes ? Severity.Pass : Severity.Stop, area.Left + 3, area.Top + 2.4, 4.6), LeastHeight: 6);
        return new([sign, new(CodeList.Of(cases)), .. TextsOf(site, say, access).Select(text => new Cell(text))]);
    }

    private static IEnumerable<string> TextsOf(SiteFigures site, Say say, CaseAccess access)
    {
        var box = access.Case;
        yield return $"{site.Main(box.Width)} × {site.Main(box.Height)} × {site.Main(box.Depth)}";
        yield return $"{say.Mass(access.Mass)}, {Words.Count(access.People, "person", "people")}";
        yield return $"{AccessWords.Of(access.Best.Place)}: needs {site.Metres(access.Best.Need)}, ceiling {site.Metres(access.Best.Have)}{(access.Best.Passes ? "" : ": does not go up")}";
        yield return access.Tightest is not { } tight ? access.Passages is null ? "not measured" : "no narrow place" : $"{tight.Passage.Name}: {AccessWords.Spare(site, tight)}";
    }

    private static void DrawAdvice(PageFlow flow, ValueList<CaseAccess> study)
    {
        var failing = study.Where(c => !c.Passes).ToList();
        if (failing.Count == 0)
            return;
        flow.Heading("What would mend it, in the order to try");
        foreach (var group in failing.GroupBy(c => string.Join('\n', c.Advice), StringComparer.Ordinal))
        {
            flow.Paragraph(CodeList.Of([.. group.Select(c => c.Case.Id)]), Lettering.BodyStrong);
            foreach (var advice in group.First().Advice)
                flow.Paragraph("– " + advice, Lettering.Body, 3);
        }
    }

    /// <summary>One picture for standing up and one for each narrow place, each of the case that has least to spare there.</summary>
    private static void DrawPictures(PageFlow flow, SiteFigures site, ValueList<CaseAccess> study)
    {
        var pictures = new List<(string Title, string Words, bool Passes, Action<Sketch, Box> Draw)>();
        var worst = study.MinBy(c => c.Best.Have - c.Best.Need)!;
        foreach (var way in worst.Standing)
            pictures.Add(($"{worst.Case.Id} up: {AccessWords.Of(way.Place)}", AccessWords.Why(site, way), way.Passes, (sketch, box) => AccessDrawing.Standing(sketch, box, site, worst.Case, way)));
        var places = study[0].Passages?.Count ?? 0;
        for (var i = 0; i < places; i++)
        {
            var tight = study.MinBy(c => c.Passages![i].Spare)!;
            var fit = tight.Passages![i];
            pictures.Add(($"{tight.Case.Id} at {fit.Passage.Name}", AccessWords.Why(site, fit), fit.Passes, (sketch, box) => AccessDrawing.Passing(sketch, box, site, fit)));
        }

        flow.Heading("The worst case at each place", PictureHeight + CaptionHeight);
        foreach (var row in pictures.Chunk(Across))
        {
            flow.Draw(PictureHeight + CaptionHeight + 4, (sketch, box) =>
            {
                for (var i = 0; i < row.Length; i++)
                    DrawPicture(sketch, box.Column(i, Across, Gap), row[i]);
            });
        }
    }

    private static void DrawPicture(Sketch sketch, Box box, (string Title, string Words, bool Passes, Action<Sketch, Box> Draw) picture)
    {
        picture.Draw(sketch, box.TakeTop(PictureHeight));
        FindingSheet.DrawSign(sketch, picture.Passes ? Severity.Pass : Severity.Stop, box.Left + 2.6, box.Top + PictureHeight + 4.6, 4.4);
        var title = Lettering.BodyStrong;
        sketch.Text(Fitting.Cut(picture.Title, title, box.Width - 7), box.Left + 7, box.Top + PictureHeight + 6, title);
        var lines = WordWrap.Lines(picture.Words, Lettering.Small, box.Width).Take(4).ToList();
        for (var i = 0; i < lines.Count; i++)
            sketch.Text(lines[i], box.Left, box.Top + PictureHeight + 8 + ((i + 1) * Lettering.Small.LineHeight), Lettering.Small);
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Dados, holes and grooves of every upright, measured from its foot and its reference edge. The left and the right side are both
/// drawn, each as one looks at it, so that neither has to be thought round the other; partitions are drawn from both sides.
/// </summary>
public static class DrillingLayouts
{
    private const double TableWidth = 70;
    private const double Gap = 5;

    private static readonly Lettering Figure = Lettering.Figure.Sized(13);

    /// <summary>The pages: uprights worked alike share theirs.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var index = new PlanIndex(plan);
        return Sets(index).SelectMany(set => PagesOf(index, set, settings)).Concat(CutOutDrawings.Pages(index, settings)).ToValueList();
    }

    /// <summary>Uprights that share a page: those drawn, and the codes of all that are worked like them.</summary>
    private sealed record UprightSet(IReadOnlyList<Part> Drawn, IReadOnlyList<string> Codes, string Name);

    private static List<UprightSet> Sets(PlanIndex index)
    {
        var uprights = index.Plan.Parts.Where(part => part.Role is PartRole.Side or PartRole.Partition && part.Machining.Count > 0).ToList();
        var sides = uprights.Where(part => part.Role == PartRole.Side).GroupBy(part => part.Case, StringComparer.Ordinal).Select(pair => pair.OrderBy(side => side.Hand).ToList());
        var partitions = uprights.Where(part => part.Role == PartRole.Partition).Select(part => (List<Part>)[part]);
        return [.. sides.Concat(partitions)
            .GroupBy(set => string.Join('|', set.Select(part => Key(index, part))), StringComparer.Ordinal)
            .Select(group => new UprightSet(group.First(), [.. group.SelectMany(set => set.Select(part => part.Id))], group.First()[0].Role == PartRole.Side ? "sides" : "partition"))];
    }

    private static string Key(PlanIndex index, Part part) =>
        $"{part.Role} {part.Hand} {part.Length} {part.Width} {part.Thickness} {WorkOn.Key(part)} {string.Join(',', index.SplicesOf(part).Select(splice => splice.Position))}";

    private static IEnumerable<PageDraft> PagesOf(PlanIndex index, UprightSet set, PaperSettings settings)
    {
        var faces = set.Drawn.SelectMany(part => FacesOf(part).Select(face => (Part: part, Face: face))).ToList();
        var heading = new PageHeading("Drilling and dados: " + set.Name, $"all figures from the foot · {NameList.Of(set.Codes)}");
        var page = Drafting.Page(
            DocumentKind.DrillingLayouts, settings, landscape: false, heading, $"Work on {NameList.Of(set.Codes)}, measured from the foot.", index.Figures.FootNote, set.Drawn[0].Id);
        var body = page.Format.Body(heading.Height);
        var rows = Rows(index, set).ToList();
        var sketch = new Sketch();
        var columns = body with { Width = body.Width - TableWidth - Gap };
        var each = columns.Width / faces.Count;
        var scale = faces.Min(view => UprightDrawing.ScaleFor(view.Part, body.Height, each - UprightDrawing.LadderWidth - 4));
        for (var i = 0; i < faces.Count; i++)
            new UprightDrawing(index, faces[i].Part, faces[i].Face).Draw(sketch, columns.Column(i, faces.Count, 3), scale);
        var table = new Box(body.Right - TableWidth, body.Top, TableWidth, body.Height);
        var done = Table.DrawInto(sketch, table, Columns(index), rows).Rows;
        yield return page with { Body = sketch.Items };
        for (rows.RemoveRange(0, done); rows.Count > 0; rows.RemoveRange(0, done))
        {
            sketch = new();
            done = Math.Max(1, Table.DrawInto(sketch, body, Columns(index), rows).Rows);
            yield return page with { Body = sketch.Items, Heading = heading with { Subtitle = heading.Subtitle + " · continued" } };
        }
    }

    // The face that is measured from always; the other where it is worked too.
    private static IEnumerable<Face> FacesOf(Part part)
    {
        yield return Face.Reference;
        if (part.Machining.Any(work => work is Dado { Face: Face.Opposite } or PinRow { Face: Face.Opposite } or Groove { Face: Face.Opposite } or Rabbet { Face: Face.Opposite } or Bore { Face: Face.Opposite }))
            yield return Face.Opposite;
    }

    private static Column[] Columns(PlanIndex index) =>
    [
        new("", Fixed: 4.5),
        new($"From foot {index.Figures.Unit}", Fixed: 17, Anchor: Anchor.End, Lettering: Figure),
        new("What", Lettering: Lettering.Body.Sized(9.5)),
    ];

    private static IEnumerable<Row> Rows(PlanIndex index, UprightSet set)
    {
        var tables = set.Drawn.Select(part => (Part: part, Lines: Lines(index, part).ToList())).ToList();
        var alike = tables.Count > 1 && tables.Skip(1).All(other => other.Lines.Select(line => line.Work).SequenceEqual(tables[0].Lines.Select(line => line.Work)));
        if (alike)
            tables = [(tables[0].Part, [.. tables[0].Lines.Select((line, i) => line with { What = string.Join(" / ", tables.Select(table => table.Lines[i].What).Distinct(StringComparer.Ordinal)) })])];
        foreach (var (part, lines) in tables)
        {
            yield return Row.Heading(alike ? "Left / right, each on its own inside" : part.Id);
            foreach (var line in lines)
                yield return Row.Of(Cell.TickBox, new(index.Figures.Main(line.Work.From), Second: index.Figures.Other(line.Work.From)), new($"{line.What}: {line.Work.Words}"));
        }
    }

    /// <summary>A line of the table: what it is for, and the work, which is the same on both sides of a case.</summary>
    private sealed record Line(string What, (Length From, string Words) Work);

    private static IEnumerable<Line> Lines(PlanIndex index, Part part)
    {
        foreach (var mark in UprightMarks.Of(index, part))
        {
            var face = part.Role == PartRole.Partition && mark.Face is { } on ? (on == Face.Reference ? part.ReferenceFaceName : part.OppositeFaceName) + " face, " : "";
            var to = mark.Kind switch
            {
                UprightMarkKind.Pins => $"; last {index.Figures.Main(mark.To)}",
                UprightMarkKind.Dado => $"; upper edge {index.Figures.Main(mark.To)}",
                UprightMarkKind.Joint or UprightMarkKind.Hole => "",
                _ => $"; to {index.Figures.Main(mark.To)}",
            };
            yield return new(face + mark.What, (mark.From, mark.How + to));
        }
    }
}

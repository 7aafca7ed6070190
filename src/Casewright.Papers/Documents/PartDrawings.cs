using Casewright.Model.Collections;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Papers.Drawing;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>
/// Every part, uprights apart, whose blank is cut on a slant or bored: raked tops, clipped backs, shelves cut short, strips along a slope,
/// doors and drawer fronts. Each is drawn lying, looked at from its reference face, with the figures of its cuts. Alike parts share theirs.
/// </summary>
public static class PartDrawings
{
    private const double Between = 7;

    /// <summary>The pages; none where no part has such work.</summary>
    public static ValueList<PageDraft> Pages(Plan plan, PaperSettings settings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        var index = new PlanIndex(plan);
        var drawings = PartGroups.Of(index).Where(group => IsDrawn(group.First)).Select(group => new PartDrawing(index, group)).ToList();
        var pages = new List<PageDraft>();
        for (var done = 0; done < drawings.Count;)
        {
            var words = done == 0 ? "from the named face; dashed: blank, and what lies behind" : "continued";
            var heading = new PageHeading("Part drawings: cuts on a slant, and holes", $"{words} · {index.Figures.Unit}");
            var page = Drafting.Page(
                DocumentKind.PartDrawings, settings, landscape: false, heading, "Parts that are cut on a slant or bored.", index.Figures.FootNote, drawings[done].Key);
            var body = page.Format.Body(heading.Height);
            var sketch = new Sketch();
            var top = body.Top + 1;
            do
            {
                top += drawings[done++].Draw(sketch, body with { Top = top, Height = body.Bottom - top }) + Between;
            }
            while (done < drawings.Count && top + drawings[done].HeightIn(body.Width) <= body.Bottom);
            pages.Add(page with { Body = sketch.Items });
        }

        return pages.ToValueList();
    }

    private static bool IsDrawn(Part part) =>
        part.Role is not (PartRole.Side or PartRole.Partition) && part.Machining.Any(work => work is Bevel or Clip or Bore);
}

using Casewright.Engine.Checks;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>The usual cautions of a kind of work, printed on the paper that shows the work.</summary>
internal static class CautionStrip
{
    /// <summary>What stands under every list of cautions.</summary>
    public const string First = "Local codes, makers' instructions and licensed practice come first.";

    private const double Indent = 6;

    private static readonly Lettering Words = Lettering.Body.Sized(9.5);

    /// <summary>Draws the cautions of some kinds of work into a column; returns the height used.</summary>
    public static double Draw(Sketch sketch, Box area, params ReadOnlySpan<Work> works)
    {
        var y = area.Top;
        foreach (var caution in Of(works))
        {
            FindingSheet.DrawSign(sketch, Severity.Caution, area.Left + 2, y + 2.2, 3.8);
            y += sketch.Paragraph(caution.Text, area.Left + Indent, y, area.Width - Indent, Words) + 0.8;
        }

        return y + sketch.Paragraph(First, area.Left + Indent, y, area.Width - Indent, Words) - area.Top;
    }

    /// <summary>Draws the cautions into a flow of pages under their own heading.</summary>
    public static void Draw(PageFlow flow, params ReadOnlySpan<Work> works)
    {
        flow.Heading("Take care");
        foreach (var caution in Of(works))
        {
            var lines = WordWrap.Lines(caution.Text, Words, flow.Body.Width - Indent);
            flow.Draw((lines.Count * Words.LineHeight) + 0.8, (sketch, box) =>
            {
                FindingSheet.DrawSign(sketch, Severity.Caution, box.Left + 2, box.Top + 2.2, 3.8);
                sketch.Paragraph(caution.Text, box.Left + Indent, box.Top, box.Width - Indent, Words);
            });
        }

        flow.Paragraph(First, Words, Indent);
    }

    /// <summary>The cautions of some kinds of work in one line.</summary>
    public static string Brief(params ReadOnlySpan<Work> works) => string.Join(' ', Of(works).Select(caution => caution.Brief).Where(brief => brief.Length > 0));

    private static ValueList<WorkCaution> Of(ReadOnlySpan<Work> works)
    {
        var wanted = works.ToArray();
        return WorkCaution.Usual.Where(caution => wanted.Contains(caution.Work)).ToValueList();
    }
}

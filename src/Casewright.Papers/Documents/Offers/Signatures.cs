using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents.Offers;

/// <summary>Where a paper is signed.</summary>
internal static class Signatures
{
    private const double Height = 26;

    /// <summary>Lines for name, date and signature, side by side, kept together with what is agreed.</summary>
    public static void Draw(PageFlow flow, string agreed, params string[] who)
    {
        flow.Gap(4);
        flow.Ensure(Height + 12);
        flow.Paragraph(agreed, Lettering.BodyStrong);
        flow.Draw(Height, (sketch, box) =>
        {
            for (var i = 0; i < who.Length; i++)
            {
                var column = box.Column(i, who.Length, 10);
                sketch.Line(column.Left, column.Top + 16, column.Right, column.Top + 16, Pen.Thin);
                sketch.Text($"Date, signature of the {who[i]}", column.Left, column.Top + 20.5, Lettering.Small);
            }
        });
    }
}

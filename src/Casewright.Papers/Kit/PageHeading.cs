using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>The head of a page.</summary>
/// <param name="Title">What the page is.</param>
/// <param name="Subtitle">What to know before reading on; may be empty.</param>
/// <param name="Code">Code of the part, sheet or case, set big; may be empty.</param>
public sealed record PageHeading(string Title, string Subtitle = "", string Code = "")
{
    private const double StampWidth = 62;

    /// <summary>Height with its rule, in millimetres.</summary>
    public double Height => Code.Length > 0 ? 20 : 18;

    /// <summary>Draws the heading into the top of the printed area, with the stamp of job, revision, date and page at the right.</summary>
    public void Draw(Sketch sketch, Box printed, PageStamp stamp)
    {
        var left = printed.Left;
        if (Code.Length > 0)
        {
            var lettering = Fitting.Shrunk(Code, Lettering.CardCode, printed.Width * 0.42, Lettering.CardCode.Size * 0.5);
            sketch.Text(Fitting.Cut(Code, lettering, printed.Width * 0.42), left, printed.Top + 13.2, lettering);
            left += Math.Min(TextLayout.Width(Code, lettering), printed.Width * 0.42) + 5;
        }

        var width = printed.Right - StampWidth - 4 - left;
        var title = Fitting.Shrunk(Title, Lettering.Title, width, 12);
        sketch.Text(Fitting.Cut(Title, title, width), left, printed.Top + 6.4, title);
        sketch.Text(Fitting.Cut(Subtitle, Lettering.Note, width), left, printed.Top + 12.4, Lettering.Note);
        stamp.Draw(sketch, printed.Right, printed.Top, StampWidth);
        sketch.Line(printed.Left, printed.Top + Height - 3, printed.Right, printed.Top + Height - 3, Pen.Rule);
    }
}

using Casewright.Papers.Drawing;

namespace Casewright.Papers.Kit;

/// <summary>
/// A page's measures in millimetres. The filing edge is the long one at the left of an upright page and at the top of one that lies;
/// it keeps room for holes (ISO 838: centres 12 mm from the edge, 6 mm wide). The other edges keep room for thumbs.
/// </summary>
public sealed record PageFormat(PaperSize Size, bool Landscape)
{
    private const double HoleMargin = 19;
    private const double Margin = 12;
    private const double FootHeight = 6;

    /// <summary>Width of the page.</summary>
    public double Width => Landscape ? LongSide : ShortSide;

    /// <summary>Height of the page.</summary>
    public double Height => Landscape ? ShortSide : LongSide;

    /// <summary>Everything printed lies in this.</summary>
    public Box Printed => Landscape
        ? new(Margin, HoleMargin, Width - (2 * Margin), Height - HoleMargin - Margin)
        : new(HoleMargin, Margin, Width - HoleMargin - Margin, Height - (2 * Margin));

    /// <summary>The line at the foot of the page.</summary>
    public Box Foot => Printed with { Top = Printed.Bottom - FootHeight + 2, Height = FootHeight - 2 };

    private double ShortSide => Size == PaperSize.A4 ? 210 : 215.9;

    private double LongSide => Size == PaperSize.A4 ? 297 : 279.4;

    /// <summary>Where the content goes, under a heading of the given height and above the foot.</summary>
    public Box Body(double headingHeight) => Printed.WithoutTop(headingHeight) with { Height = Printed.Height - headingHeight - FootHeight };
}

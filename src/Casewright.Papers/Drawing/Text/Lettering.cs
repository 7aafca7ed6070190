namespace Casewright.Papers.Drawing.Text;

/// <summary>The typeface families of the papers.</summary>
public enum FontFamily
{
    /// <summary>For words.</summary>
    Barlow,

    /// <summary>For numbers and dimensions; its figures are always tabular.</summary>
    BarlowCondensed,
}

/// <summary>How dark the letters are, by the usual OpenType numbers.</summary>
public enum FontWeight
{
    /// <summary>Plain words (Barlow only).</summary>
    Regular = 400,

    /// <summary>A little darker.</summary>
    Medium = 500,

    /// <summary>Headings, figures.</summary>
    SemiBold = 600,

    /// <summary>Codes.</summary>
    Bold = 700,
}

/// <summary>How a text is lettered. Size in points of 1/72 inch.</summary>
/// <param name="Size">Type size in points; papers use nothing under <see cref="Smallest"/>.</param>
/// <param name="Family">Words in Barlow, figures in Barlow Condensed.</param>
/// <param name="Weight">How dark.</param>
/// <param name="Tone">Colour by meaning.</param>
public sealed record Lettering(
    double Size, FontFamily Family = FontFamily.Barlow, FontWeight Weight = FontWeight.Regular, Tone Tone = Tone.Ink)
{
    /// <summary>Millimetres in a point.</summary>
    public const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>The smallest size on paper, in points.</summary>
    public const double Smallest = 9;

    /// <summary>Running words.</summary>
    public static Lettering Body { get; } = new(10.5);

    /// <summary>Running words that matter more.</summary>
    public static Lettering BodyStrong { get; } = new(10.5, Weight: FontWeight.SemiBold);

    /// <summary>Notes under a heading.</summary>
    public static Lettering Note { get; } = new(10, Tone: Tone.Graphite);

    /// <summary>The smallest words.</summary>
    public static Lettering Small { get; } = new(Smallest, Weight: FontWeight.Medium, Tone: Tone.Graphite);

    /// <summary>Heading of a section of a page.</summary>
    public static Lettering Heading { get; } = new(13, Weight: FontWeight.SemiBold);

    /// <summary>Title of a page.</summary>
    public static Lettering Title { get; } = new(20, Weight: FontWeight.SemiBold);

    /// <summary>A figure in a list or on a drawing.</summary>
    public static Lettering Figure { get; } = new(12, FontFamily.BarlowCondensed, FontWeight.SemiBold);

    /// <summary>The same measure in the other unit.</summary>
    public static Lettering SecondFigure { get; } = new(11, FontFamily.BarlowCondensed, FontWeight.Medium, Tone.Graphite);

    /// <summary>The code of a part in a list (read from a metre away).</summary>
    public static Lettering ListCode { get; } = new(16, FontFamily.BarlowCondensed, FontWeight.Bold);

    /// <summary>The code of a part on a card.</summary>
    public static Lettering CardCode { get; } = new(44, FontFamily.BarlowCondensed, FontWeight.Bold);

    /// <summary>Type size in millimetres.</summary>
    public double SizeMillimetres => Size * MillimetresPerPoint;

    /// <summary>Distance from one baseline to the next, in millimetres.</summary>
    public double LineHeight => SizeMillimetres * 1.25;

    /// <summary>Height of a capital or figure, in millimetres (0.7 of the size in Barlow).</summary>
    public double CapHeight => SizeMillimetres * 0.7;

    /// <summary>The same lettering in another tone.</summary>
    public Lettering In(Tone tone) => this with { Tone = tone };

    /// <summary>The same lettering in another size, in points.</summary>
    public Lettering Sized(double points) => this with { Size = points };
}

using Casewright.Model.Collections;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing;

/// <summary>Something drawn on a scene. Positions and sizes in millimetres on paper.</summary>
public abstract record SceneItem
{
    /// <summary>The box around the item, without the weight of its pen.</summary>
    public abstract Box Bounds { get; }

    /// <summary>The same item, moved to the right and down.</summary>
    public abstract SceneItem Moved(double dx, double dy);
}

/// <summary>A straight line.</summary>
public sealed record LineItem(Point From, Point To, Pen Pen) : SceneItem
{
    /// <inheritdoc/>
    public override Box Bounds => Box.Around([From, To]);

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { From = From.Moved(dx, dy), To = To.Moved(dx, dy) };
}

/// <summary>A chain of lines, open or closed; a closed one may be filled.</summary>
public sealed record PathItem(ValueList<Point> Points, bool Closed, Pen? Pen, Tone? Fill) : SceneItem
{
    /// <inheritdoc/>
    public override Box Bounds => Box.Around(Points);

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { Points = Points.Select(p => p.Moved(dx, dy)).ToValueList() };
}

/// <summary>A circle.</summary>
public sealed record CircleItem(Point Centre, double Radius, Pen? Pen, Tone? Fill) : SceneItem
{
    /// <inheritdoc/>
    public override Box Bounds => new(Centre.X - Radius, Centre.Y - Radius, 2 * Radius, 2 * Radius);

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { Centre = Centre.Moved(dx, dy) };
}

/// <summary>Which point of a text its position names, along the baseline.</summary>
public enum Anchor
{
    /// <summary>The start.</summary>
    Start,

    /// <summary>The middle.</summary>
    Middle,

    /// <summary>The end.</summary>
    End,
}

/// <summary>A line of text.</summary>
/// <param name="Text">What it says; figures around U+2044 are set as a fraction.</param>
/// <param name="At">The anchor's point on the baseline.</param>
/// <param name="Lettering">Family, weight, size, tone.</param>
/// <param name="Anchor">Which point of the baseline lies at <paramref name="At"/>.</param>
/// <param name="Turn">Degrees clockwise about <paramref name="At"/>; −90 reads upwards.</param>
/// <param name="Backed">Whether the ground is cleared behind the text, for text on grain or hatching.</param>
public sealed record TextItem(
    string Text, Point At, Lettering Lettering, Anchor Anchor = Anchor.Start, double Turn = 0, bool Backed = false) : SceneItem
{
    /// <summary>Millimetres that are cleared around a backed text.</summary>
    public const double Backing = 0.6;

    /// <summary>The text as set.</summary>
    public TextLayout Layout => TextLayout.Of(Text, Lettering);

    /// <summary>The corners of the ink, turned.</summary>
    public ValueList<Point> Corners => CornersOf(Layout, 0);

    /// <summary>The upright box around the ink.</summary>
    public override Box Bounds => Box.Around(Corners);

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { At = At.Moved(dx, dy) };

    /// <summary>The corners of the ground that is cleared behind the text, turned.</summary>
    internal ValueList<Point> CornersOf(TextLayout layout, double margin)
    {
        var ink = layout.Ink.Moved(StartOf(layout), 0).Inset(-margin);
        return [Turned(ink.Left, ink.Top), Turned(ink.Right, ink.Top), Turned(ink.Right, ink.Bottom), Turned(ink.Left, ink.Bottom)];
    }

    /// <summary>Where the text starts relative to its anchor, in millimetres along the baseline.</summary>
    internal double StartOf(TextLayout layout) => Anchor switch
    {
        Anchor.Start => 0,
        Anchor.Middle => -layout.Advance / 2,
        _ => -layout.Advance,
    };

    private Point Turned(double x, double y)
    {
        var (sine, cosine) = Math.SinCos(Turn * Math.PI / 180);
        return new(At.X + (x * cosine) - (y * sine), At.Y + (x * sine) + (y * cosine));
    }
}

/// <summary>A scannable square code (QR, error correction M) with its quiet zone inside <paramref name="Side"/>.</summary>
public sealed record QrItem(Point Corner, double Side, string Content) : SceneItem
{
    /// <inheritdoc/>
    public override Box Bounds => new(Corner.X, Corner.Y, Side, Side);

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { Corner = Corner.Moved(dx, dy) };
}

/// <summary>Items that belong together: a thing one can point at, with a title for those who cannot see it.</summary>
/// <param name="Id">Stable id, unique in the scene (part, piece, splice or finding id with a prefix).</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Kind">What sort of thing: part, splice, finding, dimension ...; a class name for style sheets.</param>
/// <param name="Items">What is drawn.</param>
public sealed record GroupItem(string Id, string Title, string Kind, ValueList<SceneItem> Items) : SceneItem
{
    /// <inheritdoc/>
    public override Box Bounds => Items.Count == 0 ? default : Items.Skip(1).Aggregate(Items[0].Bounds, (box, item) => box.Union(item.Bounds));

    /// <inheritdoc/>
    public override SceneItem Moved(double dx, double dy) => this with { Items = Items.Select(item => item.Moved(dx, dy)).ToValueList() };
}

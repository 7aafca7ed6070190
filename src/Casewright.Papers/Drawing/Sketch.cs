using Casewright.Model.Collections;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing;

/// <summary>The pencil: collects items for a scene. Millimetres on paper, y downwards.</summary>
public sealed class Sketch
{
    private readonly List<SceneItem> _items = [];

    /// <summary>What has been drawn, from the back to the front.</summary>
    public ValueList<SceneItem> Items => _items.ToValueList();

    /// <summary>Adds items as they are.</summary>
    public Sketch Add(params IEnumerable<SceneItem> items)
    {
        _items.AddRange(items);
        return this;
    }

    /// <summary>A straight line.</summary>
    public Sketch Line(double x0, double y0, double x1, double y1, Pen pen) => Add(new LineItem(new(x0, y0), new(x1, y1), pen));

    /// <summary>An upright rectangle.</summary>
    public Sketch Rectangle(Box box, Pen? pen, Tone? fill = null) =>
        Add(new PathItem([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], true, pen, fill));

    /// <summary>A closed area.</summary>
    public Sketch Area(IEnumerable<Point> corners, Pen? pen, Tone? fill = null) => Add(new PathItem(corners.ToValueList(), true, pen, fill));

    /// <summary>An open chain of lines.</summary>
    public Sketch Chain(IEnumerable<Point> points, Pen pen) => Add(new PathItem(points.ToValueList(), false, pen, null));

    /// <summary>A circle.</summary>
    public Sketch Circle(double x, double y, double radius, Pen? pen, Tone? fill = null) => Add(new CircleItem(new(x, y), radius, pen, fill));

    /// <summary>A line of text whose baseline passes through the point.</summary>
    public Sketch Text(string text, double x, double y, Lettering lettering, Anchor anchor = Anchor.Start, double turn = 0, bool backed = false) =>
        text.Length == 0 ? this : Add(new TextItem(text, new(x, y), lettering, anchor, turn, backed));

    /// <summary>A line of text whose capitals stand centred on the height <paramref name="y"/>.</summary>
    public Sketch TextCentred(string text, double x, double y, Lettering lettering, Anchor anchor = Anchor.Start, bool backed = false) =>
        Text(text, x, y + (lettering.CapHeight / 2), lettering, anchor, backed: backed);

    /// <summary>Lines of text under each other from the top of a box, wrapped to its width; returns the height used, in millimetres.</summary>
    public double Paragraph(string text, double left, double top, double width, Lettering lettering)
    {
        var y = top;
        foreach (var line in WordWrap.Lines(text, lettering, width))
        {
            Text(line, left, y + Ascent(lettering), lettering);
            y += lettering.LineHeight;
        }

        return y - top;
    }

    /// <summary>Items that belong together under an id and a title.</summary>
    public Sketch Group(string id, string title, string kind, Action<Sketch> draw)
    {
        var inner = new Sketch();
        draw(inner);
        return Add(new GroupItem(id, title, kind, inner.Items));
    }

    /// <summary>Height from the top of a line of text to its baseline, in millimetres.</summary>
    public static double Ascent(Lettering lettering) => lettering.SizeMillimetres * 0.95;

    /// <summary>The drawing as a scene.</summary>
    public Scene ToScene(double width, double height, string title, string description) => new(width, height, title, description, Items);
}

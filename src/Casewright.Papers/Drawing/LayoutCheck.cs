using System.Globalization;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing;

/// <summary>What is wrong with the layout of a scene.</summary>
public enum LayoutFaultKind
{
    /// <summary>An item reaches over the edge of the area it must stay in.</summary>
    Outside,

    /// <summary>Two texts lie over each other.</summary>
    TextsOverlap,

    /// <summary>A drawn line runs through a text.</summary>
    LineThroughText,

    /// <summary>A text is smaller than the papers allow.</summary>
    TooSmall,

    /// <summary>A text holds a character that the typeface cannot show.</summary>
    MissingGlyph,
}

/// <summary>A fault, with the words concerned and where they are.</summary>
public sealed record LayoutFault(LayoutFaultKind Kind, string Text, string Other, Box Where)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{Kind}: '{Text}'{(Other.Length == 0 ? "" : $" and '{Other}'")} at {Where.Left:0.#}, {Where.Top:0.#} mm");
}

/// <summary>
/// Looks a scene over by structure: texts and drawing inside the area, no two texts over each other, no line through a text, nothing
/// too small to read.
/// </summary>
public static class LayoutCheck
{
    /// <summary>Millimetres that the boxes of two texts may share before it counts: less than the white around a letter.</summary>
    public const double Tolerance = 0.1;

    // Letters such as j reach a little left of where their line starts.
    private const double Overhang = 0.3;

    /// <summary>Every fault of a scene; none for a good one.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="area">The area that everything must stay in; the whole scene if not given.</param>
    public static IReadOnlyList<LayoutFault> Faults(Scene scene, Box? area = null)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var texts = scene.Texts.Select(item => (Item: item, Box: item.Bounds)).OrderBy(text => text.Box.Left).ToList();
        return [.. Outside(scene, area ?? scene.Area), .. Unreadable(texts), .. Overlapping(texts), .. Crossed(scene)];
    }

    private static IEnumerable<LayoutFault> Outside(Scene scene, Box area)
    {
        foreach (var item in scene.Leaves)
        {
            if (!area.Contains(item.Bounds, Overhang))
                yield return new(LayoutFaultKind.Outside, Name(item), "", item.Bounds);
        }
    }

    private static IEnumerable<LayoutFault> Unreadable(IEnumerable<(TextItem Item, Box Box)> texts)
    {
        foreach (var (item, box) in texts)
        {
            if (item.Lettering.Size < Lettering.Smallest)
                yield return new(LayoutFaultKind.TooSmall, item.Text, "", box);
            if (Printable.Of(item.Text).Contains('?', StringComparison.Ordinal) && !item.Text.Contains('?', StringComparison.Ordinal))
                yield return new(LayoutFaultKind.MissingGlyph, item.Text, "", box);
        }
    }

    private static IEnumerable<LayoutFault> Overlapping(List<(TextItem Item, Box Box)> texts)
    {
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count && texts[j].Box.Left < texts[i].Box.Right; j++)
            {
                if (texts[i].Box.Overlaps(texts[j].Box, Tolerance))
                    yield return new(LayoutFaultKind.TextsOverlap, texts[i].Item.Text, texts[j].Item.Text, texts[i].Box);
            }
        }
    }

    private static IEnumerable<LayoutFault> Crossed(Scene scene)
    {
        var leaves = scene.Leaves.ToList();
        var texts = leaves.Select((item, order) => (item, order)).Where(x => x.item is TextItem).Select(x => ((TextItem)x.item, x.item.Bounds, x.order)).ToList();
        for (var order = 0; order < leaves.Count; order++)
        {
            foreach (var (from, to) in Strokes(leaves[order]))
            {
                foreach (var (text, box, textOrder) in texts)
                {
                    if (!(text.Backed && textOrder > order) && Crosses(from, to, box.Inset(Tolerance)))
                        yield return new(LayoutFaultKind.LineThroughText, text.Text, "", box);
                }
            }
        }
    }

    private static IEnumerable<(Point From, Point To)> Strokes(SceneItem item) => item switch
    {
        LineItem line when line.Pen.Tone != Tone.Hairline => [(line.From, line.To)],
        PathItem path when path.Pen is { } pen && pen.Tone != Tone.Hairline => PathStrokes(path),
        _ => [],
    };

    private static IEnumerable<(Point From, Point To)> PathStrokes(PathItem path)
    {
        for (var i = 1; i < path.Points.Count; i++)
            yield return (path.Points[i - 1], path.Points[i]);
        if (path.Closed && path.Points.Count > 1)
            yield return (path.Points[^1], path.Points[0]);
    }

    // Liang–Barsky: the part of the stroke inside the box is [enter, leave].
    private static bool Crosses(Point from, Point to, Box box)
    {
        if (box.Width <= 0 || box.Height <= 0)
            return false;
        double enter = 0, leave = 1;
        return Clip(from.X, to.X - from.X, box.Left, box.Right, ref enter, ref leave)
            && Clip(from.Y, to.Y - from.Y, box.Top, box.Bottom, ref enter, ref leave) && leave > enter;
    }

    private static bool Clip(double start, double delta, double low, double high, ref double enter, ref double leave)
    {
        if (Math.Abs(delta) < 1e-9)
            return start > low && start < high;
        var (a, b) = ((low - start) / delta, (high - start) / delta);
        enter = Math.Max(enter, Math.Min(a, b));
        leave = Math.Min(leave, Math.Max(a, b));
        return leave > enter;
    }

    private static string Name(SceneItem item) => item is TextItem text ? text.Text : item.GetType().Name;
}

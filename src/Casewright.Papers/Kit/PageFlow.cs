using Casewright.Model.Collections;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Kit;

/// <summary>Fills pages from top to bottom and starts a new one when the next thing does not fit.</summary>
public sealed class PageFlow
{
    private readonly PageDraft _template;
    private readonly List<PageDraft> _done = [];
    private Sketch _sketch = new();
    private bool _used;

    /// <summary>Starts the first page.</summary>
    /// <param name="template">What every page has in common; its body is ignored. A heading is required.</param>
    public PageFlow(PageDraft template)
    {
        ArgumentNullException.ThrowIfNull(template);
        _template = template;
        Body = template.Format.Body(template.Heading?.Height ?? 0);
        Y = Body.Top;
    }

    /// <summary>The box that content goes into, alike on all pages.</summary>
    public Box Body { get; }

    /// <summary>Where the next thing goes, in millimetres from the top of the page.</summary>
    public double Y { get; private set; }

    /// <summary>Height left on this page.</summary>
    public double Room => Body.Bottom - Y;

    /// <summary>Starts a new page unless this height is left. Returns whether a new page was started.</summary>
    public bool Ensure(double height)
    {
        if (height <= Room + 0.001 || !_used)
            return false;
        NewPage();
        return true;
    }

    /// <summary>Ends this page.</summary>
    public void NewPage()
    {
        _done.Add(_template with { Body = _sketch.Items, Heading = HeadingOf(_done.Count) });
        _sketch = new();
        _used = false;
        Y = Body.Top;
    }

    /// <summary>Draws something of a known height across the page.</summary>
    public void Draw(double height, Action<Sketch, Box> draw)
    {
        Ensure(height);
        draw(_sketch, new(Body.Left, Y, Body.Width, height));
        Y += height;
        _used = true;
    }

    /// <summary>Leaves a gap, unless at the top of a page.</summary>
    public void Gap(double height)
    {
        if (_used)
            Y = Math.Min(Y + height, Body.Bottom);
    }

    /// <summary>A heading inside the page, kept together with <paramref name="follows"/> millimetres of what comes next.</summary>
    public void Heading(string text, double follows = 14)
    {
        var lettering = Lettering.Heading;
        Gap(3);
        Ensure(lettering.LineHeight + 1.5 + follows);
        Draw(lettering.LineHeight + 1.5, (sketch, box) =>
            sketch.Text(Fitting.Cut(text, lettering, box.Width), box.Left, box.Top + Sketch.Ascent(lettering), lettering));
    }

    /// <summary>Running text over the width of the page, line by line.</summary>
    public void Paragraph(string text, Lettering? lettering = null, double indent = 0)
    {
        var style = lettering ?? Lettering.Body;
        foreach (var line in WordWrap.Lines(text, style, Body.Width - indent))
            Draw(style.LineHeight, (sketch, box) => sketch.Text(line, box.Left + indent, box.Top + Sketch.Ascent(style), style));
    }

    /// <summary>The pages so far; at least one.</summary>
    public ValueList<PageDraft> Finish()
    {
        if (_used || _done.Count == 0)
            NewPage();
        return _done.ToValueList();
    }

    private PageHeading? HeadingOf(int index) => index == 0 || _template.Heading is not { } heading
        ? _template.Heading
        : heading with { Subtitle = heading.Subtitle.Length == 0 ? "continued" : heading.Subtitle + " · continued" };
}

using System.Globalization;
using System.Text;
using System.Xml;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Drawing.Rendering;

/// <summary>How an SVG is written.</summary>
/// <param name="Palette">Colours.</param>
/// <param name="Variables">
/// Whether colours are written as style-sheet variables (--ink, --chalk ...) with the palette as fallback, for web pages with themes.
/// </param>
/// <param name="FontFolder">
/// Where the files of the typefaces lie (<see cref="FontFace.FileName"/>), as a relative URL without a slash at its end; null where the page
/// that shows the drawing has them.
/// </param>
public sealed record SvgOptions(Palette Palette, bool Variables = false, string? FontFolder = null)
{
    /// <summary>For a file of its own, with the typefaces in a folder beside it: seventy drawings share them.</summary>
    public static SvgOptions File { get; } = new(Palette.Print, FontFolder: "fonts");

    /// <summary>For a place in a web page that has the typefaces and the variables.</summary>
    public static SvgOptions Page { get; } = new(Palette.Light, Variables: true);
}

/// <summary>Writes a scene as SVG 1.1: real text in Barlow, groups with id, class and title.</summary>
public sealed class SvgRenderer
{
    private readonly SvgOptions _options;
    private readonly XmlWriter _xml;

    private SvgRenderer(SvgOptions options, XmlWriter xml)
    {
        _options = options;
        _xml = xml;
    }

    /// <summary>The SVG as text.</summary>
    public static string ToText(Scene scene, SvgOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var text = new StringBuilder();
        var settings = new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = " ", NewLineChars = "\n" };
        using (var xml = XmlWriter.Create(text, settings))
            new SvgRenderer(options ?? SvgOptions.File, xml).Write(scene);
        return text.Append('\n').ToString();
    }

    private void Write(Scene scene)
    {
        _xml.WriteStartElement("svg", "http://www.w3.org/2000/svg");
        Attribute("width", Number(scene.Width) + "mm");
        Attribute("height", Number(scene.Height) + "mm");
        Attribute("viewBox", $"0 0 {Number(scene.Width)} {Number(scene.Height)}");
        Attribute("role", "img");
        Attribute("aria-label", scene.Title);
        _xml.WriteElementString("title", Clean(scene.Title));
        _xml.WriteElementString("desc", Clean(scene.Description));
        if (_options.FontFolder is { } folder)
            WriteFonts(scene, folder);
        if (!_options.Variables)
            WriteGround(scene);
        foreach (var item in scene.Items)
            Write(item);
        _xml.WriteEndElement();
    }

    private void WriteGround(Scene scene)
    {
        _xml.WriteStartElement("rect");
        Attribute("width", Number(scene.Width));
        Attribute("height", Number(scene.Height));
        Attribute("fill", Colour(Tone.Paper));
        _xml.WriteEndElement();
    }

    private void WriteFonts(Scene scene, string folder)
    {
        var used = scene.Texts.Select(text => FontFace.Of(text.Lettering.Family, text.Lettering.Weight)).Distinct()
            .OrderBy(face => face.Family).ThenBy(face => face.Weight);
        var css = new StringBuilder("\n");
        foreach (var face in used)
        {
            css.Append(CultureInfo.InvariantCulture, $"@font-face{{font-family:'{face.FamilyName}';font-weight:{(int)face.Weight};");
            css.Append(CultureInfo.InvariantCulture, $"src:url('{folder}/{face.FileName}') format('truetype')}}\n");
        }

        _xml.WriteElementString("style", css.ToString());
    }

    private void Write(SceneItem item)
    {
        switch (item)
        {
            case GroupItem group:
                WriteGroup(group);
                break;
            case LineItem line:
                WriteLine(line);
                break;
            case PathItem path:
                WritePath(path);
                break;
            case CircleItem circle:
                WriteCircle(circle);
                break;
            case TextItem text:
                WriteText(text);
                break;
            case QrItem code:
                WriteCode(code);
                break;
            default:
                throw new InvalidOperationException($"No SVG for {item.GetType().Name}.");
        }
    }

    private void WriteGroup(GroupItem group)
    {
        _xml.WriteStartElement("g");
        Attribute("id", group.Id);
        Attribute("class", group.Kind);
        _xml.WriteElementString("title", Clean(group.Title));
        foreach (var item in group.Items)
            Write(item);
        _xml.WriteEndElement();
    }

    private void WriteLine(LineItem line)
    {
        _xml.WriteStartElement("line");
        Attribute("x1", Number(line.From.X));
        Attribute("y1", Number(line.From.Y));
        Attribute("x2", Number(line.To.X));
        Attribute("y2", Number(line.To.Y));
        Stroke(line.Pen);
        _xml.WriteEndElement();
    }

    private void WritePath(PathItem path)
    {
        _xml.WriteStartElement(path.Closed ? "polygon" : "polyline");
        Attribute("points", string.Join(' ', path.Points.Select(p => Number(p.X) + "," + Number(p.Y))));
        Fill(path.Fill);
        Stroke(path.Pen);
        _xml.WriteEndElement();
    }

    private void WriteCircle(CircleItem circle)
    {
        _xml.WriteStartElement("circle");
        Attribute("cx", Number(circle.Centre.X));
        Attribute("cy", Number(circle.Centre.Y));
        Attribute("r", Number(circle.Radius));
        Fill(circle.Fill);
        Stroke(circle.Pen);
        _xml.WriteEndElement();
    }

    private void WriteCode(QrItem code)
    {
        _xml.WriteStartElement("path");
        var data = QrModules.Rectangles(code)
            .Select(box => $"M{Number(box.Left)} {Number(box.Top)}h{Number(box.Width)}v{Number(box.Height)}h{Number(-box.Width)}z");
        Attribute("d", string.Concat(data));
        Fill(Tone.Ink);
        Attribute("shape-rendering", "crispEdges");
        _xml.WriteEndElement();
    }

    private void WriteText(TextItem item)
    {
        var layout = item.Layout;
        if (item.Backed)
            WritePath(new(item.CornersOf(layout, TextItem.Backing), true, null, Tone.Sheet));
        _xml.WriteStartElement("text");
        Attribute("font-family", $"'{FontFace.Of(item.Lettering.Family, item.Lettering.Weight).FamilyName}', sans-serif");
        Attribute("font-weight", ((int)item.Lettering.Weight).ToString(CultureInfo.InvariantCulture));
        Attribute("font-size", Number(item.Lettering.SizeMillimetres));
        Fill(item.Lettering.Tone);
        if (item.Turn != 0)
            Attribute("transform", $"rotate({Number(item.Turn)} {Number(item.At.X)} {Number(item.At.Y)})");
        if (FontFace.Of(item.Lettering.Family, item.Lettering.Weight).IsTabular)
            Attribute("style", "font-variant-numeric:tabular-nums");
        if (layout.Pieces is [var only])
            WriteRunning(item, only);
        else
            WritePieces(item, layout);
        _xml.WriteEndElement();
    }

    private void WriteRunning(TextItem item, TextPiece piece)
    {
        if (item.Anchor != Anchor.Start)
            Attribute("text-anchor", item.Anchor == Anchor.Middle ? "middle" : "end");
        Attribute("x", Number(item.At.X));
        Attribute("y", Number(item.At.Y));
        _xml.WriteString(Clean(piece.Text));
    }

    private void WritePieces(TextItem item, TextLayout layout)
    {
        var start = item.At.X + item.StartOf(layout);
        foreach (var piece in layout.Pieces)
        {
            _xml.WriteStartElement("tspan");
            Attribute("x", Number(start + piece.X));
            Attribute("y", Number(item.At.Y - piece.Rise));
            if (Math.Abs(piece.Size - item.Lettering.SizeMillimetres) > 1e-9)
                Attribute("font-size", Number(piece.Size));
            _xml.WriteString(Clean(piece.Text));
            _xml.WriteEndElement();
        }
    }

    private void Fill(Tone? tone) => Attribute("fill", tone is { } value ? Colour(value) : "none");

    private void Stroke(Pen? pen)
    {
        if (pen is null)
            return;
        Attribute("stroke", Colour(pen.Tone));
        Attribute("stroke-width", Number(pen.Weight));
        if (pen.Pattern.Count > 0)
            Attribute("stroke-dasharray", string.Join(' ', pen.Pattern.Select(Number)));
    }

    private string Colour(Tone tone) => _options.Variables
        ? $"var(--{VariableName(tone)}, {_options.Palette.Hex(tone)})"
        : _options.Palette.Hex(tone);

    private static string VariableName(Tone tone) => tone == Tone.WoodEdge ? "wood-edge" : tone.ToString().ToLowerInvariant();

    private void Attribute(string name, string value) => _xml.WriteAttributeString(name, Clean(value));

    private static string Number(double value)
    {
        var rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static string Clean(string text) => string.Concat(text.EnumerateRunes()
        .Where(rune => rune.Value is '\t' or '\n' || (rune.Value >= ' ' && rune.Value is not (0xFFFE or 0xFFFF))).Select(rune => rune.ToString()));
}

using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using HarfBuzzSharp;
using SkiaSharp;

namespace Casewright.Papers.Drawing.Text;

/// <summary>One embedded font file: shapes text (with kerning, without ligatures) and gives the file itself.</summary>
public sealed class FontFace
{
    private static readonly ConcurrentDictionary<(FontFamily, FontWeight), FontFace> Loaded = new();

    private static readonly Feature[] WordFeatures = [Feature.Parse("kern"), Feature.Parse("-liga"), Feature.Parse("-clig"), Feature.Parse("-calt")];
    private static readonly Feature[] FigureFeatures = [.. WordFeatures, Feature.Parse("tnum")];

    private const int MostKept = 20_000;

    private readonly ConcurrentDictionary<string, ShapedText> _shaped = new(StringComparer.Ordinal);
    private readonly byte[] _file;
    private readonly Lazy<Font> _font;
    private readonly int _unitsPerEm;
    private readonly Lazy<SKTypeface> _typeface;

    private FontFace(FontFamily family, FontWeight weight)
    {
        Family = family;
        Weight = weight;
        _file = ReadResource(FileName);
        _typeface = new(() => SKTypeface.FromData(SKData.CreateCopy(IsTabular ? WithTabularFigures() : _file)));
        var face = new Face(PinnedBlob(_file), 0);
        face.MakeImmutable();
        _unitsPerEm = face.UnitsPerEm;
        _font = new(() => ScaledTo(_unitsPerEm, face));
    }

    /// <summary>Family of the face.</summary>
    public FontFamily Family { get; }

    /// <summary>Weight of the face; the nearest embedded one to what was asked.</summary>
    public FontWeight Weight { get; }

    /// <summary>Whether every figure takes the same width, so that columns line up: so in Barlow Condensed, which sets numbers.</summary>
    public bool IsTabular => Family == FontFamily.BarlowCondensed;

    /// <summary>The faces that are embedded.</summary>
    public static IReadOnlyList<(FontFamily Family, FontWeight Weight)> Embedded { get; } =
    [
        (FontFamily.Barlow, FontWeight.Regular), (FontFamily.Barlow, FontWeight.Medium), (FontFamily.Barlow, FontWeight.SemiBold),
        (FontFamily.Barlow, FontWeight.Bold), (FontFamily.BarlowCondensed, FontWeight.Medium), (FontFamily.BarlowCondensed, FontWeight.SemiBold),
        (FontFamily.BarlowCondensed, FontWeight.Bold),
    ];

    /// <summary>The family's name as style sheets and PDF readers know it.</summary>
    public string FamilyName => Family == FontFamily.Barlow ? "Barlow" : "Barlow Condensed";

    /// <summary>Name of its TrueType file.</summary>
    public string FileName => $"{Family}_{(int)Weight}{Weight}.ttf";

    internal SKTypeface Typeface => _typeface.Value;

    /// <summary>The face for a family and weight; Barlow Condensed starts at medium.</summary>
    public static FontFace Of(FontFamily family, FontWeight weight)
    {
        if (family == FontFamily.BarlowCondensed && weight == FontWeight.Regular)
            weight = FontWeight.Medium;
        return Loaded.GetOrAdd((family, weight), key => new FontFace(key.Item1, key.Item2));
    }

    /// <summary>The TrueType file, for web pages that show the same type.</summary>
    public ReadOnlyMemory<byte> File => _file;

    /// <summary>The text of the fonts' licence (SIL Open Font License 1.1).</summary>
    public static string Licence => System.Text.Encoding.UTF8.GetString(ReadResource("LICENSE_FONT"));

    /// <summary>Whether the face has a glyph for a character.</summary>
    public bool Covers(System.Text.Rune character) => _font.Value.TryGetNominalGlyph((uint)character.Value, out _);

    /// <summary>Glyphs and their places for a text, in ems. The same words come up on every page, so they are kept, up to a bound.</summary>
    internal ShapedText Shape(string text)
    {
        if (_shaped.TryGetValue(text, out var known))
            return known;
        var shaped = ShapeAnew(text);
        if (_shaped.Count < MostKept)
            _shaped.TryAdd(text, shaped);
        return shaped;
    }

    private ShapedText ShapeAnew(string text)
    {
        using var buffer = new HarfBuzzSharp.Buffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        buffer.Direction = Direction.LeftToRight;
        _font.Value.Shape(buffer, IsTabular ? FigureFeatures : WordFeatures);
        return Place(buffer.GlyphInfos, buffer.GlyphPositions);
    }

    private byte[] WithTabularFigures()
    {
        var map = new List<(int, int)>();
        for (var character = 1; character < 0x3000; character++)
        {
            if (character is >= '0' and <= '9')
                map.Add((character, Shape(((char)character).ToString()).Glyphs[0]));
            else if (_font.Value.TryGetNominalGlyph(character, out var glyph))
                map.Add((character, (int)glyph));
        }

        return TabularCmap.Replace(_file, map);
    }

    private ShapedText Place(GlyphInfo[] infos, GlyphPosition[] positions)
    {
        var glyphs = new ushort[infos.Length];
        var offsets = new double[infos.Length];
        double pen = 0, left = double.PositiveInfinity, right = double.NegativeInfinity, rise = 0, fall = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            glyphs[i] = (ushort)infos[i].Codepoint;
            offsets[i] = pen + Ems(positions[i].XOffset);
            if (_font.Value.TryGetGlyphExtents(infos[i].Codepoint, out var extents) && extents.Width != 0)
            {
                left = Math.Min(left, offsets[i] + Ems(extents.XBearing));
                right = Math.Max(right, offsets[i] + Ems(extents.XBearing + extents.Width));
                rise = Math.Max(rise, Ems(extents.YBearing));
                fall = Math.Max(fall, -Ems(extents.YBearing + extents.Height));
            }

            pen += Ems(positions[i].XAdvance);
        }

        return double.IsInfinity(left) ? new(glyphs, offsets, pen, 0, 0, 0, 0) : new(glyphs, offsets, pen, left, right, rise, fall);
    }

    private static Font ScaledTo(int unitsPerEm, Face face)
    {
        var font = new Font(face);
        font.SetScale(unitsPerEm, unitsPerEm);
        font.SetFunctionsOpenType();
        return font;
    }

    private double Ems(int units) => units / (double)_unitsPerEm;

    private static Blob PinnedBlob(byte[] bytes)
    {
        // The faces live as long as the program: the pin is never released.
        var pin = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        return new Blob(pin.AddrOfPinnedObject(), bytes.Length, MemoryMode.ReadOnly);
    }

    private static byte[] ReadResource(string name)
    {
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream("fonts/" + name)
            ?? throw new InvalidOperationException($"The font {name} is not embedded in the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}

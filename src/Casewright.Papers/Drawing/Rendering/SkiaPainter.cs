using Casewright.Papers.Drawing.Text;
using SkiaSharp;

namespace Casewright.Papers.Drawing.Rendering;

/// <summary>Paints a scene on a Skia canvas whose unit is the millimetre.</summary>
internal static class SkiaPainter
{
    public static void Paint(SKCanvas canvas, Scene scene, Palette palette)
    {
        foreach (var item in scene.Leaves)
            Paint(canvas, item, palette);
    }

    private static void Paint(SKCanvas canvas, SceneItem item, Palette palette)
    {
        switch (item)
        {
            case LineItem line:
                using (var paint = Stroke(line.Pen, palette))
                    canvas.DrawLine(At(line.From), At(line.To), paint);
                break;
            case PathItem path:
                PaintPath(canvas, path, palette);
                break;
            case CircleItem circle:
                PaintCircle(canvas, circle, palette);
                break;
            case TextItem text:
                PaintText(canvas, text, palette);
                break;
            case QrItem code:
                PaintCode(canvas, code, palette);
                break;
            default:
                throw new InvalidOperationException($"No painter for {item.GetType().Name}.");
        }
    }

    private static void PaintPath(SKCanvas canvas, PathItem item, Palette palette)
    {
        using var path = PathOf(item.Points, item.Closed);
        Draw(item.Fill, item.Pen, palette, paint => canvas.DrawPath(path, paint));
    }

    private static void PaintCircle(SKCanvas canvas, CircleItem item, Palette palette) =>
        Draw(item.Fill, item.Pen, palette, paint => canvas.DrawCircle(At(item.Centre), (float)item.Radius, paint));

    private static void PaintText(SKCanvas canvas, TextItem item, Palette palette)
    {
        var layout = item.Layout;
        if (item.Backed)
        {
            using var ground = PathOf(item.CornersOf(layout, TextItem.Backing), true);
            using var white = Filled(Tone.Sheet, palette);
            canvas.DrawPath(ground, white);
        }

        using var paint = Filled(item.Lettering.Tone, palette);
        canvas.Save();
        canvas.Translate(At(item.At));
        canvas.RotateDegrees((float)item.Turn);
        canvas.Translate((float)item.StartOf(layout), 0);
        var face = FontFace.Of(item.Lettering.Family, item.Lettering.Weight);
        foreach (var piece in layout.Pieces)
            PaintPiece(canvas, face, piece, paint);
        canvas.Restore();
    }

    private static void PaintPiece(SKCanvas canvas, FontFace face, TextPiece piece, SKPaint paint)
    {
        using var font = new SKFont(face.Typeface, (float)piece.Size)
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
        };
        using var builder = new SKTextBlobBuilder();
        builder.AddHorizontalRun(piece.Glyphs, font, [.. piece.GlyphStarts.Select(x => (float)x)], 0);
        using var blob = builder.Build();
        if (blob is not null)
            canvas.DrawText(blob, (float)piece.X, (float)-piece.Rise, paint);
    }

    private static void PaintCode(SKCanvas canvas, QrItem item, Palette palette)
    {
        using var path = new SKPathBuilder();
        foreach (var box in QrModules.Rectangles(item))
            path.AddRect(new((float)box.Left, (float)box.Top, (float)box.Right, (float)box.Bottom));
        using var outline = path.Detach();
        using var paint = Filled(Tone.Ink, palette);
        paint.IsAntialias = false;
        canvas.DrawPath(outline, paint);
    }

    private static void Draw(Tone? fill, Pen? pen, Palette palette, Action<SKPaint> draw)
    {
        if (fill is { } tone)
        {
            using var paint = Filled(tone, palette);
            draw(paint);
        }

        if (pen is not null)
        {
            using var paint = Stroke(pen, palette);
            draw(paint);
        }
    }

    private static SKPath PathOf(IReadOnlyList<Point> points, bool closed)
    {
        using var builder = new SKPathBuilder();
        builder.AddPoly([.. points.Select(At)], closed);
        return builder.Detach();
    }

    private static SKPaint Filled(Tone tone, Palette palette) => new() { Color = Colour(tone, palette), IsAntialias = true, Style = SKPaintStyle.Fill };

    private static SKPaint Stroke(Pen pen, Palette palette)
    {
        var paint = new SKPaint
        {
            Color = Colour(pen.Tone, palette),
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)pen.Weight,
            StrokeJoin = SKStrokeJoin.Miter,
        };
        if (pen.Pattern.Count > 0)
            paint.PathEffect = SKPathEffect.CreateDash([.. pen.Pattern.Select(x => (float)x)], 0);
        return paint;
    }

    private static SKColor Colour(Tone tone, Palette palette) => new(0xFF000000 | palette.Rgb(tone));

    private static SKPoint At(Point point) => new((float)point.X, (float)point.Y);
}

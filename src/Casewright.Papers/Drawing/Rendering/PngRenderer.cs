using SkiaSharp;

namespace Casewright.Papers.Drawing.Rendering;

/// <summary>Writes a scene as a picture.</summary>
public static class PngRenderer
{
    /// <summary>The PNG file.</summary>
    /// <param name="scene">What to show.</param>
    /// <param name="dotsPerInch">Dots in 25.4 mm, 20 to 1200.</param>
    /// <param name="palette">Colours; print if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is out of range.</exception>
    public static byte[] ToBytes(Scene scene, double dotsPerInch = 144, Palette? palette = null)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentOutOfRangeException.ThrowIfLessThan(dotsPerInch, 20);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dotsPerInch, 1200);
        palette ??= Palette.Print;
        var scale = dotsPerInch / 25.4;
        var info = new SKImageInfo((int)Math.Ceiling(scene.Width * scale), (int)Math.Ceiling(scene.Height * scale), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(info);
        surface.Canvas.Clear(new SKColor(0xFF000000 | palette.Rgb(Tone.Paper)));
        surface.Canvas.Scale((float)scale);
        SkiaPainter.Paint(surface.Canvas, scene, palette);
        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}

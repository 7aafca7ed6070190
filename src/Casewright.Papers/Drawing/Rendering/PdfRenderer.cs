using Casewright.Papers.Drawing.Text;
using SkiaSharp;

namespace Casewright.Papers.Drawing.Rendering;

/// <summary>What a PDF says about itself. The time is given, never read from the clock, so that the same plan gives the same file.</summary>
public sealed record PdfDetails(string Title, string Subject, DateTime Created);

/// <summary>Writes scenes as the pages of a PDF: vector lines, embedded fonts, text that can be selected.</summary>
public static class PdfRenderer
{
    private const float PointsPerMillimetre = 72f / 25.4f;

    /// <summary>Writes one page a scene, each in its own size.</summary>
    /// <exception cref="ArgumentException">There is no page.</exception>
    public static void Write(IReadOnlyList<Scene> pages, PdfDetails details, Stream output)
    {
        ArgumentNullException.ThrowIfNull(pages);
        if (pages.Count == 0)
            throw new ArgumentException("A PDF needs at least one page.", nameof(pages));
        var metadata = new SKDocumentPdfMetadata(300f)
        {
            Title = Printable.Of(details.Title),
            Subject = Printable.Of(details.Subject),
            Creator = "Casewright",
            Producer = "Casewright",
            Creation = DateTime.SpecifyKind(details.Created, DateTimeKind.Utc),
            Modified = DateTime.SpecifyKind(details.Created, DateTimeKind.Utc),
        };
        using var document = SKDocument.CreatePdf(output, metadata);
        foreach (var page in pages)
            WritePage(document, page);
        document.Close();
    }

    /// <summary>The PDF as bytes.</summary>
    public static byte[] ToBytes(IReadOnlyList<Scene> pages, PdfDetails details)
    {
        using var stream = new MemoryStream();
        Write(pages, details, stream);
        return stream.ToArray();
    }

    private static void WritePage(SKDocument document, Scene page)
    {
        var canvas = document.BeginPage((float)page.Width * PointsPerMillimetre, (float)page.Height * PointsPerMillimetre);
        canvas.Scale(PointsPerMillimetre);
        SkiaPainter.Paint(canvas, page, Palette.Print);
        document.EndPage();
    }
}

using System.Text;
using Casewright.Papers.Documents;
using Casewright.Papers.Kit;
using UglyToad.PdfPig;

namespace Casewright.Papers.Tests.Documents;

/// <summary>The packet as another reader sees it.</summary>
public class PacketPdfTests
{
    // ISO 216: A4 is 210 × 297 mm; ANSI Letter is 8.5 × 11 in = 612 × 792 points.
    [Theory]
    [InlineData(PaperSize.A4, 595.28, 841.89)]
    [InlineData(PaperSize.Letter, 612, 792)]
    public void PagesHaveTheirSizeAndTheirTextReadsBack(PaperSize size, double shortSide, double longSide)
    {
        var packet = Packet.Of(HandPlan.Of(cases: 2), new(size, new(2026, 1, 1)));
        var bytes = Bytes(packet);
        using var pdf = PdfDocument.Open(bytes);
        Assert.Equal(packet.Pages.Count, pdf.NumberOfPages);
        foreach (var page in packet.Pages)
        {
            var read = pdf.GetPage(page.Number);
            Assert.Equal(shortSide, Math.Min(read.Width, read.Height), 0.3);
            Assert.Equal(longSide, Math.Max(read.Width, read.Height), 0.3);
            Assert.All(read.Letters, letter => Assert.Contains("Barlow", letter.FontName, StringComparison.Ordinal));
            AssertTextReadsBack(page, read);
        }

        var raw = Encoding.Latin1.GetString(bytes);
        Assert.Contains("/FontFile2", raw, StringComparison.Ordinal);
        Assert.DoesNotContain("/Type3", raw, StringComparison.Ordinal);
    }

    private static void AssertTextReadsBack(Casewright.Papers.Kit.Page page, UglyToad.PdfPig.Content.Page read)
    {
        var all = Squeezed(string.Concat(read.Letters.Select(letter => letter.Value)));
        foreach (var text in page.Scene.Texts)
            Assert.Contains(Squeezed(Casewright.Papers.Drawing.Text.Printable.Of(text.Text)), all, StringComparison.Ordinal);
    }

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);

    private static byte[] Bytes(Packet packet)
    {
        using var stream = new MemoryStream();
        packet.WritePdf(stream);
        return stream.ToArray();
    }
}

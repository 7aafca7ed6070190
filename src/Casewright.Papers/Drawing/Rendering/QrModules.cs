using QRCoder;

namespace Casewright.Papers.Drawing.Rendering;

/// <summary>The dark squares of a QR code, joined into rows of rectangles.</summary>
internal static class QrModules
{
    /// <summary>Rectangles in millimetres; the quiet zone of four modules is part of the side.</summary>
    public static IEnumerable<Box> Rectangles(QrItem item)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(item.Content, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var matrix = data.ModuleMatrix;
        var size = item.Side / matrix.Count;
        for (var row = 0; row < matrix.Count; row++)
        {
            for (var column = 0; column < matrix.Count; column++)
            {
                var first = column;
                while (column < matrix.Count && matrix[row][column])
                    column++;
                if (column > first)
                    yield return new(item.Corner.X + (first * size), item.Corner.Y + (row * size), (column - first) * size, size);
            }
        }
    }
}

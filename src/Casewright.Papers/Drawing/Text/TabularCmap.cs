using System.Buffers.Binary;

namespace Casewright.Papers.Drawing.Text;

/// <summary>
/// Gives a TrueType font another character map. PDF readers find the text behind a glyph through that map; the tabular figures of a
/// font are alternates outside it, so a font that is always set with them maps its figures straight to them, and their text can be
/// selected, copied and searched.
/// </summary>
internal static class TabularCmap
{
    private const int HeaderSize = 12;
    private const int RecordSize = 16;

    /// <summary>The font with a character map of exactly these characters.</summary>
    public static byte[] Replace(byte[] font, IReadOnlyList<(int Character, int Glyph)> map)
    {
        var cmap = Cmap(map);
        var result = new byte[Aligned(font.Length) + Aligned(cmap.Length)];
        font.CopyTo(result, 0);
        var start = Aligned(font.Length);
        cmap.CopyTo(result, start);
        var record = Record(font, "cmap"u8);
        BinaryPrimitives.WriteUInt32BigEndian(result.AsSpan(record + 4), Checksum(result.AsSpan(start, Aligned(cmap.Length))));
        BinaryPrimitives.WriteInt32BigEndian(result.AsSpan(record + 8), start);
        BinaryPrimitives.WriteInt32BigEndian(result.AsSpan(record + 12), cmap.Length);
        return result;
    }

    private static int Record(ReadOnlySpan<byte> font, ReadOnlySpan<byte> tag)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(font[4..]);
        for (var i = 0; i < count; i++)
        {
            var at = HeaderSize + (i * RecordSize);
            if (font.Slice(at, 4).SequenceEqual(tag))
                return at;
        }

        throw new InvalidOperationException("The font has no character map.");
    }

    // OpenType 'cmap': version 0, one record (platform 3, encoding 10), subtable format 12 with one group a character.
    private static byte[] Cmap(IReadOnlyList<(int Character, int Glyph)> map)
    {
        const int Offset = 12;
        var length = 16 + (map.Count * 12);
        var bytes = new byte[Offset + length];
        var span = bytes.AsSpan();
        BinaryPrimitives.WriteUInt16BigEndian(span[2..], 1);
        BinaryPrimitives.WriteUInt16BigEndian(span[4..], 3);
        BinaryPrimitives.WriteUInt16BigEndian(span[6..], 10);
        BinaryPrimitives.WriteInt32BigEndian(span[8..], Offset);
        var table = span[Offset..];
        BinaryPrimitives.WriteUInt16BigEndian(table, 12);
        BinaryPrimitives.WriteInt32BigEndian(table[4..], length);
        BinaryPrimitives.WriteInt32BigEndian(table[12..], map.Count);
        for (var i = 0; i < map.Count; i++)
        {
            var group = table[(16 + (i * 12))..];
            BinaryPrimitives.WriteInt32BigEndian(group, map[i].Character);
            BinaryPrimitives.WriteInt32BigEndian(group[4..], map[i].Character);
            BinaryPrimitives.WriteInt32BigEndian(group[8..], map[i].Glyph);
        }

        return bytes;
    }

    private static uint Checksum(ReadOnlySpan<byte> table)
    {
        uint sum = 0;
        for (var i = 0; i + 4 <= table.Length; i += 4)
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(table[i..]));
        return sum;
    }

    private static int Aligned(int length) => (length + 3) & ~3;
}

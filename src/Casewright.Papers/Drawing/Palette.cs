using System.Globalization;

namespace Casewright.Papers.Drawing;

/// <summary>The colours of the tones for one use.</summary>
public sealed class Palette
{
    private readonly uint[] _colours;

    private Palette(string name, params uint[] colours)
    {
        Name = name;
        _colours = colours;
    }

    /// <summary>Black on white, for a printer.</summary>
    public static Palette Print { get; } = new(
        "print", 0x000000, 0x444B50, 0xC4C4C4, 0x17557F, 0xFFFFFF, 0xFFFFFF, 0xF4F0E6, 0xE6DEC9, 0xA8261C, 0x8A5A00, 0x2B6540);

    /// <summary>Graphite on warm paper, for a light screen.</summary>
    public static Palette Light { get; } = new(
        "light", 0x1D272C, 0x5D686E, 0xCFC9BB, 0x17557F, 0xF5F2EA, 0xFFFFFF, 0xE9DFC8, 0xDDCFAF, 0xA8261C, 0x8A5A00, 0x2B6540);

    /// <summary>Paper on ink, for a dark screen.</summary>
    public static Palette Dark { get; } = new(
        "dark", 0xF5F2EA, 0xB9C0C3, 0x4A555A, 0x7FB6DA, 0x1D272C, 0x263238, 0x4A4535, 0x5B5440, 0xF0938B, 0xE0B25A, 0x8CC9A1);

    /// <summary>Name in lower case: print, light or dark.</summary>
    public string Name { get; }

    /// <summary>The colour of a tone as 0xRRGGBB.</summary>
    public uint Rgb(Tone tone) => _colours[(int)tone];

    /// <summary>The colour of a tone as #RRGGBB.</summary>
    public string Hex(Tone tone) => string.Create(CultureInfo.InvariantCulture, $"#{Rgb(tone):X6}");
}

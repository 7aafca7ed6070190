namespace Casewright.Papers.Drawing.Text;

/// <summary>Glyphs of a text with their places and the extent of their ink, in ems from the start of the baseline.</summary>
/// <param name="Glyphs">Glyph numbers in the font.</param>
/// <param name="Offsets">X of each glyph.</param>
/// <param name="Advance">Where the next text would start.</param>
/// <param name="Left">Left end of the ink.</param>
/// <param name="Right">Right end of the ink.</param>
/// <param name="Rise">Ink above the baseline.</param>
/// <param name="Fall">Ink below the baseline.</param>
internal sealed record ShapedText(ushort[] Glyphs, double[] Offsets, double Advance, double Left, double Right, double Rise, double Fall);

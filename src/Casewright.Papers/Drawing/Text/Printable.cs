using System.Text;

namespace Casewright.Papers.Drawing.Text;

/// <summary>Writes what the typefaces cannot show in characters that they can, so that no paper has an empty box for a letter.</summary>
public static class Printable
{
    private static readonly Dictionary<int, string> Spelled = new()
    {
        { 0x2002, " " },
        { 0x2003, " " },
        { 0x2009, " " },
        { 0x200A, " " },
        { 0x202F, " " },
        { 0x00A0, " " },
        { 0x200B, "" },
        { 0xFEFF, "" },
        { '\t', " " },
        { '\r', "" },
        { '\n', " " },
        { '→', "to" },
        { '←', "from" },
        { '⇒', "so" },
        { 'α', "alpha" },
        { 'β', "beta" },
        { 'γ', "gamma" },
        { 'δ', "delta" },
        { 'θ', "theta" },
        { 'λ', "lambda" },
        { 'ρ', "rho" },
        { 'σ', "sigma" },
        { 'τ', "tau" },
        { 'φ', "phi" },
        { 'ψ', "psi" },
        { 'ξ', "xi" },
        { 'Σ', "∑" },
        { '₀', "0" },
        { '₁', "1" },
        { '₂', "2" },
        { '₆', "6" },
        { '⌈', "ceil(" },
        { '⌉', ")" },
        { '⌊', "floor(" },
        { '⌋', ")" },
        { '∛', "cube root " },
        { '⅓', "1⁄3" },
        { '⅔', "2⁄3" },
        { '⁰', "^0" },
        { '⁴', "^4" },
        { '⁵', "^5" },
        { '⁻', "^-" },
        { '⌀', "dia. " },
        { '…', "..." },
        { 0x2010, "-" },
        { 0x2011, "-" },
    };

    /// <summary>The text with every character that Barlow lacks spelled out, or as a question mark where no spelling is known.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.All(IsPlain) ? text : Spell(text);
    }

    private static bool IsPlain(char c) => c is >= ' ' and <= '~';

    private static string Spell(string text)
    {
        var result = new StringBuilder();
        var face = FontFace.Of(FontFamily.Barlow, FontWeight.Regular);
        foreach (var rune in text.Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            if (Spelled.TryGetValue(rune.Value, out var spelled))
                result.Append(spelled);
            else if (face.Covers(rune))
                result.Append(rune.ToString());
            else if (!Rune.IsControl(rune))
                result.Append('?');
        }

        return result.ToString();
    }
}

namespace Casewright.Papers.Kit;

/// <summary>Sizes of paper.</summary>
public enum PaperSize
{
    /// <summary>8½ × 11 in (215.9 × 279.4 mm), ANSI/ASME Y14.1 size A.</summary>
    Letter,

    /// <summary>210 × 297 mm, ISO 216.</summary>
    A4,
}

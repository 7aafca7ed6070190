using Casewright.Model.Measure;

namespace Casewright.Model.Design;

/// <summary>Depths of joints, working gaps and hole rows of a run; defaults are common practice, no source.</summary>
public sealed record Joinery
{
    /// <summary>Whether tops lie over the sides rather than between them.</summary>
    public bool TopOverSides { get; init; }

    /// <summary>Depth of the dado that carries fixed panels; 0 for butt joints. At most a third of the thickness.</summary>
    public required Length DadoDepth { get; init; }

    /// <summary>Depth into the side of the rabbet for a rabbeted back; null for half the side's thickness.</summary>
    public Length? RabbetDepth { get; init; }

    /// <summary>Depth of the groove for a captured back.</summary>
    public required Length GrooveDepth { get; init; }

    /// <summary>Overall play of a back in its groove or rabbet.</summary>
    public required Length BackPlay { get; init; }

    /// <summary>Added to a back's thickness for the width of its groove or rabbet.</summary>
    public required Length BackFit { get; init; }

    /// <summary>How far an overlaid back stays inside the case outline, each side.</summary>
    public required Length BackReveal { get; init; }

    /// <summary>Overall side play of a loose shelf.</summary>
    public required Length ShelfPlay { get; init; }

    /// <summary>How far a loose shelf's front stands back.</summary>
    public required Length ShelfSetback { get; init; }

    /// <summary>Play of a loose shelf behind.</summary>
    public required Length ShelfRearPlay { get; init; }

    /// <summary>Filler and scribe stock left beyond the largest gap.</summary>
    public required Length ScribeAllowance { get; init; }

    /// <summary>Pitch of pin rows.</summary>
    public required Length PinPitch { get; init; }

    /// <summary>Diameter of pin holes.</summary>
    public required Length PinDiameter { get; init; }

    /// <summary>Depth of pin holes.</summary>
    public required Length PinDepth { get; init; }

    /// <summary>From the front and rear edges to the pin rows.</summary>
    public required Length PinInset { get; init; }

    /// <summary>From the lower panel to the first pin and from the last pin to the upper panel.</summary>
    public required Length PinMargin { get; init; }

    /// <summary>Rounding step of finished parts: 0.1 mm, or 1/32 in.</summary>
    public required Length RoundingStep { get; init; }

    /// <summary>Usual figures of the unit system.</summary>
    public static Joinery For(UnitSystem units) => units == UnitSystem.Inches
        ? new()
        {
            DadoDepth = Length.FromInches(0, 1, 4),
            GrooveDepth = Length.FromInches(0, 1, 4),
            BackPlay = Length.FromInches(0, 1, 32),
            BackFit = Length.FromInches(0, 1, 64),
            BackReveal = Length.FromInches(0, 1, 32),
            ShelfPlay = Length.FromInches(0, 1, 16),
            ShelfSetback = Length.FromInches(0, 1, 8),
            ShelfRearPlay = Length.FromInches(0, 1, 16),
            ScribeAllowance = Length.FromInches(0, 3, 8),
            PinPitch = Length.FromInches(1),
            PinDiameter = Length.FromInches(0, 1, 4),
            PinDepth = Length.FromInches(0, 3, 8),
            PinInset = Length.FromInches(1, 1, 2),
            PinMargin = Length.FromInches(6),
            RoundingStep = Length.FromInches(0, 1, 32),
        }
        : new()
        {
            DadoDepth = Length.FromMillimetres(6),
            GrooveDepth = Length.FromMillimetres(6),
            BackPlay = Length.FromMillimetres(1),
            BackFit = Length.FromMillimetres(0.2m),
            BackReveal = Length.FromMillimetres(1),
            ShelfPlay = Length.FromMillimetres(2),
            ShelfSetback = Length.FromMillimetres(3),
            ShelfRearPlay = Length.FromMillimetres(2),
            ScribeAllowance = Length.FromMillimetres(10),
            PinPitch = Length.FromMillimetres(32),
            PinDiameter = Length.FromMillimetres(5),
            PinDepth = Length.FromMillimetres(10),
            PinInset = Length.FromMillimetres(37),
            PinMargin = Length.FromMillimetres(150),
            RoundingStep = Length.FromMillimetres(0.1m),
        };
}

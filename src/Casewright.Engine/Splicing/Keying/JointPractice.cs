using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Keying;

/// <summary>Distances within a tenoned joint (common practice, no source); what a shop changes is in its rules.</summary>
internal static class JointPractice
{
    /// <summary>Nearest that a tenon's centre comes to a long edge.</summary>
    public static readonly Length TenonToEdge = Length.FromMillimetres(40);

    /// <summary>Nearest that a draw connector's centre comes to a long edge.</summary>
    public static readonly Length ConnectorToEdge = Length.FromMillimetres(60);

    /// <summary>Half the width of wood that a draw connector's hole or slot takes across the part.</summary>
    public static readonly Length ConnectorRadius = Length.FromMillimetres(10);

    /// <summary>Least wood between a mortise and another mortise, hole, groove or rabbet.</summary>
    public static readonly Length WoodBesideMortise = Length.FromMillimetres(8);

    /// <summary>Least wood between a mortise and the centre of a connector's hole.</summary>
    public static readonly Length WoodBesideConnector = Length.FromMillimetres(15);

    /// <summary>Usual least distance of two tenon centres; narrower parts come closer.</summary>
    public static readonly Length UsualSpacing = Length.FromMillimetres(75);

    /// <summary>Distance of tenon centres beyond which one more tenon is set.</summary>
    public static readonly Length WidestSpacing = Length.FromMillimetres(110);

    /// <summary>Greatest distance of neighbouring tenon centres that keying may leave.</summary>
    public static readonly Length MostSpacing = Length.FromMillimetres(130);

    /// <summary>Width of part that takes one draw connector.</summary>
    public static readonly Length WidthPerConnector = Length.FromMillimetres(150);

    /// <summary>Left beyond the end of a tenon at the bottom of its mortise, for glue.</summary>
    public static readonly Length MortiseBeyondTenon = Length.FromMillimetres(2);

    /// <summary>How much wider than its tenon every mortise but the first is.</summary>
    public static readonly Length Play = Length.FromMillimetres(2);

    /// <summary>Mortises of a wrong assembly are off by this at least: three times what their play lets pass.</summary>
    public static readonly Length LeastMismatch = Length.FromMillimetres(6);

    /// <summary>A mismatch beyond which an eye sees it without measuring; more is not sought.</summary>
    public static readonly Length PlainMismatch = Length.FromMillimetres(12);

    /// <summary>Play of a tenon in the thickness of its mortise.</summary>
    public static readonly Length ThicknessPlay = Length.FromNanometres(200_000);

    /// <summary>Shift off mid-thickness from which on a tenon set nearer the reference face helps to key a joint: half of it shows on each side.</summary>
    public static readonly Length LeastDepthMismatch = Length.FromMillimetres(3);

    /// <summary>Least distance of two tenon centres.</summary>
    public static Length LeastSpacing(Length tenonWidth) => tenonWidth + WoodBesideMortise;

    /// <summary>Least distance of a tenon's centre from a connector's.</summary>
    public static Length TenonToConnector(Length tenonWidth) => (tenonWidth / 2) + WoodBesideConnector;

    /// <summary>Least distance of two tenon centres with a connector between them.</summary>
    public static Length LeastAroundConnector(Length tenonWidth) => TenonToConnector(tenonWidth) * 2;
}

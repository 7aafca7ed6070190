namespace Casewright.Engine.Checks.Mechanics;

/// <summary>A toe recess at the foot of a case's front, in the case's own unit.</summary>
/// <param name="Depth">How far it stands back from the front.</param>
/// <param name="Height">Its height.</param>
public readonly record struct ToeRecess(double Depth, double Height);

/// <summary>
/// Headroom needed to tilt a case from lying to standing: the largest height of its end outline while it turns through a right angle.
/// All lengths in one unit, whichever.
/// </summary>
public static class TiltUp
{
    /// <summary>Headroom for a plain box of height h and depth d: √(h² + d²).</summary>
    public static double Headroom(double height, double depth) => Math.Sqrt((height * height) + (depth * depth));

    /// <summary>Tallest box of depth d that can be tilted up under a ceiling: √(H² − d²); 0 when the depth alone is too much.</summary>
    public static double TallestUnder(double ceiling, double depth) => ceiling <= depth ? 0 : Math.Sqrt((ceiling * ceiling) - (depth * depth));

    /// <summary>Headroom for a case with a toe recess tilted up from its face: the recess saves something, max(√(h² + (d − r)²), √((h − k)² + d²)).</summary>
    public static double HeadroomFromFace(double height, double depth, ToeRecess toe) =>
        Math.Max(Headroom(height, depth - toe.Depth), Headroom(height - toe.Height, depth));

    /// <summary>Headroom to tilt a case up on top of its base: p + √(h² + d²).</summary>
    public static double HeadroomOnBase(double height, double depth, double baseHeight) => baseHeight + Headroom(height, depth);

    /// <summary>Headroom to stand a case on the floor and then lift it onto its base: max(√(h² + d²), h + p + play).</summary>
    public static double HeadroomThenLift(double height, double depth, double baseHeight, double play) =>
        Math.Max(Headroom(height, depth), height + baseHeight + play);
}

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>The rules that decide which region may be cut further.</summary>
/// <param name="Stages">Turns of direction; <see cref="int.MaxValue"/> without limit.</param>
/// <param name="LongestRip">Longest region that may be ripped, kerf added.</param>
/// <param name="FirstCut">Direction of the first cuts.</param>
internal readonly record struct CutLimits(int Stages, long LongestRip, FirstCut FirstCut)
{
    /// <summary>Whether the free end of a row at this level may take pieces.</summary>
    public bool Usable(int level) => level < Stages;

    /// <summary>Whether a region may become a row along the axis.</summary>
    public bool MayCut(byte axis, long sizeX) => axis == Axis.X || sizeX <= LongestRip;

    /// <summary>Whether the sheet itself may be a row along the axis.</summary>
    public bool MayStart(byte axis, long sizeX) => MayCut(axis, sizeX) && FirstCut switch
    {
        FirstCut.Along => axis == Axis.Y,
        FirstCut.Across => axis == Axis.X,
        _ => true,
    };
}

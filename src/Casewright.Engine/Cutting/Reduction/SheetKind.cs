namespace Casewright.Engine.Cutting.Reduction;

/// <summary>A usable kind of sheet: edges trimmed, one kerf added to both sizes.</summary>
/// <param name="Index">Index in the problem.</param>
/// <param name="SizeX">Usable length plus kerf.</param>
/// <param name="SizeY">Usable width plus kerf.</param>
/// <param name="Cost">Price on the lattice of prices.</param>
/// <param name="Available">How many; <see cref="int.MaxValue"/> without limit.</param>
/// <param name="RipAllowed">Whether the saw takes a rip of the whole length.</param>
internal sealed record SheetKind(int Index, long SizeX, long SizeY, long Cost, int Available, bool RipAllowed)
{
    public double Area { get; } = (double)SizeX * SizeY;

    /// <summary>Clear stretches of a board with defects, each with one kerf added; null for a clear board or a sheet.</summary>
    public long[]? Segments { get; init; }
}

namespace Casewright.Engine.Cutting.Reduction;

/// <summary>A demand with the options that can be cut at all.</summary>
/// <param name="Index">Index in the problem.</param>
/// <param name="Count">Copies, 1 or more.</param>
/// <param name="Options">Usable options, at least one.</param>
/// <param name="Group">Sight line group, or -1.</param>
internal sealed record ReducedDemand(int Index, int Count, ReducedOption[] Options, int Group);

/// <summary>A usable option.</summary>
/// <param name="Index">Index among the options of the problem's demand.</param>
/// <param name="Kinds">The kind of every piece, in the order of the option.</param>
/// <param name="ExtraCost">On the lattice of prices.</param>
/// <param name="SightLine">Index into the group's sight lines, or -1 for none.</param>
/// <param name="Preference">Among answers of one cost, lower is better.</param>
internal sealed record ReducedOption(int Index, int[] Kinds, long ExtraCost, int SightLine, int Preference = 0);

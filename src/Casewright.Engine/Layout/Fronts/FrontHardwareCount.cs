using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>Hardware of doors and drawers, counted from what is bored in them.</summary>
/// <param name="Hinges">Concealed hinges with their plates.</param>
/// <param name="Slides">Pairs of drawer slides by length, the shortest first.</param>
/// <param name="Pulls">Pulls.</param>
public sealed record FrontHardwareCount(int Hinges, ValueList<(Length Length, int Pairs)> Slides, int Pulls)
{
    /// <summary>Counts it.</summary>
    public static FrontHardwareCount Of(IEnumerable<Part> parts)
    {
        var all = parts.ToList();
        var slides = all.Where(p => p is { Role: PartRole.DrawerSide, Hand: Hand.Left })
            .GroupBy(p => p.Length)
            .OrderBy(g => g.Key)
            .Select(g => (g.Key, g.Count()))
            .ToValueList();
        return new(Bores(all, Fronts.Hinges.For), slides, Bores(all, Fronts.Pulls.For));
    }

    private static int Bores(List<Part> parts, string what) => parts.Sum(p => p.Machining.OfType<Bore>().Count(b => b.For == what));
}

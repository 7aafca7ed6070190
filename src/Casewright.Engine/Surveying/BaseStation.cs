using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>What the base of a run does at one place: the level of its top over the floor, and what goes under it.</summary>
/// <param name="At">Place along the wall.</param>
/// <param name="Line">At the wall or at the front line.</param>
/// <param name="Below">How far the floor lies below the highest floor point.</param>
/// <param name="Height">From the floor here to the lower edge of the cases: B + below. The height to set the base to.</param>
/// <param name="Shim">What goes under the rails, sides or bottom here: below, and for a ladder base its room for shims.</param>
/// <param name="Measured">Whether the floor was measured here; else it is taken between neighbours.</param>
public sealed record BaseStation(Length At, ReadingLine Line, Length Below, Length Height, Length Shim, bool Measured)
{
    /// <summary>The stations of a run, from left to right, back before front.</summary>
    internal static ValueList<BaseStation> Of(Run run, FloorProfile floor, Length from, Length to)
    {
        if (floor.IsEmpty)
            return [];
        var measured = floor.Points.Select(p => (p.At, p.Line)).ToHashSet();
        var lines = floor.Points.Select(p => p.Line).Distinct().Order().ToList();
        var under = run.Base.Kind == BaseKind.Plinth ? run.Base.ShimRoom : Length.Zero;
        return floor.Places(from, to).SelectMany(at => lines.Select(line =>
        {
            var below = floor.Below(at, line);
            return new BaseStation(at, line, below, run.Base.Height + below, under + below, measured.Contains((at, line)));
        })).ToValueList();
    }
}

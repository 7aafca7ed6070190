using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>Sides, partitions and end panels under a raked top: as long as their higher face, the end cut on a bevel of the slope.</summary>
internal static class RakedUprights
{
    /// <summary>What ends at the bevel, as named in the machining.</summary>
    public const string For = "slope";

    /// <summary>A height of the case less what the slope falls to the long edge of an upright, and less the top that lies on it.</summary>
    public static Rule UnderTop(Rule height, CaseFigures box, Length left)
    {
        var rake = box.Rake!;
        return height.Minus(Fall(box, rake, rake.Higher(left, left + box.Run.T))).Minus(Plumb(box.Run, rake));
    }

    /// <summary>d: what the slope falls from the high end of the case to a place.</summary>
    public static DerivationInput Fall(CaseFigures box, RakeFigures rake, Length x) =>
        new("d", $"what the slope falls from the high end of case {box.Number} to the long edge", box.YEnd - rake.Top(x));

    /// <summary>tk: the raked top measured plumb.</summary>
    public static DerivationInput Plumb(RunFigures run, RakeFigures rake) => new("tk", "the raked top, plumb through its thickness: t/cos θ", rake.Slope.Along(run.T));

    /// <summary>The bevel of an upright of the case; none under a level top.</summary>
    public static IEnumerable<Bevel> Bevel(CaseFigures box, Part upright)
    {
        if (box.Rake is { } rake)
            yield return Bevel(rake, upright);
    }

    /// <summary>The bevel of an upright: t·tan θ off the face on the low side.</summary>
    public static Bevel Bevel(RakeFigures rake, Part upright)
    {
        var referenceOnLeft = upright.Place.IntoThickness == Axis.Right;
        return new(For, PartEdge.End, referenceOnLeft == rake.FallsRight ? Face.Reference : Face.Opposite, rake.Slope.Lean(upright.Thickness));
    }
}

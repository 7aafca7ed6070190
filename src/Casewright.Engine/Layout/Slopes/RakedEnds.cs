using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Slopes;

/// <summary>Fillers and end panels beside raked cases: they follow the slope on, where the ceiling leaves room for it.</summary>
internal static class RakedEnds
{
    /// <summary>The ends of a run as they are under the slope.</summary>
    public static IEnumerable<Part> Under(RunFigures run, IReadOnlyList<CaseFigures> cases, IEnumerable<Part> ends)
    {
        var top = cases.Where(c => c.IsTopTier).ToArray();
        return ends.Select(end =>
        {
            var left = end.LowCorner.X < run.CasesLeft;
            var box = top[left ? 0 : ^1];
            return box.Rake is { } rake && end.HighCorner.Y > box.Y ? Fit(run, box, rake, end, left) : end;
        });
    }

    private static Part Fit(RunFigures run, CaseFigures box, RakeFigures rake, Part end, bool left)
    {
        var (atCase, outer) = left ? (end.HighCorner.X, end.LowCorner.X) : (end.LowCorner.X, end.HighCorner.X);
        var rises = rake.Higher(atCase, outer) == outer;
        var follows = !rises || run.Wall.CeilingAt(outer) >= rake.Top(outer);
        var height = rake.Top(rises && follows ? outer : atCase);
        var foot = end.LowCorner.Y;
        var length = Rule.Of(new("Yr", $"top of case {box.Number} along the slope, at the long edge", height)).Minus(new("yl", "lower end", foot)).Nearest(Dimensions.Length, run.Step);
        var cut = end with { Length = length.Result, Derivations = [length, .. end.Derivations.Skip(1)] };
        if (!follows)
            return cut;
        return end.Role == PartRole.EndPanel
            ? cut with { Hand = left ? Hand.Left : Hand.Right, Machining = [.. cut.Machining, RakedUprights.Bevel(rake, cut)] }
            : RakedStrips.Upright(rake, cut);
    }
}

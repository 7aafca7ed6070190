using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// Where nailers go: one under the top; in a case over 1200 mm high one more at the fixed shelf nearest the middle (behind a
/// captured back without fixed shelves: at the middle). Common practice, no source.
/// </summary>
internal static class Nailers
{
    /// <summary>Height of case from which a second nailer is wanted.</summary>
    public static Length SecondFrom { get; } = Length.FromMillimetres(1200);

    /// <summary>How far a nailer in view hangs below a panel whose underside is at <paramref name="underside"/>; zero where there is none.</summary>
    public static Length InFrontUnder(CaseFigures box, Length underside)
    {
        var run = box.Run;
        if (run.Nailer is null || run.NailersBehind || run.Run.Nailers is not { } design)
            return Length.Zero;
        var underTop = box.Rake is { } rake ? rake.Slope.Along(design.Height) : design.Height;
        if (box.Rake is not null && underside >= box.LowUnder - underTop)
            return underTop - Length.Max(Length.Zero, box.LowUnder - underside);
        return underside == box.TopUnder || underside == MiddleShelf(box) - run.T ? design.Height : Length.Zero;
    }

    /// <summary>Upper edges of the case's nailers, from the top down.</summary>
    public static IEnumerable<Length> UpperEdges(CaseFigures box)
    {
        if (box.Run.Run.Nailers is not { } design)
            yield break;
        yield return box.TopUnder;
        if (box.Height < SecondFrom)
            yield break;
        var shelf = MiddleShelf(box);
        if (shelf is { } upper)
            yield return box.Run.NailersBehind ? upper - (box.Run.T / 2) + (design.Height / 2) : upper - box.Run.T;
        else if (box.Run.NailersBehind)
            yield return box.BottomUpper + ((box.LowUnder - box.BottomUpper) / 2) + (design.Height / 2);
    }

    /// <summary>Upper face of the fixed shelf that carries the second nailer; null where none has room for it.</summary>
    private static Length? MiddleShelf(CaseFigures box)
    {
        if (box.Height < SecondFrom || box.Run.Run.Nailers is not { } design)
            return null;
        var middle = box.Y + (box.Height / 2);
        Length? best = null;
        for (var i = 0; i < box.Fixed.Count; i++)
        {
            var upper = box.Fixed[i].Upper;
            if (RakedShelves.IsWhole(box, i) && HasRoom(box, i, design.Height) && (best is null || (upper - middle).Abs() < (best.Value - middle).Abs()))
                best = upper;
        }

        return best;
    }

    private static bool HasRoom(CaseFigures box, int shelf, Length height)
    {
        var upper = box.Fixed[shelf].Upper;
        if (box.Run.NailersBehind)
            return upper - (box.Run.T / 2) + (height / 2) <= box.LowUnder - height && upper - (box.Run.T / 2) - (height / 2) >= box.BottomUpper;
        var below = shelf == 0 ? box.BottomUpper : box.Fixed[shelf - 1].Upper;
        return upper - box.Run.T - height > below;
    }
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Fixed shelves, housed between the uprights of each bay.</summary>
internal static class FixedShelves
{
    /// <summary>The shelves from the bottom up, each from left to right.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        for (var i = 0; i < box.Fixed.Count; i++)
        {
            for (var bay = 0; bay < box.Bays; bay++)
            {
                var reach = RakedShelves.Reach(box, i, bay);
                if (reach == ShelfReach.Whole)
                    yield return RakedShelves.WithNailer(box, bay, Shelf(box, i, bay));
                else if (reach == ShelfReach.CutShort)
                    yield return RakedShelves.WithNailer(box, bay, RakedShelves.CutShort(box, i, bay, Shelf(box, i, bay)));
            }
        }
    }

    private static Part Shelf(CaseFigures box, int index, int bay)
    {
        var run = box.Run;
        var level = box.Fixed[index];
        var length = box.Bays == 1
            ? LevelPanels.Between(box)
            : Rule.Of(new CaseSymbols(box).Clear(bay)).Plus(Symbols.Dado(run), 2);
        var setback = box.ShelfSetback(index);
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), DepthRules.FixedShelf(run, setback), PartMaker.Thickness(run.Panel));
        var place = Pose.Level(run.Wall.Id, box.BayLeft(bay) - run.Joinery.DadoDepth, level.Upper, run.ShelfFront - setback);
        var id = PartIds.InBay(box.Id, "F", index + 1, bay, box.Bays);
        var part = PartMaker.InCase(box, id, Name(box, index, bay), PartRole.FixedShelf, run.Panel, size, place, FaceView.Shelf);
        return part with
        {
            Machining = [.. Notches(run, part, setback), .. Lippings.Corners(box, part, bay == 0, bay == box.Bays - 1)],
            Nosing = run.ShelfNosing is null ? null : PartIds.Nosing(id),
            LoadPerMetre = box.Interior.LoadPerMetre,
            Derivations = [.. part.Derivations, level.Source],
        };
    }

    private static string Name(CaseFigures box, int index, int bay) => box.Bays == 1
        ? string.Create(CultureInfo.InvariantCulture, $"fixed shelf {index + 1}, case {box.Number}")
        : string.Create(CultureInfo.InvariantCulture, $"fixed shelf {index + 1} bay {bay + 1}, case {box.Number}");

    /// <summary>Where the uprights are nosed deeper than the shelf, the corners in the dados are cut back to clear that nosing.</summary>
    private static IEnumerable<Notch> Notches(RunFigures run, Part shelf, Length setback)
    {
        var depth = run.UprightEdge - run.ShelfEdge - setback;
        var dado = run.Joinery.DadoDepth;
        if (depth <= Length.Zero || dado == Length.Zero)
            yield break;
        yield return new("nosing of uprights", Length.Zero, Length.Zero, dado, depth);
        yield return new("nosing of uprights", shelf.Length - dado, Length.Zero, dado, depth);
    }
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Loose shelves on pins, drawn where they start out.</summary>
internal static class LooseShelves
{
    /// <summary>The shelves from the bottom up, each from left to right.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        var number = 0;
        foreach (var level in box.PinLevels)
        {
            foreach (var hole in level.ShelfHoles)
            {
                number++;
                for (var bay = 0; bay < box.Bays; bay++)
                    yield return Shelf(box, level, hole, number, bay);
            }
        }
    }

    /// <summary>Depth: D − tf − setback − e − back − play behind. A trim band on the back takes its thickness too, so that shelves can pass it.</summary>
    public static Rule Depth(CaseFigures box, Length setback)
    {
        var run = box.Run;
        return DepthRules.Front(run)
            .MinusAny(Symbols.InsetFront(setback))
            .Minus(Symbols.Joint(run, "q", "setback of loose shelves", "shelfSetback", run.Joinery.ShelfSetback))
            .MinusAny(Symbols.Nosing(run.ShelfNosing))
            .MinusAny(Symbols.Inset(run))
            .MinusAny(Symbols.Back(run))
            .MinusAny(run.Band is null ? null : Symbols.Thickness("td", run.Band))
            .Minus(Symbols.Joint(run, "y", "play behind loose shelves", "shelfRearPlay", run.Joinery.ShelfRearPlay));
    }

    private static Part Shelf(CaseFigures box, PinLevel level, int hole, int number, int bay)
    {
        var run = box.Run;
        var joinery = run.Joinery;
        var length = Rule.Of(new CaseSymbols(box).Clear(bay)).Minus(Symbols.Joint(run, "p", "side play of loose shelves", "shelfPlay", joinery.ShelfPlay));
        var size = new PartSize(length.Down(Dimensions.Length, run.Step), Depth(box, level.Setback).Down(Dimensions.Width, run.Step), PartMaker.Thickness(run.Panel));
        var height = Height(box, level, hole);
        var place = Pose.Level(run.Wall.Id, box.BayLeft(bay) + (joinery.ShelfPlay / 2), height.Result, run.ShelfFront - level.Setback - joinery.ShelfSetback);
        var id = PartIds.InBay(box.Id, "S", number, bay, box.Bays);
        var name = box.Bays == 1
            ? string.Create(CultureInfo.InvariantCulture, $"loose shelf {number}, case {box.Number}")
            : string.Create(CultureInfo.InvariantCulture, $"loose shelf {number} bay {bay + 1}, case {box.Number}");
        var part = PartMaker.InCase(box, id, name, PartRole.AdjustableShelf, run.Panel, size, place, FaceView.Shelf);
        return part with
        {
            Nosing = run.ShelfNosing is null ? null : PartIds.Nosing(id),
            LoadPerMetre = box.Interior.LoadPerMetre,
            Derivations = [.. part.Derivations, height],
        };
    }

    /// <summary>A shelf lies on its pins: upper face = hole + half the pin + thickness.</summary>
    private static Derivation Height(CaseFigures box, PinLevel level, int hole)
    {
        var run = box.Run;
        var first = new DerivationInput("b", "height of the lowest hole of the row", level.FirstHole);
        var pitch = Symbols.Joint(run, "p", "pitch of the holes", "pinPitch", run.Joinery.PinPitch);
        var pin = new DerivationInput("d", "half the diameter of a pin", run.Joinery.PinDiameter / 2);
        return Rule.Of(first).Plus(pitch, hole).Plus(pin).Plus(Symbols.Thickness(run)).As("height of the upper face");
    }
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>Nailers: behind a captured back across the whole case, or in view in each bay.</summary>
internal static class NailerParts
{
    /// <summary>The nailers from the top down.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        if (box.Run.Nailer is null)
            yield break;
        var number = 0;
        foreach (var upper in Nailers.UpperEdges(box))
        {
            number++;
            for (var bay = 0; bay < Stretches(box); bay++)
                yield return Nailer(box, number, bay, upper);
        }
    }

    /// <summary>Ids, lower and upper edges of the nailers that end at a side, in the bay next to it; of the one under a raked top where it meets the side.</summary>
    public static IEnumerable<(string Id, Length Lower, Length Upper)> MeetingSides(CaseFigures box, Hand hand)
    {
        if (box.Run.Nailer is null)
            return [];
        var bay = box.Run.NailersBehind || hand == Hand.Left ? 0 : box.Bays - 1;
        return Nailers.UpperEdges(box).Select((upper, i) =>
        {
            var id = Id(box, i + 1, bay);
            if (i > 0 || box.Rake is not { } rake)
                return (id, upper - box.Run.Run.Nailers!.Height, upper);
            var under = rake.Under(hand == Hand.Left ? box.BayLeft(0) : box.BayRight(box.Bays - 1), box.Run.T);
            return (id, under - rake.Slope.Along(box.Run.Run.Nailers!.Height), under);
        });
    }

    private static int Stretches(CaseFigures box) => box.Run.NailersBehind ? 1 : box.Bays;

    private static string Id(CaseFigures box, int number, int bay) => PartIds.InBay(box.Id, "N", number, bay, Stretches(box));

    private static Part Nailer(CaseFigures box, int number, int bay, Length upper)
    {
        var run = box.Run;
        var material = run.Nailer!;
        var behind = run.NailersBehind;
        var height = new DerivationInput("n", $"height of a nailer ({run.Path}.nailers.height)", run.Run.Nailers!.Height);
        var symbols = new CaseSymbols(box);
        var length = behind || box.Bays == 1 ? Rule.Of(symbols.W).Minus(Symbols.Thickness(run), 2) : Rule.Of(symbols.Clear(bay));
        var size = new PartSize(length.Nearest(Dimensions.Length, run.Step), Rule.Of(height).Nearest(Dimensions.Width, run.Step), PartMaker.Thickness(material));
        var raked = number == 1 ? box.Rake : null;
        if (raked is not null)
            size = size with { Length = RakedStrips.Length(raked, length, run.Run.Nailers!.Height).Nearest(Dimensions.Length, run.Step) };
        var front = behind ? run.BackRear : run.BackFront + material.Thickness;
        var place = Pose.StripFromAbove(run.Wall.Id, box.BayLeft(behind ? 0 : bay), upper, front);
        var name = string.Create(CultureInfo.InvariantCulture, $"nailer {number}, case {box.Number}");
        var part = PartMaker.InCase(box, Id(box, number, bay), name, PartRole.Nailer, material, size, place, behind ? FaceView.HiddenStrip : FaceView.FrontOnly);
        return raked is null ? part : RakedStrips.Along(raked, part, box.BayLeft(behind ? 0 : bay), raked.Under(box.BayLeft(behind ? 0 : bay), run.T));
    }
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>The trim band in each bay of a case whose backs need a joint.</summary>
internal static class TrimBandParts
{
    /// <summary>The bands from left to right.</summary>
    public static IEnumerable<Part> Of(CaseFigures box)
    {
        if (box.Run.Band is not { } band || box.BandHeight is not { } middle)
            yield break;
        var run = box.Run;
        for (var bay = 0; bay < box.Bays; bay++)
        {
            var length = Rule.Of(new CaseSymbols(box).Clear(bay)).Down(Dimensions.Length, run.Step);
            var lower = middle - (band.BoardWidth!.Value / 2);
            var place = Pose.StripFromBelow(run.Wall.Id, box.BayLeft(bay), lower, run.BackFront + band.Thickness);
            var name = box.Bays == 1
                ? $"trim band, case {box.Number}"
                : string.Create(CultureInfo.InvariantCulture, $"trim band bay {bay + 1}, case {box.Number}");
            var size = new PartSize(length, PartMaker.BoardWidth(band), PartMaker.Thickness(band));
            yield return PartMaker.InCase(box, PartIds.OnlyInBay(box.Id, "M", bay, box.Bays), name, PartRole.TrimBand, band, size, place, FaceView.FrontOnly);
        }
    }
}

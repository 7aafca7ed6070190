using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Cases;

/// <summary>The openings of a face frame.</summary>
internal static class FaceFrames
{
    /// <summary>Left edge of the frame opening in front of a bay.</summary>
    public static Length Left(CaseFigures box, int bay)
    {
        var frame = box.Run.Frame!;
        if (bay == 0 && !box.IsFirst && frame.JointStile is { } joint)
            return box.X - (joint.BoardWidth!.Value / 2) + joint.BoardWidth!.Value;
        return bay == 0
            ? box.X - FaceFrameParts.Overlaps(box).Left + frame.EndStileWidth
            : FaceFrameParts.MidLeft(box, frame, bay) + frame.MidStile!.BoardWidth!.Value;
    }

    /// <summary>Right edge of the frame opening in front of a bay.</summary>
    public static Length Right(CaseFigures box, int bay)
    {
        var frame = box.Run.Frame!;
        if (bay == box.Bays - 1 && !box.IsLast && frame.JointStile is { } joint)
            return box.XEnd - (joint.BoardWidth!.Value / 2);
        return bay == box.Bays - 1
            ? box.XEnd + FaceFrameParts.Overlaps(box).Right - frame.EndStileWidth
            : FaceFrameParts.MidLeft(box, frame, bay + 1);
    }

    /// <summary>Lower edge of the rail above an opening: the top rail, or the one in front of the fixed shelf over it.</summary>
    public static Length Above(CaseFigures box, int opening)
    {
        var frame = box.Run.Frame!;
        return opening == box.Fixed.Count ? box.YEnd - frame.TopRailWidth : box.Fixed[opening].Upper - (frame.MidRail?.BoardWidth ?? box.Run.T);
    }

    /// <summary>Whether a rail stands in front of a fixed shelf: where the openings above and below it are not closed by one front.</summary>
    public static bool HasRail(CaseFigures box, int shelf)
    {
        var (below, above) = (box.FrontOf(shelf), box.FrontOf(shelf + 1));
        return (below is not null || above is not null) && below != above;
    }
}

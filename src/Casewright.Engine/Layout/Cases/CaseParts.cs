using Casewright.Engine.Layout.Corners;
using Casewright.Engine.Layout.Counters;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Cases;

/// <summary>All parts of one case in their order.</summary>
internal static class CaseParts
{
    /// <summary>Uprights, bottom, top, shelves, backs, nailers, band, toe face; then frame and nosings.</summary>
    public static IReadOnlyList<Part> Of(CaseFigures box)
    {
        if (box.IsKnee)
            return [.. KneeParts.Of(box)];
        List<Part> parts =
        [
            .. Uprights.Of(box),
            LevelPanels.Bottom(box),
            LevelPanels.Top(box),
            .. FixedShelves.Of(box),
            .. LooseShelves.Of(box),
            .. BackParts.Of(box),
            .. NailerParts.Of(box),
            .. TrimBandParts.Of(box),
            .. CaseToeFace.Of(box),
            .. FaceFrameParts.Of(box),
        ];
        return [.. parts, .. NosingParts.Of(box, parts), .. RearLippings.Of(box, parts), .. BlindPanel.Of(box), .. DoorParts.Of(box), .. DrawerParts.Of(box)];
    }

    /// <summary>The case as placed.</summary>
    public static CaseBox Box(CaseFigures box) => new()
    {
        Id = box.Id,
        Run = box.Run.Run.Id,
        Wall = box.Run.Wall.Id,
        Column = box.Column.Index,
        Tier = box.Tier.Index,
        X = box.X,
        Y = box.Foot,
        Width = box.Width,
        Height = box.YEnd - box.Foot,
        Rake = box.Rake?.Slope,
        Depth = box.Run.Run.Depth,
        Bays = box.Bays,
        ClearBay = box.Column.Clear,
    };
}

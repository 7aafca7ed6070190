using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Splices;

namespace Casewright.Model.Design;

/// <summary>How the front of a case is made.</summary>
public enum Construction
{
    /// <summary>The panel edges are the front.</summary>
    Frameless,

    /// <summary>A solid frame covers the front.</summary>
    FaceFrame,
}

/// <summary>Cases standing in one line along (part of) one wall, between two ends, all to one pattern.</summary>
public sealed record Run
{
    /// <summary>Id, unique among the job's runs.</summary>
    public required string Id { get; init; }

    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>Id of the wall.</summary>
    public required string Wall { get; init; }

    /// <summary>From the wall's left end to the run's left end; not negative.</summary>
    public Length Offset { get; init; }

    /// <summary>Width from end to end, fillers and end panels included; null for the rest of the wall.</summary>
    public Length? Width { get; init; }

    /// <summary>Front of the cases.</summary>
    public required Construction Construction { get; init; }

    /// <summary>Sheet material of sides, partitions, tops, bottoms and shelves.</summary>
    public required string Material { get; init; }

    /// <summary>Total depth from the wall to the foremost edge, nosing or frame included; positive.</summary>
    public required Length Depth { get; init; }

    /// <summary>Left end.</summary>
    public required RunEnd Left { get; init; }

    /// <summary>Right end.</summary>
    public required RunEnd Right { get; init; }

    /// <summary>What the cases stand on.</summary>
    public required BaseDesign Base { get; init; }

    /// <summary>How the run ends at the top.</summary>
    public required HeadDesign Head { get; init; }

    /// <summary>Backs.</summary>
    public required BackDesign Back { get; init; }

    /// <summary>Depths of joints and working gaps.</summary>
    public required Joinery Joinery { get; init; }

    /// <summary>Nailers through which the cases are fixed; null for none.</summary>
    public NailerDesign? Nailers { get; init; }

    /// <summary>Nosing on shelf fronts; null for none.</summary>
    public NosingDesign? Nosing { get; init; }

    /// <summary>Face frame; required for that construction, null otherwise.</summary>
    public FaceFrameDesign? FaceFrame { get; init; }

    /// <summary>Trim band that covers joints of the backs; null for none.</summary>
    public TrimBandDesign? TrimBand { get; init; }

    /// <summary>How the width is divided into cases and bays, when <see cref="Columns"/> is empty.</summary>
    public BayDivision? Division { get; init; }

    /// <summary>Cases side by side, one by one; empty when <see cref="Division"/> says it.</summary>
    public ValueList<ColumnDesign> Columns { get; init; } = [];

    /// <summary>Cases above one another from the floor up; at least one. One tier is a full-height case.</summary>
    public required ValueList<TierDesign> Tiers { get; init; }

    /// <summary>What makes the run a bridge over a door; null for other runs.</summary>
    public BridgeDesign? Bridge { get; init; }

    /// <summary>Working gaps of doors and drawers; null for the usual ones of the job's unit system.</summary>
    public FrontGaps? FrontGaps { get; init; }

    /// <summary>Rail of a library ladder; null for none.</summary>
    public LadderRail? Ladder { get; init; }

    /// <summary>What is wished of splices in this run.</summary>
    public SpliceWish Splices { get; init; } = new();
}

/// <summary>Wishes about the splices of one run; the rules of the shop still hold.</summary>
public sealed record SpliceWish
{
    /// <summary>Height above the floor at which the uprights must be joined; null leaves it to the planner.</summary>
    public Length? Height { get; init; }

    /// <summary>The only method allowed; null leaves it to the shop's list.</summary>
    public SpliceMethod? Method { get; init; }

    /// <summary>Whether parts of this run may be spliced at all.</summary>
    public bool Allowed { get; init; } = true;

    /// <summary>Whether a part wider than any sheet may be made of strips joined edge to edge along its length.</summary>
    public bool AllowEdgeJoint { get; init; }
}

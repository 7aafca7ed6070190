using Casewright.Engine.Layout.Corners;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Site;
using Casewright.Model.Site.Surveying;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Figures;

/// <summary>A run with its materials resolved and the figures that hold for all its cases. z counts from the wall, x along it, y from the highest floor point.</summary>
internal sealed record RunFigures
{
    /// <summary>The job.</summary>
    public required Job Job { get; init; }

    /// <summary>The run as designed.</summary>
    public required Run Run { get; init; }

    /// <summary>Its path in the job file.</summary>
    public required string Path { get; init; }

    /// <summary>Letters that begin the ids of its own parts.</summary>
    public required string Letters { get; init; }

    /// <summary>Its wall.</summary>
    public required Wall Wall { get; init; }

    /// <summary>Panel material of the cases.</summary>
    public required Material Panel { get; init; }

    /// <summary>Material of the backs; null without backs.</summary>
    public Material? Back { get; init; }

    /// <summary>Material of the base.</summary>
    public required Material Base { get; init; }

    /// <summary>Material of nailers; null without nailers.</summary>
    public Material? Nailer { get; init; }

    /// <summary>Nosing of shelves; null for none.</summary>
    public Material? ShelfNosing { get; init; }

    /// <summary>Nosing of uprights, tops and bottoms; null for none.</summary>
    public Material? UprightNosing { get; init; }

    /// <summary>Face frame; null for a frameless run.</summary>
    public FrameMaterials? Frame { get; init; }

    /// <summary>Trim band; null for none.</summary>
    public Material? Band { get; init; }

    /// <summary>Crown; null for none.</summary>
    public Material? Crown { get; init; }

    /// <summary>Moulding along the base; null for none.</summary>
    public Material? BaseMould { get; init; }

    /// <summary>Light rail under a hung run; null for none.</summary>
    public Material? LightRail { get; init; }

    /// <summary>Strip that closes the gap along a sloping ceiling; null for none.</summary>
    public Material? SlopeFiller { get; init; }

    /// <summary>Left end.</summary>
    public required EndFigures Left { get; init; }

    /// <summary>Right end.</summary>
    public required EndFigures Right { get; init; }

    /// <summary>Left end of the run along the wall.</summary>
    public required Length X { get; init; }

    /// <summary>Width of the run.</summary>
    public required Length Width { get; init; }

    /// <summary>Top of the cases.</summary>
    public required Length Top { get; init; }

    /// <summary>How far the floor under the toe face lies below the highest floor point at most; null when it was not surveyed.</summary>
    public Length? FloorFall { get; init; }

    /// <summary>The skirting behind the run where it stays; null where there is none, where it is cut back, and behind a hung run.</summary>
    public WallMoulding? StayingSkirting => Run.Base.Kind != BaseKind.Hung && Wall.Survey?.Skirting is { Stays: true } skirting ? skirting : null;

    /// <summary>What the base keeps off the wall for a skirting that stays.</summary>
    public Length SkirtingRoom => StayingSkirting is { } skirting ? skirting.Projection + CutOuts.Play : Length.Zero;

    /// <summary>Where the depth of its cases is said in the job file.</summary>
    public string DepthPath { get; init; } = "";

    /// <summary>The same run with the depth of one tier.</summary>
    public RunFigures In(TierSpan tier) => tier.Design.Depth is { } depth ? this with { Run = Run with { Depth = depth }, DepthPath = tier.Path + ".depth" } : this;

    /// <summary>Joints and gaps.</summary>
    public Joinery Joinery => Run.Joinery;

    /// <summary>Working gaps of doors and drawers.</summary>
    public FrontGaps Gaps => Run.FrontGaps ?? FrontGaps.For(Job.Units);

    /// <summary>Lower edge of the crown, or the top of the cases without one: no overlaid front goes higher.</summary>
    public Length BelowCrown => Crown is null ? Top : Top - Run.Head.CrownLap;

    /// <summary>Rounding step of finished parts.</summary>
    public Length Step => Joinery.RoundingStep;

    /// <summary>Height of the base.</summary>
    public Length BaseHeight => Run.Base.Height;

    /// <summary>Whether sides of the lowest cases run to the floor.</summary>
    public bool SidesToFloor => Run.Base.Kind == BaseKind.SidesToFloor;

    /// <summary>Right end of the run along the wall.</summary>
    public Length XEnd => X + Width;

    /// <summary>Left edge of the first case.</summary>
    public Length CasesLeft => X + Left.Taken;

    /// <summary>Right edge of the last case.</summary>
    public Length CasesRight => XEnd - Right.Taken;

    /// <summary>Left end of the run's front: of its filler, panel or first case.</summary>
    public Length FaceLeft => CasesLeft - Left.Shown;

    /// <summary>Right end of the run's front.</summary>
    public Length FaceRight => CasesRight + Right.Shown;

    /// <summary>What stands in front of its end cases in blind corners.</summary>
    public ValueList<BlindFigures> Blind { get; init; } = [];

    /// <summary>Panel thickness.</summary>
    public Length T => Panel.Thickness;

    /// <summary>Thickness of the back; zero without one.</summary>
    public Length Tb => Back?.Thickness ?? Length.Zero;

    /// <summary>Thickness of the face frame; zero without one.</summary>
    public Length Tf => Frame?.Thickness ?? Length.Zero;

    /// <summary>Thickness of the nosing on uprights; zero without one.</summary>
    public Length UprightEdge => UprightNosing?.Thickness ?? Length.Zero;

    /// <summary>Thickness of the nosing on shelves; zero without one.</summary>
    public Length ShelfEdge => ShelfNosing?.Thickness ?? Length.Zero;

    /// <summary>Front of the cases behind a face frame; the front of the run without one.</summary>
    public Length CaseFront => Run.Depth - Tf;

    /// <summary>Front edge of sides, partitions, tops and bottoms, nosing not counted.</summary>
    public Length UprightFront => CaseFront - UprightEdge;

    /// <summary>Front edge of fixed shelves, nosing not counted.</summary>
    public Length ShelfFront => CaseFront - ShelfEdge;

    /// <summary>Rear face of the back.</summary>
    public Length BackRear => Run.Back.Kind == BackKind.Captured ? Run.Back.Inset : Length.Zero;

    /// <summary>Front face of the back, where shelves and partitions end.</summary>
    public Length BackFront => BackRear + Tb;

    /// <summary>Rear edge of the sides.</summary>
    public Length SideRear => Run.Back.Kind == BackKind.Overlaid ? Tb : Length.Zero;

    /// <summary>Rear edge of tops and bottoms.</summary>
    public Length LevelRear => Run.Back.Kind == BackKind.Captured ? Length.Zero : BackFront;

    /// <summary>Depth of the rabbet for a rabbeted back.</summary>
    public Length RabbetDepth => Joinery.RabbetDepth ?? T / 2;

    /// <summary>Height from the bottom panel's underside to the lower edge of the case: a face frame's bottom rail stands lower than the panel.</summary>
    public Length BottomRaise => Frame is null ? Length.Zero : Frame.BottomRailWidth - T;

    /// <summary>Whether nailers stand behind a captured back, where its inset has room for them, rather than in view in front of it.</summary>
    public bool NailersBehind => Nailer is not null && Run.Back.Kind == BackKind.Captured && Run.Back.Inset >= Nailer.Thickness;

    /// <summary>Height above which nobody looks down on a top: 1800 mm, the upper end of eye heights (common practice, no source).</summary>
    public static Length EyeHeight { get; } = Length.FromMillimetres(1800);
}

/// <summary>Board materials of a face frame; all of one thickness.</summary>
internal sealed record FrameMaterials(Material EndStile, Material? MidStile, Material TopRail, Material BottomRail, Material? MidRail)
{
    /// <summary>Stile over the joint of two cases, where one frame covers all; null where every case has its own.</summary>
    public Material? JointStile { get; init; }

    /// <summary>Board that packers of drawer slides are planed from; null for none.</summary>
    public Material? SlidePacker { get; init; }

    /// <summary>Thickness of the frame.</summary>
    public Length Thickness => EndStile.Thickness;

    /// <summary>Width of an end stile.</summary>
    public Length EndStileWidth => EndStile.BoardWidth!.Value;

    /// <summary>Width of the top rail.</summary>
    public Length TopRailWidth => TopRail.BoardWidth!.Value;

    /// <summary>Width of the bottom rail.</summary>
    public Length BottomRailWidth => BottomRail.BoardWidth!.Value;
}

/// <summary>One end of a run, resolved.</summary>
/// <param name="Kind">What stands there.</param>
/// <param name="Filler">Visible width of the filler.</param>
/// <param name="FillerMaterial">Its material.</param>
/// <param name="Panel">Applied panel; null when the side itself ends the run.</param>
/// <param name="Corner">The corner; null for other ends.</param>
internal sealed record EndFigures(EndKind Kind, Length Filler, Material FillerMaterial, Material? Panel, CornerFigures? Corner)
{
    /// <summary>Lipping on the front edges of its sides; null for none.</summary>
    public Material? FrontLip { get; init; }

    /// <summary>Lipping on the rear edges of its sides; null for none.</summary>
    public Material? RearLip { get; init; }

    /// <summary>How far the wall at this end falls away from its innermost point at most; null when it was not surveyed.</summary>
    public Length? FallsAway { get; init; }

    /// <summary>How far the wall behind this end lies behind its foremost point at most; null when it was not surveyed.</summary>
    public Length? Behind { get; init; }

    /// <summary>Width that the end takes from the cases: in a corner all that the other run takes too.</summary>
    public Length Taken => Corner?.Start ?? Shown;

    /// <summary>Width of filler or panel that shows beside the cases.</summary>
    public Length Shown => Filler + (Panel?.Thickness ?? Length.Zero);

    /// <summary>Whether the side itself is seen in the room.</summary>
    public bool SideShows => Kind == EndKind.Finished && Panel is null;

    /// <summary>Whether the toe space turns the corner here: only where no panel runs to the floor.</summary>
    public bool ToeReturns => SideShows;

    /// <summary>How far a face frame laps past the case here, before it is trimmed flush.</summary>
    public Length FrameOverlap(FaceFrameDesign? frame) => SideShows && frame is not null ? frame.FinishedOverlap : Length.Zero;
}

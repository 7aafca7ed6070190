using Casewright.Engine.Layout.Corners;
using Casewright.Engine.Layout.Fronts;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Figures;

/// <summary>One case with its place, its levels and the figures that its parts are derived from.</summary>
internal sealed record CaseFigures
{
    /// <summary>The run.</summary>
    public required RunFigures Run { get; init; }

    /// <summary>Its column.</summary>
    public required ColumnSpan Column { get; init; }

    /// <summary>Its tier.</summary>
    public required TierSpan Tier { get; init; }

    /// <summary>Number of tiers in the run.</summary>
    public required int Tiers { get; init; }

    /// <summary>Number of columns in the run.</summary>
    public required int Columns { get; init; }

    /// <summary>Id, such as C3 or C3.2.</summary>
    public required string Id { get; init; }

    /// <summary>What its bays hold.</summary>
    public required Interior Interior { get; init; }

    /// <summary>Path of the interior in the job file.</summary>
    public required string InteriorPath { get; init; }

    /// <summary>Upper faces of the fixed shelves, from the bottom up.</summary>
    public ValueList<FixedLevel> Fixed { get; init; } = [];

    /// <summary>First and last bay of each back panel, from left to right; empty without backs.</summary>
    public ValueList<(int First, int Last)> BackPanels { get; init; } = [];

    /// <summary>Doors and drawers, from the bottom up.</summary>
    public ValueList<FrontSpan> Fronts { get; init; } = [];

    /// <summary>Openings that hold loose shelves, from the bottom up.</summary>
    public ValueList<PinLevel> PinLevels { get; init; } = [];

    /// <summary>Middle of the trim band above the highest floor point; null where the case has none.</summary>
    public Length? BandHeight { get; init; }

    /// <summary>The raked top under a sloping ceiling; null for a level top. Heights of the case are then those of its high end.</summary>
    public RakeFigures? Rake { get; init; }

    /// <summary>Id without the C, for names.</summary>
    public string Number => Id[1..];

    /// <summary>Left edge.</summary>
    public Length X => Column.X;

    /// <summary>Outer width.</summary>
    public Length Width => Column.Width;

    /// <summary>Right edge.</summary>
    public Length XEnd => X + Width;

    /// <summary>Clear width between the sides.</summary>
    public Length Inside => Width - (Run.T * 2);

    /// <summary>Number of bays.</summary>
    public int Bays => Column.Bays;

    /// <summary>Height, the base not counted.</summary>
    public Length Height => Tier.Height;

    /// <summary>Lower edge, the base not counted.</summary>
    public Length Y => Tier.Y;

    /// <summary>Upper edge.</summary>
    public Length YEnd => Y + Height;

    /// <summary>Whether its sides run to the floor.</summary>
    public bool ToFloor => Run.SidesToFloor && Tier.Index == 0;

    /// <summary>Foot of the sides.</summary>
    public Length Foot => ToFloor ? Length.Zero : Y;

    /// <summary>Underside of the bottom panel.</summary>
    public Length BottomUnder => Y + Run.BottomRaise;

    /// <summary>Upper face of the bottom panel.</summary>
    public Length BottomUpper => BottomUnder + Run.T;

    /// <summary>Whether the top lies over the sides; a raked one always does.</summary>
    public bool TopOver => Run.Joinery.TopOverSides || Rake is not null;

    /// <summary>Underside of the top panel; of a raked one inside at the high end.</summary>
    public Length TopUnder => Rake is { } rake ? rake.Under(rake.Higher(BayLeft(0), BayRight(Bays - 1)), Run.T) : YEnd - Run.T;

    /// <summary>Underside of the top panel inside at the low end of a raked one.</summary>
    public Length LowUnder => Rake is { } rake ? rake.Under(rake.Lower(BayLeft(0), BayRight(Bays - 1)), Run.T) : TopUnder;

    /// <summary>Clear height between bottom and top.</summary>
    public Length ClearHeight => TopUnder - BottomUpper;

    /// <summary>Whether it is a knee space, without sides, under a counter.</summary>
    public bool IsKnee => Column.Open && Tier.Index == 0;

    /// <summary>Whether no case stands on it.</summary>
    public bool IsTopTier => Tier.Index == Tiers - 1;

    /// <summary>Whether the cases that stand on it are less deep, so that part of its top is seen.</summary>
    public bool Deeper { get; init; }

    /// <summary>Whether it stands first in its run.</summary>
    public bool IsFirst => Column.Index == 0;

    /// <summary>Whether it stands last in its run.</summary>
    public bool IsLast => Column.Index == Columns - 1;

    /// <summary>Upper face of the panel below an opening; openings count from 0 at the bottom.</summary>
    public Length OpeningLow(int opening) => opening == 0 ? BottomUpper : Fixed[opening - 1].Upper;

    /// <summary>Underside of the panel above an opening.</summary>
    public Length OpeningHigh(int opening) => opening == Fixed.Count ? TopUnder : Fixed[opening].Upper - Run.T;

    /// <summary>What is clear under the panel above an opening: the nosing of a fixed shelf that does not stand back hangs below it.</summary>
    public Length ClearHigh(int opening)
    {
        var hangs = opening < Fixed.Count && ShelfSetback(opening) == Length.Zero && Run.ShelfNosing?.BoardWidth > Run.T;
        return OpeningHigh(opening) - (hangs ? Run.ShelfNosing!.BoardWidth!.Value - Run.T : Length.Zero);
    }

    /// <summary>The front that closes an opening; null for an open one.</summary>
    public FrontSpan? FrontOf(int opening) => Fronts.FirstOrDefault(f => f.Closes(opening));

    /// <summary>How far a fixed shelf stands back behind an inset door that passes in front of it.</summary>
    public Length ShelfSetback(int shelf) => FrontOf(shelf) is { } front && front.Closes(shelf + 1) ? front.Into(Run) : Length.Zero;

    /// <summary>What stands in front of it in blind corners.</summary>
    public IEnumerable<BlindFigures> Blind => Run.Blind.Where(b => b.AtRight ? IsLast : IsFirst);

    /// <summary>Where its visible front ends: short of its own edge in a blind corner.</summary>
    public Length FrontLeft => Blind.FirstOrDefault(b => !b.AtRight)?.Limit ?? X;

    /// <summary>Where its visible front ends on the right.</summary>
    public Length FrontRight => Blind.FirstOrDefault(b => b.AtRight)?.Limit ?? XEnd;

    /// <summary>Left face of a bay's opening.</summary>
    public Length BayLeft(int bay) => X + Run.T + ((Column.Clear + Run.T) * bay);

    /// <summary>Clear width of a bay: the last takes the nanometres that do not divide.</summary>
    public Length BayWidth(int bay) => bay < Bays - 1 ? Column.Clear : XEnd - Run.T - BayLeft(bay);

    /// <summary>Right face of a bay's opening.</summary>
    public Length BayRight(int bay) => BayLeft(bay) + BayWidth(bay);
}

/// <summary>The height of a fixed shelf.</summary>
/// <param name="Upper">Its upper face above the highest floor point.</param>
/// <param name="Source">Where that came from.</param>
internal sealed record FixedLevel(Length Upper, Derivation Source);

/// <summary>An opening with pin rows and loose shelves.</summary>
/// <param name="Low">Upper face of the panel below.</param>
/// <param name="High">Underside of the panel above.</param>
/// <param name="FirstHole">Height of the lowest hole above the highest floor point.</param>
/// <param name="Holes">Number of holes in a row.</param>
/// <param name="ShelfHoles">Hole, from 0, that each loose shelf rests on, from the bottom up.</param>
/// <param name="Setback">How far its shelves stand back behind an inset front.</param>
internal sealed record PinLevel(Length Low, Length High, Length FirstHole, int Holes, ValueList<int> ShelfHoles, Length Setback);

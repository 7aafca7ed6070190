namespace Casewright.Model.Parts;

/// <summary>What a part is in the casework.</summary>
public enum PartRole
{
    /// <summary>Outer upright of a case.</summary>
    Side,

    /// <summary>Inner upright.</summary>
    Partition,

    /// <summary>Top of a case.</summary>
    Top,

    /// <summary>Bottom of a case.</summary>
    Bottom,

    /// <summary>Housed, structural shelf.</summary>
    FixedShelf,

    /// <summary>Loose shelf on pins.</summary>
    AdjustableShelf,

    /// <summary>Rear panel.</summary>
    Back,

    /// <summary>Strip fixed through to studs.</summary>
    Nailer,

    /// <summary>Front or rear rail of a ladder base.</summary>
    BaseRail,

    /// <summary>Cross member of a ladder base.</summary>
    BaseRung,

    /// <summary>Scribed front of the base.</summary>
    ToeFace,

    /// <summary>Strip between case and wall.</summary>
    Filler,

    /// <summary>Applied finished end.</summary>
    EndPanel,

    /// <summary>Thick front of a shelf or upright.</summary>
    Nosing,

    /// <summary>Upright frame member.</summary>
    Stile,

    /// <summary>Level frame member.</summary>
    Rail,

    /// <summary>Flat strip hiding a joint of the backs.</summary>
    TrimBand,

    /// <summary>Ceiling moulding.</summary>
    Crown,

    /// <summary>Moulding along the base.</summary>
    BaseMould,

    /// <summary>Strip under the front of a hung run.</summary>
    LightRail,

    /// <summary>Hinged front.</summary>
    Door,

    /// <summary>Front of a drawer, screwed to its box.</summary>
    DrawerFront,

    /// <summary>Left or right side of a drawer box.</summary>
    DrawerSide,

    /// <summary>Front or back of a drawer box, between its sides.</summary>
    DrawerEnd,

    /// <summary>Bottom of a drawer box, in a groove.</summary>
    DrawerBottom,

    /// <summary>Panel on the front of a case in a blind corner.</summary>
    BlindPanel,

    /// <summary>Layer of a counter, desk top or seat.</summary>
    Counter,

    /// <summary>Strip that carries a counter or a bridge on a wall or a side.</summary>
    Cleat,

    /// <summary>Strip on a side that brings a drawer slide out to the opening of a face frame.</summary>
    SlidePacker,

    /// <summary>Stiffening strip under the front of a counter over a knee space.</summary>
    Apron,
}

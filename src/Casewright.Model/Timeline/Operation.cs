namespace Casewright.Model.Timeline;

/// <summary>What a standard time is counted by.</summary>
public enum WorkUnit
{
    /// <summary>One sheet.</summary>
    Sheet,

    /// <summary>One setting of a fence or stop.</summary>
    Setting,

    /// <summary>One saw cut.</summary>
    Cut,

    /// <summary>One part.</summary>
    Part,

    /// <summary>One joint.</summary>
    Joint,

    /// <summary>One batch of alike work: setting up.</summary>
    Batch,

    /// <summary>One pass with the router or dado head.</summary>
    Pass,

    /// <summary>One metre.</summary>
    Metre,

    /// <summary>One square metre of one face.</summary>
    SquareMetre,

    /// <summary>One case.</summary>
    Case,

    /// <summary>One piece carried.</summary>
    Piece,

    /// <summary>One outlet or switch.</summary>
    Outlet,

    /// <summary>One day on site.</summary>
    Day,

    /// <summary>One hinge.</summary>
    Hinge,

    /// <summary>One door.</summary>
    Door,

    /// <summary>One drawer.</summary>
    Drawer,
}

/// <summary>A piece of work that a standard time is kept for.</summary>
public enum Operation
{
    /// <summary>Unload, check, measure the thickness, stack.</summary>
    UnloadSheet,

    /// <summary>The same for a sheet over 2.5 m.</summary>
    UnloadLongSheet,

    /// <summary>Unload and check a board.</summary>
    UnloadBoard,

    /// <summary>Set a fence or a stop.</summary>
    FenceSetting,

    /// <summary>Rip on the table saw.</summary>
    TableRip,

    /// <summary>Rip with the track saw: sheets too heavy or long for one person at the table.</summary>
    TrackRip,

    /// <summary>Crosscut.</summary>
    Crosscut,

    /// <summary>Label and stack a piece.</summary>
    Label,

    /// <summary>Set up loose tenons and join a test piece.</summary>
    SetUpTenons,

    /// <summary>Set up draw connectors beside the tenons.</summary>
    SetUpConnectors,

    /// <summary>Set up splines.</summary>
    SetUpSplines,

    /// <summary>Set up half-laps.</summary>
    SetUpHalfLaps,

    /// <summary>Set up scarfs.</summary>
    SetUpScarfs,

    /// <summary>Set up backed butts.</summary>
    SetUpBackedButts,

    /// <summary>Square the ends of a splice and cut its mortises, grooves or laps.</summary>
    PrepareSplice,

    /// <summary>Spread, close and clamp a splice; setting the clamps included.</summary>
    GlueSplice,

    /// <summary>Take the clamps off a splice and scrape it.</summary>
    UnclampSplice,

    /// <summary>Flush a splice.</summary>
    FlushSplice,

    /// <summary>Set up dados and grooves.</summary>
    SetUpDados,

    /// <summary>Dado or groove.</summary>
    Dado,

    /// <summary>Set up rabbets.</summary>
    SetUpRabbets,

    /// <summary>Rabbet.</summary>
    Rabbet,

    /// <summary>Set up the boring jig.</summary>
    SetUpPinRows,

    /// <summary>Pin row with the jig.</summary>
    PinRow,

    /// <summary>Notch or cut-out in a part.</summary>
    Notch,

    /// <summary>Glue and flush a nosing.</summary>
    Nosing,

    /// <summary>Join a face frame.</summary>
    FaceFrameJoint,

    /// <summary>Glue a face frame to its case and flush it.</summary>
    FrameToCase,

    /// <summary>Assemble a case: what every case takes.</summary>
    AssembleCase,

    /// <summary>Assemble a case: what every part of it adds.</summary>
    AssemblePart,

    /// <summary>Take a case out of its clamps and fit its back.</summary>
    FitBack,

    /// <summary>Take a case without a back out of its clamps.</summary>
    UnclampCase,

    /// <summary>Build a ladder base.</summary>
    LadderBase,

    /// <summary>Sand by machine.</summary>
    MachineSand,

    /// <summary>Ease the edges and fill by hand.</summary>
    HandSand,

    /// <summary>Spray one coat.</summary>
    SprayCoat,

    /// <summary>Brush or roll one coat.</summary>
    BrushCoat,

    /// <summary>De-nib between coats.</summary>
    Denib,

    /// <summary>Load and carry in.</summary>
    CarryIn,

    /// <summary>Set and level the base.</summary>
    SetBase,

    /// <summary>Set, plumb, join and fix a case.</summary>
    SetCase,

    /// <summary>Scribe and fit a filler.</summary>
    ScribeFiller,

    /// <summary>Fit crown, base mould, toe face or trim band.</summary>
    FitMoulding,

    /// <summary>Cut out for an outlet.</summary>
    CutOutlet,

    /// <summary>Clean up and mend snags.</summary>
    CleanUp,

    /// <summary>Bore the cup of a hinge and screw on its plate.</summary>
    FitHinge,

    /// <summary>Hang and set a door, with its pull.</summary>
    HangDoor,

    /// <summary>Glue up a drawer box with its bottom.</summary>
    DrawerBox,

    /// <summary>Fit slides, box, front and pull of a drawer.</summary>
    FitDrawer,
}

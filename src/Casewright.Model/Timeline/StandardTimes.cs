using Casewright.Model.Collections;

namespace Casewright.Model.Timeline;

/// <summary>The time that one unit of an operation takes, with the range that shops report.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Per">What it is counted by.</param>
/// <param name="Minutes">Hands-on minutes a unit; positive.</param>
/// <param name="Least">Quick shops, in minutes a unit.</param>
/// <param name="Most">Slow shops, in minutes a unit.</param>
public sealed record StandardTime(Operation Operation, WorkUnit Per, decimal Minutes, decimal Least, decimal Most);

/// <summary>The shop's own time for an operation.</summary>
public sealed record ShopTime
{
    /// <summary>The operation.</summary>
    public required Operation Operation { get; init; }

    /// <summary>Hands-on minutes a unit; positive.</summary>
    public required decimal Minutes { get; init; }

    /// <summary>Number of jobs that it is the median of; 0 when somebody typed it.</summary>
    public int Jobs { get; init; }
}

/// <summary>Standard times: the usual ones of the trade (common practice, no source), and the shop's own where it has any.</summary>
public sealed record StandardTimes
{
    private static readonly StandardTime[] Table =
    [
        new(Operation.UnloadSheet, WorkUnit.Sheet, 6, 4, 10),
        new(Operation.UnloadLongSheet, WorkUnit.Sheet, 14, 10, 20),
        new(Operation.UnloadBoard, WorkUnit.Piece, 1, 0.5m, 2),
        new(Operation.FenceSetting, WorkUnit.Setting, 3, 2, 5),
        new(Operation.TableRip, WorkUnit.Cut, 2, 1.5m, 3),
        new(Operation.TrackRip, WorkUnit.Cut, 4, 3, 6),
        new(Operation.Crosscut, WorkUnit.Cut, 1.2m, 0.8m, 2),
        new(Operation.Label, WorkUnit.Part, 0.7m, 0.5m, 1),
        new(Operation.SetUpTenons, WorkUnit.Batch, 25, 15, 40),
        new(Operation.SetUpConnectors, WorkUnit.Batch, 15, 10, 25),
        new(Operation.SetUpSplines, WorkUnit.Batch, 20, 15, 40),
        new(Operation.SetUpHalfLaps, WorkUnit.Batch, 30, 20, 45),
        new(Operation.SetUpScarfs, WorkUnit.Batch, 60, 40, 90),
        new(Operation.SetUpBackedButts, WorkUnit.Batch, 5, 3, 10),
        new(Operation.PrepareSplice, WorkUnit.Joint, 10, 7, 18),
        new(Operation.GlueSplice, WorkUnit.Joint, 7, 5, 12),
        new(Operation.UnclampSplice, WorkUnit.Joint, 4, 3, 6),
        new(Operation.FlushSplice, WorkUnit.Joint, 5, 3, 8),
        new(Operation.SetUpDados, WorkUnit.Batch, 15, 10, 25),
        new(Operation.Dado, WorkUnit.Pass, 2.5m, 2, 4),
        new(Operation.SetUpRabbets, WorkUnit.Batch, 10, 5, 20),
        new(Operation.Rabbet, WorkUnit.Metre, 1, 0.7m, 2),
        new(Operation.SetUpPinRows, WorkUnit.Batch, 10, 5, 20),
        new(Operation.PinRow, WorkUnit.Metre, 3, 2, 5),
        new(Operation.Notch, WorkUnit.Part, 4, 2, 8),
        new(Operation.Nosing, WorkUnit.Metre, 9, 6, 15),
        new(Operation.FaceFrameJoint, WorkUnit.Joint, 9, 6, 14),
        new(Operation.FrameToCase, WorkUnit.Case, 50, 35, 80),
        new(Operation.AssembleCase, WorkUnit.Case, 45, 30, 120),
        new(Operation.AssemblePart, WorkUnit.Part, 4, 2, 8),
        new(Operation.FitBack, WorkUnit.Case, 15, 10, 25),
        new(Operation.UnclampCase, WorkUnit.Case, 5, 3, 10),
        new(Operation.LadderBase, WorkUnit.Metre, 15, 10, 25),
        new(Operation.MachineSand, WorkUnit.SquareMetre, 4, 3, 8),
        new(Operation.HandSand, WorkUnit.Part, 5, 3, 10),
        new(Operation.SprayCoat, WorkUnit.SquareMetre, 2.5m, 2, 4),
        new(Operation.BrushCoat, WorkUnit.SquareMetre, 7, 5, 12),
        new(Operation.Denib, WorkUnit.SquareMetre, 3, 2, 5),
        new(Operation.CarryIn, WorkUnit.Piece, 8, 5, 20),
        new(Operation.SetBase, WorkUnit.Metre, 25, 15, 45),
        new(Operation.SetCase, WorkUnit.Case, 45, 30, 90),
        new(Operation.ScribeFiller, WorkUnit.Metre, 20, 12, 40),
        new(Operation.FitMoulding, WorkUnit.Metre, 18, 12, 35),
        new(Operation.CutOutlet, WorkUnit.Outlet, 20, 15, 35),
        new(Operation.CleanUp, WorkUnit.Day, 30, 20, 60),
        new(Operation.FitHinge, WorkUnit.Hinge, 4, 3, 7),
        new(Operation.HangDoor, WorkUnit.Door, 10, 6, 20),
        new(Operation.DrawerBox, WorkUnit.Drawer, 25, 15, 45),
        new(Operation.FitDrawer, WorkUnit.Drawer, 15, 10, 30),
    ];

    /// <summary>The usual times of the trade, one for each operation.</summary>
    public static ValueList<StandardTime> Usual { get; } = Table.ToValueList();

    /// <summary>The shop's own times; at most one for each operation.</summary>
    public ValueList<ShopTime> Own { get; init; } = [];

    /// <summary>What the shop logged on its jobs. Logs propose times; they change none by themselves.</summary>
    public ValueList<LoggedTime> Logs { get; init; } = [];

    /// <summary>Factor on the hands-on time of splices under a clear finish; at least 1 (range 1.2 to 2).</summary>
    public decimal ClearFinishFactor { get; init; } = 1.4m;

    /// <summary>What two people on one task get done in the time in which one does 1; above 1, at most 2 (common practice, no source).</summary>
    public decimal OutputOfTwo { get; init; } = 1.7m;

    /// <summary>The usual time of an operation with its unit and range.</summary>
    public static StandardTime UsualOf(Operation operation) => Table[(int)operation];

    /// <summary>Minutes a unit: the shop's own where it has one, else the usual.</summary>
    public decimal Minutes(Operation operation) => Own.FirstOrDefault(t => t.Operation == operation)?.Minutes ?? UsualOf(operation).Minutes;
}

using Casewright.Model.Cutting;
using Casewright.Model.Files;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Model.Schemes;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Model.Tests.Files;

/// <summary>A small plan made by hand: one spliced side out of two sheets, and one nosing out of a board.</summary>
internal static class SamplePlan
{
    public static Plan Plan { get; } = new()
    {
        Job = JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value! with { Date = new(2026, 3, 9) },
        Cases =
        [
            new()
            {
                Id = "C1",
                Run = "books",
                Wall = "alcove",
                Column = 0,
                Tier = 0,
                X = Mm(30),
                Y = Mm(100),
                Width = Mm(713),
                Height = Mm(2600),
                Depth = Mm(320),
                Bays = 1,
                ClearBay = Mm(677.4m),
            },
        ],
        Parts = [Side, Nosing],
        Cutting = new()
        {
            Pieces =
            [
                Piece("C1-L/a", "C1-L", "S1", 0, 1500) with { AllowanceEnd = Mm(3) },
                Piece("C1-L/b", "C1-L", "S1", 1500, 2600) with { AllowanceStart = Mm(3), AllowanceEnd = Mm(10), X = Mm(10), Y = Mm(312.8m), Rotated = true },
                Piece("C1-N", "C1-N", "B1", 0, 677) with { FromBoard = true, Width = Mm(38), X = Mm(0), Y = Length.Zero },
            ],
            Splices = [Splice],
            Sheets = [Sheet],
            Boards = [Board],
            Bounds = Bounds,
            Materials = [new("birch-18", Bounds)],
        },
        Schedule = Schedule,
        Estimate = Estimate,
        Schemes = [Scheme, Scheme with { Kind = SchemeKind.LongSheets, Feasible = false, Why = ["no longer sheet is on offer"], Figures = null }],
        Findings = [Finding, Finding with { Value = double.NaN, Limit = null }],
    };

    private static Part Side => new()
    {
        Id = "C1-L",
        Name = "left side, case 1",
        Case = "C1",
        Run = "books",
        Role = PartRole.Side,
        Hand = Hand.Left,
        Material = "birch-18",
        Length = Mm(2600),
        Width = Mm(300),
        Thickness = Mm(17.8m),
        Grain = Grain.AlongLength,
        // A left side: it stands on its reference end, its front edge is the reference edge, its inner face the reference face.
        Place = new("alcove", new(Mm(47.8m), Mm(100), Mm(300)), Axis.Up, Axis.In, Axis.Left),
        ReferenceFace = Exposure.Shows,
        OppositeFace = Exposure.Hidden,
        ReferenceFaceName = "inside",
        OppositeFaceName = "outside",
    };

    private static Part Nosing => Side with
    {
        Id = "C1-N",
        Name = "nosing",
        Role = PartRole.Nosing,
        Hand = Hand.None,
        Material = "nosing-38",
        Length = Mm(677),
        Width = Mm(38),
        Thickness = Mm(20),
        Place = new("alcove", new(Mm(48), Mm(1100), Mm(320)), Axis.Right, Axis.Down, Axis.In),
        FitOnSite = "10 mm long",
    };

    private static Splice Splice => new()
    {
        Id = "C1-L/1",
        Part = "C1-L",
        Position = Mm(1500),
        Method = SpliceMethod.TenonsAndConnectors,
        Consumes = Mm(6),
        AccessFace = Face.Opposite,
        Tenons = [new(Mm(60), Mm(8.9m), Mm(6), Mm(22), Mm(44), Mm(23), Length.Zero)],
        Connectors = [new(Mm(150))],
        Holding = HoldingMethod.DrawConnectors,
        PairLetter = "A",
        MarkOffset = Mm(120),
    };

    private static SheetLayout Sheet => new()
    {
        Id = "S1",
        Stock = "birch-18-2440",
        Material = "birch-18",
        Length = Mm(2440),
        Width = Mm(1220),
        Trim = Mm(10),
        Kerf = Mm(2.8m),
        Cost = 78.00m,
        Bought = true,
        Cuts = [new(1, CutKind.Rip, 1, Mm(10), Mm(310), Mm(2430), Mm(310), Mm(300))],
        Offcuts = [new(Mm(1600), Mm(10), Mm(830), Mm(300))],
    };

    private static BoardLayout Board => new()
    {
        Id = "B1",
        Stock = "nosing-2400",
        Material = "nosing-38",
        Length = Mm(2400),
        Trim = Length.Zero,
        Kerf = Mm(2.8m),
        Cost = 9.6m,
        Bought = true,
        Cuts = [Mm(677)],
        Left = Mm(1720.2m),
    };

    private static CutBounds Bounds => new() { Cost = 100, LowerBound = 75, Sheets = 1, SheetsLowerBound = 1, Proven = false };

    private static Finding Finding => new()
    {
        Check = "shelf-sag",
        Severity = Severity.Caution,
        Subject = "C1-F1",
        Message = "The shelf sags ½ of what an eye sees.",
        Value = 1.25,
        Limit = 2,
        Unit = "mm",
        Formula = "5wL⁴/384EI",
        Source = "Roark",
        Standing = Standing.FromMemory,
        Advice = "Add a nosing.",
        Inputs = [new("L", "677", "mm")],
    };

    private static Scheme Scheme => new()
    {
        Kind = SchemeKind.Spliced,
        Job = JobFile.Read(StarterJob.Text(UnitSystem.Millimetres)).Value!,
        Changes = ["longer sheets are not bought"],
        Feasible = true,
        Why = [],
        Figures = new(3, 1, 160, 12.5m, 0.25m, 2, 1, 48.5, Mm(2600), 1250, new(2026, 3, 20)),
    };

    private static Estimate Estimate => new()
    {
        Currency = "EUR",
        Lines = [new(CostGroup.Material, "birch", 2, "sheet", 80, 160, "whole sheets, as bought")],
        Hours = [new(WorkPhase.Splicing, 1.5m)],
        Overhead = 0,
        MarkUp = 40,
        Contingency = 10,
        Rounding = 0,
        Net = 210,
        Tax = 42,
        Gross = 252,
        Payments = [new("with the order", 1, 252)],
    };

    private static Schedule Schedule => new()
    {
        Start = new(2026, 3, 9, 8, 0, 0),
        Finish = new(2026, 3, 9, 9, 30, 0),
        LowerBound = new(2026, 3, 9, 9, 30, 0),
        Proven = true,
        Gap = 0,
        Tasks =
        [
            new()
            {
                Id = "glue/C1-L",
                Name = "glue the left side",
                Phase = WorkPhase.Splicing,
                Start = new(2026, 3, 9, 8, 0, 0),
                Finish = new(2026, 3, 9, 9, 30, 0),
                Spans = [new(new(2026, 3, 9, 8, 0, 0), new(2026, 3, 9, 9, 30, 0))],
                Minutes = 90,
                Hands = 1,
                People = ["p1"],
                Work = [],
                Station = "bench",
                StationUntil = new(2026, 3, 9, 10, 30, 0),
                Clamps = [new(ClampKind.LongBar, 2, new(2026, 3, 9, 10, 30, 0))],
                RunsOn = [new("under clamps", new(2026, 3, 9, 10, 30, 0))],
                Splices = ["C1-L/1"],
            },
        ],
        Load = [],
        WorkMinutes = 90,
        StationDays = 0.25m,
        WorkingDays = 1,
        Orders = [new("birch-18-2440", 1, new(2026, 3, 5), new(2026, 3, 9))],
    };

    private static Piece Piece(string id, string part, string stock, decimal from, decimal to) => new()
    {
        Id = id,
        Part = part,
        Stock = stock,
        FromBoard = false,
        Length = Mm(to - from + 3),
        Width = Mm(300),
        X = Mm(10),
        Y = Mm(10),
        From = Mm(from),
        To = Mm(to),
    };

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}

using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>The light rail under a hung run: its face flush with the front of the cases, returned under the sides of finished ends.</summary>
internal static class LightRailParts
{
    /// <summary>The lengths from left to right, then the returns.</summary>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<ColumnSpan> columns) => run.LightRail is not { } rail ? [] : new MouldingLine
    {
        Run = run,
        Board = rail,
        Role = PartRole.LightRail,
        Letter = "J",
        Name = "light rail",
        Left = run.FaceLeft,
        Right = run.FaceRight,
        ReturnsLeft = run.Left.Kind == EndKind.Finished,
        ReturnsRight = run.Right.Kind == EndKind.Finished,
        Upper = run.BaseHeight,
        Depth = Rule.Of(Symbols.Depth(run)),
        Flush = true,
        Joints = columns.Skip(1).Select(c => c.X).ToValueList(),
    }.Parts();

    /// <summary>What a return at an end takes of the width under the cases.</summary>
    public static Length Takes(RunFigures run, EndFigures end) => run.LightRail is { } rail && end.Kind == EndKind.Finished ? rail.Thickness : Length.Zero;
}

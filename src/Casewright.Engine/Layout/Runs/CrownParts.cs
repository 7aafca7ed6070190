using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>The crown along the top of a run, with returns at finished ends.</summary>
internal static class CrownParts
{
    /// <summary>The lengths from left to right, then the returns.</summary>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<ColumnSpan> columns) => run.Crown is not { } crown ? [] : new MouldingLine
    {
        Run = run,
        Board = crown,
        Role = PartRole.Crown,
        Letter = "H",
        Name = "crown",
        Left = run.FaceLeft,
        Right = run.FaceRight,
        ReturnsLeft = run.Left.Kind == EndKind.Finished,
        ReturnsRight = run.Right.Kind == EndKind.Finished,
        Upper = run.Top - run.Run.Head.CrownLap + crown.BoardWidth!.Value,
        Depth = Rule.Of(Symbols.Depth(run)),
        Joints = columns.Skip(1).Select(c => c.X).ToValueList(),
    }.Parts();
}

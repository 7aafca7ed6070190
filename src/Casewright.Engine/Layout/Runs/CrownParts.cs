using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>
/// The crown along the top of a run, with returns at finished ends. Where the ceiling was read it may reach above the lowest ceiling by what
/// the ceiling rises and the scribe stock, and is scribed to it.
/// </summary>
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
        Left = run.FaceLeft - Past(run.Left),
        Right = run.FaceRight + Past(run.Right),
        ReturnsLeft = run.Left.Kind == EndKind.Finished,
        ReturnsRight = run.Right.Kind == EndKind.Finished,
        Upper = run.Top - run.Run.Head.CrownLap + crown.BoardWidth!.Value,
        Depth = Rule.Of(Symbols.Depth(run)),
        Joints = columns.Skip(1).Select(c => c.X).ToValueList(),
        AlsoOnSite = Above(run) is var above && above > Length.Zero ? $"; scribed to the ceiling, up to {LengthFormat.Usual(above, run.Job.Units)} off its upper edge" : "",
    }.Parts();

    /// <summary>How far a crown may reach above the lowest ceiling: the range of the ceiling readings and the scribe stock; nothing where nobody read it.</summary>
    public static Length ScribeRoom(RunFigures run)
    {
        var readings = (run.Wall.Survey?.Ceiling ?? []).SelectMany(s => new[] { s.Back, s.Front }).OfType<Length>().ToList();
        return readings.Count == 0 ? Length.Zero : readings.Max() - readings.Min() + run.Joinery.ScribeAllowance;
    }

    /// <summary>Over the side of a diagonal case, to its inner arris.</summary>
    private static Length Past(EndFigures end) => end.Corner?.Diagonal?.Side ?? Length.Zero;

    private static Length Above(RunFigures run) => run.Top - run.Run.Head.CrownLap + run.Crown!.BoardWidth!.Value - run.Wall.Height;
}

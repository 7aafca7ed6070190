using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Runs;

/// <summary>
/// The base mould in front of the toe face, from the floor up by its board width less what is scribed off. With no setback it runs along the
/// front of the whole run and round its finished ends; with one it lies in the toe space and turns with it. Against an end panel that runs to
/// the floor it ends.
/// </summary>
internal static class BaseMouldParts
{
    /// <summary>Stretch by stretch the lengths from left to right, then the returns.</summary>
    /// <param name="run">The run.</param>
    /// <param name="cases">Its cases.</param>
    /// <param name="stretches">The stretches of a ladder base between knee spaces; empty where the sides run to the floor.</param>
    public static IEnumerable<Part> Of(RunFigures run, IReadOnlyList<CaseFigures> cases, IReadOnlyList<BaseStretch> stretches)
    {
        if (run.BaseMould is not { } mould)
            yield break;
        var joints = cases.Where(c => c.Tier.Index == 0 && !c.IsFirst).Select(c => c.X).ToValueList();
        var before = 0;
        foreach (var (stretch, i) in (stretches.Count == 0 ? [run] : stretches.Select(s => s.Run)).Select((s, i) => (s, i)))
        {
            var line = Line(stretch, mould, joints) with { Before = before, Suffix = i == 0 ? "" : Number(i + 1) };
            foreach (var part in line.Parts())
                yield return part;
            before += line.Lengths;
        }
    }

    /// <summary>Its upper edge: the board width less what the floor falls and what is left on for scribing.</summary>
    public static Length Upper(RunFigures run, Material mould) => mould.BoardWidth!.Value - (run.FloorFall ?? Length.Zero) - run.Joinery.ScribeAllowance;

    private static MouldingLine Line(RunFigures run, Material mould, ValueList<Length> joints)
    {
        var setback = run.Run.Base.Setback;
        return new()
        {
            Run = run,
            Board = mould,
            Role = PartRole.BaseMould,
            Letter = "O",
            Name = "base mould",
            Left = run.CasesLeft - Beyond(run, run.Left) + (run.Left.ToeReturns ? setback : Length.Zero),
            Right = run.CasesRight + Beyond(run, run.Right) - (run.Right.ToeReturns ? setback : Length.Zero),
            ReturnsLeft = Returns(run, run.Left),
            ReturnsRight = Returns(run, run.Right),
            Upper = Upper(run, mould),
            Depth = setback == Length.Zero
                ? Rule.Of(Symbols.Depth(run))
                : Rule.Of(Symbols.Depth(run)).Minus(new("z", $"setback of the toe face ({run.Path}.base.setback)", setback)),
            Joints = joints,
            AlsoOnSite = $"; {LengthFormat.Usual(run.Joinery.ScribeAllowance + (run.FloorFall ?? Length.Zero), run.Job.Units)} left on along the lower edge, scribed to the floor",
        };
    }

    /// <summary>At a wall to the wall, in a corner to the toe face of the other run; a panel only where nothing stands back behind it.</summary>
    private static Length Beyond(RunFigures run, EndFigures end) =>
        end.Corner?.ToToe ?? (end.Panel is not null && run.Run.Base.Setback > Length.Zero ? Length.Zero : end.Shown);

    private static bool Returns(RunFigures run, EndFigures end) =>
        end.Kind == EndKind.Finished && (end.Panel is null || run.Run.Base.Setback == Length.Zero);

    private static string Number(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

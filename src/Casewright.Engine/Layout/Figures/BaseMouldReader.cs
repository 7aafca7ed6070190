using Casewright.Engine.Layout.Runs;
using Casewright.Model.Design;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Notes base moulds and light rails that have nothing to lie on, or that stand before fronts.</summary>
internal static class BaseMouldReader
{
    /// <summary>Checks the mouldings of a run's base.</summary>
    public static void Check(RunFigures run, ProblemList problems)
    {
        if (run.LightRail is not null && run.Run.Base.Kind != BaseKind.Hung)
            problems.Add(run.Path + ".base.lightRail", "A light rail lies under a hung run.", run.Run.Base.Kind.ToString(), "kind hung, or no light rail");
        if (run.LightRail is { } rail && rail.BoardWidth!.Value > run.BaseHeight)
            problems.Add(run.Path + ".base.lightRail", "The light rail reaches into the floor.", rail.BoardWidth!.Value, $"at most {problems.Say(run.BaseHeight)}");
        if (run.BaseMould is not { } mould)
            return;
        var path = run.Path + ".base.mould";
        if (run.Run.Base.Kind is BaseKind.None or BaseKind.Hung)
        {
            problems.Add(path, "There is no base for a moulding to lie on.", run.Run.Base.Kind.ToString(), "kind plinth or sidesToFloor, or no mould");
            return;
        }

        var upper = BaseMouldParts.Upper(run, mould);
        if (upper <= Length.Zero)
            problems.Add(path, "Nothing is left of the moulding once it is scribed to the floor.", mould.BoardWidth!.Value, $"more than {problems.Say(mould.BoardWidth!.Value - upper)}");
        if (upper > run.BaseHeight)
            problems.Add(path, "The moulding is higher than the base and stands before the cases.", upper, $"at most {problems.Say(run.BaseHeight)}: a narrower moulding or a higher base");
        if (run.SidesToFloor && run.Run.Base.Setback > Length.Zero)
            problems.Add(run.Path + ".base.setback", "Sides that run to the floor stand in the way of a moulding that is set back.", run.Run.Base.Setback, "0, or a ladder base");
        if (run.SidesToFloor && run.Run.Columns.Any(c => c.Open))
            problems.Add(path, "A knee space interrupts the moulding.", "sidesToFloor", "a ladder base, or no mould");
    }
}

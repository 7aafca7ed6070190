using Casewright.Engine.Layout.Figures;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Rules;

/// <summary>The symbols of the formulas, each with its meaning and where it was stated. docs/conventions.md lists them.</summary>
internal static class Symbols
{
    /// <summary>t: panel thickness of the cases.</summary>
    public static DerivationInput Thickness(RunFigures run) => Thickness("t", run.Panel);

    /// <summary>The thickness of any material, measured where it has been measured.</summary>
    public static DerivationInput Thickness(string symbol, Material material) =>
        new(symbol, (material.Measured is null ? "thickness as sold, not yet measured, of " : "measured thickness of ") + material.Name, material.Thickness);

    /// <summary>D: depth of the run.</summary>
    public static DerivationInput Depth(RunFigures run) => new("D", $"depth of the cases ({run.DepthPath})", run.Run.Depth);

    /// <summary>tf: thickness of the face frame; null for a frameless run.</summary>
    public static DerivationInput? Frame(RunFigures run) => run.Frame is { } frame ? Thickness("tf", frame.EndStile) : null;

    /// <summary>e: thickness of a nosing; null for a bare edge.</summary>
    public static DerivationInput? Nosing(Material? nosing) => nosing is null ? null : Thickness("e", nosing);

    /// <summary>tb: thickness of the back; null without a back.</summary>
    public static DerivationInput? Back(RunFigures run) => run.Back is null ? null : Thickness("tb", run.Back);

    /// <summary>i: inset of a captured back; null for others.</summary>
    public static DerivationInput? Inset(RunFigures run) =>
        run.BackRear == Length.Zero ? null : new("i", $"inset of the back ({run.Path}.back.inset)", run.BackRear);

    /// <summary>tv: how far an inset front lies within the case; null where none does.</summary>
    public static DerivationInput? InsetFront(Length setback) =>
        setback == Length.Zero ? null : new("tv", "thickness of the inset front, less a face frame", setback);

    /// <summary>kz: what a ladder base keeps off the wall for a skirting that stays; null where there is none.</summary>
    public static DerivationInput? Skirting(RunFigures run) => run.SkirtingRoom == Length.Zero
        ? null
        : new("kz", "projection of the skirting that stays, with play (survey)", run.SkirtingRoom);

    /// <summary>B: height of the base.</summary>
    public static DerivationInput Base(RunFigures run) => new("B", $"height of the base ({run.Path}.base.height)", run.BaseHeight);

    /// <summary>a: depth of the dados.</summary>
    public static DerivationInput Dado(RunFigures run) => Joint(run, "a", "depth of the dados", "dadoDepth", run.Joinery.DadoDepth);

    /// <summary>A figure of the run's joinery.</summary>
    public static DerivationInput Joint(RunFigures run, string symbol, string meaning, string field, Length value) =>
        new(symbol, $"{meaning} ({run.Path}.joinery.{field})", value);

    /// <summary>s: scribe allowance.</summary>
    public static DerivationInput Scribe(RunFigures run) => Joint(run, "s", "left on for scribing", "scribeAllowance", run.Joinery.ScribeAllowance);

    /// <summary>xw: how far the wall at an end falls away from its innermost point; null when it was not surveyed.</summary>
    public static DerivationInput? FallsAway(EndFigures end) =>
        end.FallsAway is { } away ? new("xw", "how far the wall falls away from its innermost point (survey)", away) : null;

    /// <summary>zw: how far the wall behind an end lies behind its foremost point; null when it was not surveyed.</summary>
    public static DerivationInput? Behind(EndFigures end) =>
        end.Behind is { } behind ? new("zw", "how far the wall lies behind its foremost point (survey)", behind) : null;

    /// <summary>yf: how far the floor falls below its highest point under the toe face; null when it was not surveyed.</summary>
    public static DerivationInput? FloorFall(RunFigures run) =>
        run.FloorFall is { } fall ? new("yf", "how far the floor falls below its highest point (survey)", fall) : null;

    /// <summary>The width of a board material.</summary>
    public static DerivationInput BoardWidth(string symbol, Material board) => new(symbol, "board width of " + board.Name, board.BoardWidth!.Value);
}

using Casewright.Engine.Layout.Rules;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// Which bays one back panel covers: the whole case, or, where no sheet is wide enough, as few panels as possible that meet on the
/// middle of a partition, as alike as the bays allow.
/// </summary>
internal static class BackPanels
{
    /// <summary>The panels of a case from left to right, as first and last bay.</summary>
    public static ValueList<(int First, int Last)> Divide(CaseFigures box)
    {
        if (box.Run.Back is not { } material)
            return [];
        var sheets = UsableSheets.Of(box.Run.Job, material);
        if (box.Bays == 1 || sheets.None)
            return [(0, box.Bays - 1)];
        var fewest = FewestPanels(box, sheets);
        for (var panels = fewest; panels < box.Bays; panels++)
        {
            var spread = Spread(box.Bays, panels);
            if (spread.All(p => sheets.Covers(Height(box), BackSpan.Of(box, p.First, p.Last).Exact)))
                return spread;
        }

        return Spread(box.Bays, box.Bays);
    }

    /// <summary>No fewer panels than the whole width holds of the widest sheet.</summary>
    private static int FewestPanels(CaseFigures box, UsableSheets sheets)
    {
        var widest = sheets.Widest;
        var whole = BackSpan.Of(box, 0, box.Bays - 1).Exact;
        return widest <= Length.Zero ? box.Bays : (int)Math.Clamp((whole + widest - Length.FromNanometres(1)) / widest, 1, box.Bays);
    }

    /// <summary>Height of a back before rounding.</summary>
    public static Length Height(CaseFigures box) => BackSpan.Height(box).Exact;

    private static ValueList<(int First, int Last)> Spread(int bays, int panels) =>
        Enumerable.Range(0, panels).Select(i => (bays * i / panels, (bays * (i + 1) / panels) - 1)).ToValueList();
}

/// <summary>Width and height of back panels, and where they lie.</summary>
internal static class BackSpan
{
    /// <summary>The width of the panel over some bays: from the outline of the back, or from the middle of a partition.</summary>
    public static Rule Of(CaseFigures box, int first, int last)
    {
        var run = box.Run;
        var rule = Rule.Of(new("w", $"clear width of bays {first + 1} to {last + 1} with the partitions between them", box.BayRight(last) - box.BayLeft(first)));
        var ends = (first == 0 ? 1 : 0) + (last == box.Bays - 1 ? 1 : 0);
        if (ends == 2)
            return Whole(box);
        rule = rule.Plus(new("m", "half a partition, on which the panels meet", run.T / 2), 2 - ends);
        if (ends == 0)
            return rule;
        return run.Run.Back.Kind switch
        {
            BackKind.Captured => rule.Plus(Groove(run)).Minus(Play(run)),
            BackKind.Rabbeted => rule.Plus(Rabbet(run)).Minus(Play(run)),
            _ => rule.Plus(Symbols.Thickness(run)).Minus(Reveal(run)),
        };
    }

    /// <summary>The height of the case's backs; under a slope that of the whole width.</summary>
    public static Rule Height(CaseFigures box) => Height(box, 0, box.Bays - 1);

    /// <summary>The height of the panel over some bays: under a slope at its high edge.</summary>
    public static Rule Height(CaseFigures box, int first, int last)
    {
        var run = box.Run;
        var h = new CaseSymbols(box);
        if (box.Rake is { } rake)
            return Raked(box, rake, rake.Higher(Left(box, first), Left(box, first) + Of(box, first, last).Exact));
        return run.Run.Back.Kind switch
        {
            BackKind.Captured => Rule.Of(h.H).Minus(Symbols.Thickness(run), 2).MinusAny(h.Raise).Plus(Groove(run), 2).Minus(Play(run)),
            BackKind.Rabbeted => Rule.Of(h.H).MinusAny(h.Raise).Minus(Play(run)),
            _ => Rule.Of(h.H).MinusAny(h.Raise).Minus(Reveal(run), 2),
        };
    }

    /// <summary>Lower edge of the backs above the highest floor point.</summary>
    public static Length Foot(CaseFigures box)
    {
        var joinery = box.Run.Joinery;
        return box.Run.Run.Back.Kind switch
        {
            BackKind.Captured => box.BottomUpper - joinery.GrooveDepth + (joinery.BackPlay / 2),
            BackKind.Rabbeted => box.BottomUnder + (joinery.BackPlay / 2),
            _ => box.BottomUnder + joinery.BackReveal,
        };
    }

    /// <summary>Left edge of the panel that begins in this bay.</summary>
    public static Length Left(CaseFigures box, int first)
    {
        var run = box.Run;
        if (first > 0)
            return box.BayLeft(first) - run.T + (run.T / 2);
        return run.Run.Back.Kind switch
        {
            BackKind.Captured => box.BayLeft(0) - run.Joinery.GrooveDepth + (run.Joinery.BackPlay / 2),
            BackKind.Rabbeted => box.BayLeft(0) - run.RabbetDepth + (run.Joinery.BackPlay / 2),
            _ => box.X + run.Joinery.BackReveal,
        };
    }

    /// <summary>As under a level top, less what the slope falls to the high edge of the panel; what the top takes is measured plumb.</summary>
    private static Rule Raked(CaseFigures box, RakeFigures rake, Length high)
    {
        var run = box.Run;
        var h = new CaseSymbols(box);
        var rule = Rule.Of(h.H).MinusAny(h.Raise).Minus(RakedUprights.Fall(box, rake, high));
        var plumbGroove = new DerivationInput("gk", $"the groove, plumb: g/cos θ ({run.Path}.joinery.grooveDepth)", rake.Slope.Along(run.Joinery.GrooveDepth));
        return run.Run.Back.Kind switch
        {
            BackKind.Captured => rule.Minus(Symbols.Thickness(run)).Minus(RakedUprights.Plumb(run, rake)).Plus(Groove(run)).Plus(plumbGroove).Minus(Play(run)),
            BackKind.Rabbeted => rule.Minus(Play(run)),
            _ => rule.Minus(Reveal(run)).Minus(new("vk", $"the reveal, plumb: v/cos θ ({run.Path}.joinery.backReveal)", rake.Slope.Along(run.Joinery.BackReveal))),
        };
    }

    private static Rule Whole(CaseFigures box)
    {
        var run = box.Run;
        var w = new CaseSymbols(box).W;
        return run.Run.Back.Kind switch
        {
            BackKind.Captured => Rule.Of(w).Minus(Symbols.Thickness(run), 2).Plus(Groove(run), 2).Minus(Play(run)),
            BackKind.Rabbeted => Rule.Of(w).Minus(Symbols.Thickness(run), 2).Plus(Rabbet(run), 2).Minus(Play(run)),
            _ => Rule.Of(w).Minus(Reveal(run), 2),
        };
    }

    private static DerivationInput Groove(RunFigures run) =>
        Symbols.Joint(run, "g", "depth of the groove", "grooveDepth", run.Joinery.GrooveDepth);

    private static DerivationInput Rabbet(RunFigures run) =>
        Symbols.Joint(run, "r", "depth of the rabbet", "rabbetDepth", run.RabbetDepth);

    private static DerivationInput Play(RunFigures run) =>
        Symbols.Joint(run, "p", "play of the back", "backPlay", run.Joinery.BackPlay);

    private static DerivationInput Reveal(RunFigures run) =>
        Symbols.Joint(run, "v", "reveal of the back", "backReveal", run.Joinery.BackReveal);
}

using Casewright.Engine.Layout.Cases;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Fronts;

/// <summary>
/// The field that the fronts of one bay share, and its rules. Overlaid and frameless: from the outline of the case, or the middle of the
/// partition or shelf that two fields share, less a gap; overlaid on a frame: the frame opening and a lap each side; inset: the opening
/// and a gap each side.
/// </summary>
/// <param name="Box">The case.</param>
/// <param name="Span">The front.</param>
/// <param name="Bay">The bay, from 0.</param>
internal sealed record FrontField(CaseFigures Box, FrontSpan Span, int Bay)
{
    private RunFigures Run => Box.Run;

    private FrontGaps Gaps => Run.Gaps;

    private bool OnFrame => Run.Frame is not null;

    /// <summary>Gap between two fronts of the field.</summary>
    public DerivationInput Gap => Span.IsInset
        ? Input("gi", "gap round an inset front", "inset", Gaps.Inset)
        : Input("gb", "gap between two fronts", "between", Gaps.Between);

    /// <summary>Width of the fronts of the field together, gaps between them taken off.</summary>
    public Rule Across(int fronts) => Less(Whole("width", Left, Right, Box.Bays == 1, Box.Width), AtCaseEdge(left: true), AtCaseEdge(left: false), fronts);

    /// <summary>Height of the fronts of the field together, gaps between them taken off.</summary>
    public Rule Up(int fronts) => Less(Whole("height", Low, High, Span.First == 0 && Span.Last == Box.Fixed.Count, Box.Height), Span.First == 0, Span.Last == Box.Fixed.Count, fronts);

    /// <summary>Left edge of the first front.</summary>
    public Length FirstX => Left + Margin(AtCaseEdge(left: true));

    /// <summary>Lower edge of the lowest front.</summary>
    public Length FirstY => Low + Margin(Span.First == 0);

    /// <summary>Upper face of the panel below the openings, and what is clear under the panel, or the rail of the frame, above them.</summary>
    public (Length Low, Length High) Opening => (Box.OpeningLow(Span.First), OnFrame ? Length.Min(Box.ClearHigh(Span.Last), FaceFrames.Above(Box, Span.Last)) : Box.ClearHigh(Span.Last));

    /// <summary>What a drawer comes out through: the bay, or the opening of the frame before it.</summary>
    public (Length Left, Length Right) Clear => OnFrame
        ? (Length.Max(Box.BayLeft(Bay), FaceFrames.Left(Box, Bay)), Length.Min(Box.BayRight(Bay), FaceFrames.Right(Box, Bay)))
        : (Box.BayLeft(Bay), Box.BayRight(Bay));

    private bool AtCaseEdge(bool left) => left ? Bay == 0 : Bay == Box.Bays - 1;

    private Length Left => OnFrame ? FaceFrames.Left(Box, Bay)
        : Span.IsInset ? Length.Max(Box.BayLeft(Bay), Bay == 0 ? Box.FrontLeft : Box.X)
        : Bay == 0 ? Box.FrontLeft : Box.BayLeft(Bay) - (Run.T / 2);

    private Length Right => OnFrame ? FaceFrames.Right(Box, Bay)
        : Span.IsInset ? Length.Min(Box.BayRight(Bay), Bay == Box.Bays - 1 ? Box.FrontRight : Box.XEnd)
        : Bay == Box.Bays - 1 ? Box.FrontRight : Box.BayRight(Bay) + (Run.T / 2);

    private Length Low => OnFrame || Span.IsInset ? Box.OpeningLow(Span.First)
        : Span.First == 0 ? Box.Y : Box.OpeningLow(Span.First) - (Run.T / 2);

    private Length High => OnFrame ? FaceFrames.Above(Box, Span.Last)
        : Span.IsInset ? Box.ClearHigh(Span.Last)
        : Span.Last == Box.Fixed.Count ? Length.Min(Box.YEnd, Run.BelowCrown) : Box.OpeningHigh(Span.Last) + (Run.T / 2);

    private Length Margin(bool caseEdge) => Span.IsInset ? Gaps.Inset : OnFrame ? -Gaps.FrameLap : caseEdge ? Gaps.Edge : Gaps.Between / 2;

    private DerivationInput Whole(string what, Length from, Length to, bool whole, Length ofCase)
    {
        if (Span.IsInset || OnFrame)
            return new("o", $"{what} of the opening {(OnFrame ? "in the frame" : "of the bay")}", to - from);
        return whole && to - from == ofCase
            ? new(what == "width" ? "W" : "H", $"outer {what} of case {Box.Number}", ofCase)
            : new("F", $"{what} of the field: from the outline of the case, or the middle of the panel that two fields share", to - from);
    }

    private Rule Less(DerivationInput whole, bool firstAtEdge, bool lastAtEdge, int fronts)
    {
        var rule = Rule.Of(whole);
        if (Span.IsInset)
            return rule.Minus(Gap, fronts + 1);
        if (OnFrame)
            rule = rule.Plus(Input("vf", "lap over the frame", "frameLap", Gaps.FrameLap), 2);
        else if (firstAtEdge == lastAtEdge)
            rule = rule.Minus(Margin(firstAtEdge, whole), 2);
        else
            rule = rule.Minus(Margin(true, whole)).Minus(Margin(false, whole));
        return fronts > 1 ? rule.Minus(Gap, fronts - 1) : rule;
    }

    private DerivationInput Margin(bool caseEdge, DerivationInput whole) => caseEdge
        ? Input("ge", "gap to the outline of the case", "edge", Gaps.Edge)
        : Input("gm", $"half the gap between two fronts, at the panel where the {(whole.Symbol == "W" ? "case" : "field")} ends", "between", Gaps.Between / 2);

    private DerivationInput Input(string symbol, string meaning, string field, Length value) => new(symbol, $"{meaning} ({Run.Path}.frontGaps.{field})", value);
}

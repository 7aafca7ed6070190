using Casewright.Engine.Layout.Cases;
using Casewright.Engine.Layout.Corners;
using Casewright.Engine.Layout.Counters;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Notices;
using Casewright.Engine.Layout.Runs;
using Casewright.Engine.Layout.Slopes;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>One run laid out: its cases, its parts and what was noticed.</summary>
/// <param name="Cases">Cases by column and tier.</param>
/// <param name="Parts">Parts of the cases in their order, then those of the run.</param>
/// <param name="Findings">What was noticed.</param>
internal sealed record RunLayout(IReadOnlyList<CaseBox> Cases, IReadOnlyList<Part> Parts, IReadOnlyList<Finding> Findings)
{
    /// <summary>Lays out a run whose figures are possible; null when there are problems, which the list then holds.</summary>
    /// <param name="run">The run.</param>
    /// <param name="firstColumn">Number of its first column in the job, from 1.</param>
    /// <param name="columns">Number of its columns, known even when problems keep it from being laid out.</param>
    /// <param name="problems">Receives the problems.</param>
    public static RunLayout? Lay(RunFigures run, int firstColumn, out int columns, ProblemList problems)
    {
        var before = problems.All.Count;
        var spans = new ColumnDivision(run, problems).Divide();
        var tiers = TierDivision.Divide(run, problems);
        var corners = new[] { (run.Left, false), (run.Right, true) }.Where(e => e.Item1.Corner is { Diagonal.Carries: true }).Select(e => e.Item2).ToList();
        columns = spans.Count + corners.Count;
        if (spans.Count == 0 || tiers.Count == 0)
            return null;
        CheckMidStile(run, spans, problems);
        var reader = new CaseReader(run, spans, tiers, problems);
        if (!reader.CheckInteriors())
            return null;
        CaseFigures[] cases = [.. spans.SelectMany(span => tiers.Select(tier => reader.Read(span, tier, firstColumn + span.Index)))];
        if (problems.All.Count > before)
            return null;
        cases = WithBands(run, cases, tiers.Count, problems);
        var stretches = run.Run.Base.Kind == BaseKind.Plinth ? BaseStretches.Of(run.In(tiers[0]), cases, problems) : [];
        var counters = tiers.SelectMany(tier => CounterParts.Of(run.In(tier), tier, cases, problems)).ToArray();
        DiagonalCase[] diagonals =
        [
            .. corners.SelectMany((atRight, i) => tiers.Select(
                tier => new DiagonalCase(run.In(tier), tier, PartIds.Case(firstColumn + spans.Count + i, tier.Index, tiers.Count), atRight))),
        ];
        return problems.All.Count > before ? null : Assemble(run, spans, tiers, cases, stretches, counters).With(run, diagonals, spans.Count, tiers.Count);
    }

    /// <summary>The cases in diagonal corners come after the others, with what is under and over them.</summary>
    private RunLayout With(RunFigures run, DiagonalCase[] diagonals, int columns, int tiers) => diagonals.Length == 0 ? this : this with
    {
        Cases = [.. Cases, .. diagonals.Select((d, i) => d.Box(columns + (i / tiers)))],
        Parts = [.. Parts, .. diagonals.SelectMany(d => d.Parts()), .. DiagonalBase.Of(run)],
    };

    private static void CheckMidStile(RunFigures run, IReadOnlyList<ColumnSpan> spans, ProblemList problems)
    {
        if (run.Frame is { MidStile: null } && spans.Any(s => s.Bays > 1))
            problems.Add(run.Path + ".faceFrame.midStile", "Cases of several bays need a mid stile over each partition.", "nothing", "a board material at least as wide as the panel is thick");
    }

    private static CaseFigures[] WithBands(RunFigures run, CaseFigures[] cases, int tiers, ProblemList problems)
    {
        if (run.Band is null)
            return cases;
        var finder = new TrimBandHeight(run, problems);
        var heights = Enumerable.Range(0, tiers).Select(tier => finder.Find([.. cases.Where(c => c.Tier.Index == tier && !c.IsKnee)])).ToArray();
        return [.. cases.Select(c => !c.IsKnee && TrimBandHeight.NeedsJoint(c) ? c with { BandHeight = heights[c.Tier.Index] } : c)];
    }

    private static RunLayout Assemble(
        RunFigures run, IReadOnlyList<ColumnSpan> spans, IReadOnlyList<TierSpan> tiers, CaseFigures[] cases, IReadOnlyList<BaseStretch> stretches, IReadOnlyList<Part> counters)
    {
        Part[] parts =
        [
            .. cases.SelectMany(CaseParts.Of),
            .. RunFrameParts.Of(cases),
            .. BaseStretches.Parts(stretches),
            .. RakedEnds.Under(run, cases, RunEnds.Of(run, tiers)),
            .. SlopeFillers.Of(run, cases),
            .. CrownParts.Of(run.In(tiers[^1]), spans),
            .. BaseMouldParts.Of(run.In(tiers[0]), cases, stretches),
            .. LightRailParts.Of(run.In(tiers[0]), spans),
            .. counters,
            .. Bridges.Cleat(run),
        ];
        return new([.. cases.Select(CaseParts.Box)], parts, LayoutNotices.Of(run, cases, parts));
    }
}

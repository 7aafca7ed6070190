using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Surveying;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Corners;

/// <summary>
/// The case in a diagonal corner. It is square with the wall of the run that carries it; its legs L and M along the two walls are such that the front runs at 45
/// degrees from run to run: L − D2 = M − D1. With t the thickness of its sides, the opening between their inner arrises is o = √2·(L − D2 − t). Where the
/// corner is closed by an error e the case stands off by M·tan e, so that its far end clears the other wall; the run on that wall takes the error up in its filler.
/// </summary>
/// <param name="Leg">L: along the wall of the run that carries it.</param>
/// <param name="OtherLeg">M: along the other wall.</param>
/// <param name="Depth">D1: depth of the run that carries it.</param>
/// <param name="OtherDepth">D2: depth of the other run.</param>
/// <param name="Off">From the end of the wall to the case.</param>
/// <param name="Side">t: thickness of its sides.</param>
/// <param name="Setback">Setback of the toe faces.</param>
/// <param name="Carries">Whether the run that sees it so carries it.</param>
/// <param name="Door">Material of its door; null for an open front.</param>
internal sealed record DiagonalFigures(
    Length Leg, Length OtherLeg, Length Depth, Length OtherDepth, Length Off, Length Side, Length Setback, bool Carries, Material? Door)
{
    /// <summary>From the inner arris of one side to that of the other, along either wall.</summary>
    public Length Across => Leg - OtherDepth - Side;

    /// <summary>o: clear width of the front.</summary>
    public Length Opening => Diagonal(Across);

    /// <summary>How far the toe face of a run goes on past its last case to that of the diagonal: t + z·(√2 − 1).</summary>
    public Length ToeBeyond => Side + Diagonal(Setback) - Setback;

    /// <summary>Length of the toe face across the corner, a distance behind the front: o + z·(2√2 − 2).</summary>
    public Length ToeAcross(Length behind) => Opening + ((Diagonal(behind) - behind) * 2);

    /// <summary>√2 times a length, to the nanometre.</summary>
    public static Length Diagonal(Length length) => Length.FromNanometres((long)Math.Round(length.Nanometres * Math.Sqrt(2)));
}

/// <summary>Works out diagonal corners and notes those that cannot be.</summary>
internal sealed class DiagonalReader(Job job, int index, ProblemList problems)
{
    private static readonly Length s_leastOpening = Length.FromMillimetres(250);

    private readonly Run _run = job.Runs[index];

    /// <summary>The angle that either of the two runs states.</summary>
    public static double? StatedAngle(Job job, Run run, CornerDesign design) => Back(job, run, design)?.Angle;

    /// <summary>The corner as the run sees it; null where it has a problem, which the list then holds.</summary>
    public CornerFigures? Read(CornerDesign design, string path, Run other, double angle, bool left, Length filler)
    {
        var back = Back(job, _run, design)!;
        if (design.Leg is null == back.Leg is null)
        {
            problems.Add(path + ".corner.leg", "One of the two runs carries the case in the corner, and gives its leg.", design.Leg is null ? "neither" : "both", "a leg in one of the two");
            return null;
        }

        var carries = design.Leg is not null;
        var (carrier, met) = carries ? (_run, other) : (other, _run);
        var (own, last) = (Depth(carrier), Depth(met));
        var side = job.Stock.Materials.FirstOrDefault(m => m.Id == carrier.Material)?.Thickness ?? Length.Zero;
        var leg = (design.Leg ?? back.Leg)!.Value;
        var otherLeg = leg - last + own;
        var error = double.DegreesToRadians(angle - 90);
        var off = error < 0 ? Tenth(otherLeg.Nanometres * Math.Tan(-error)) : Length.Zero;
        var figures = new DiagonalFigures(leg, otherLeg, own, last, off, side, carrier.Base.Setback, carries, DoorOf(carries ? design : back));
        if (carries)
            CheckCarrier(figures, design, other, filler, path);
        var opening = job.Walls.First(w => w.Id == _run.Wall).Survey?.Opening;
        var offset = (left ? opening?.LeftIn : opening?.RightIn) ?? Length.Zero;
        var (atWall, atFront) = carries ? (off + leg, off + leg) : CornerCut.Of(otherLeg, last, angle);
        return new(design, path, other, carries ? Length.Zero : otherLeg, angle, atWall, atFront, carries ? Length.Zero : filler, offset) { Diagonal = figures };
    }

    private void CheckCarrier(DiagonalFigures figures, CornerDesign design, Run other, Length filler, string path)
    {
        var runPath = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"runs[{index}]");
        if (filler > Length.Zero)
            problems.Add(path + ".filler", "The run that carries the case in the corner is screwed to it.", filler, "no filler here; the other run's takes up the error of the corner");
        problems.Least(path + ".corner.leg", "opening of the diagonal front that this leg leaves", figures.Opening, s_leastOpening);
        if (_run.Tiers.Concat(other.Tiers).Any(t => t.Depth is not null))
            problems.Add(path + ".corner.kind", "A diagonal corner needs both runs of one depth from floor to top.", "tiers of their own depth", "tiers without a depth");
        if (_run.Base.Kind is not (BaseKind.Plinth or BaseKind.None))
            problems.Add(runPath + ".base.kind", "A diagonal case stands on a ladder base, or on the floor.", _run.Base.Kind.ToString(), "plinth or none");
        if (_run.Base.Mould is not null)
            problems.Add(runPath + ".base.mould", "A base mould is not laid out across a diagonal corner.", $"'{_run.Base.Mould}'", "no mould");
        if (design.Door is { } id && figures.Door is null)
            problems.Add(path + ".corner.door", "There is no such sheet material.", $"'{id}'", "the id of a sheet material");
    }

    private Material? DoorOf(CornerDesign carrier) => carrier.Door is { } id ? job.Stock.Materials.FirstOrDefault(m => m.Id == id && !m.IsBoard) : null;

    private static Length Depth(Run run) => run.Depth;

    private static CornerDesign? Back(Job job, Run run, CornerDesign design) => job.Runs.Where(r => r.Id == design.Run)
        .SelectMany(r => new[] { r.Left, r.Right })
        .Select(e => e.Corner)
        .FirstOrDefault(c => c is { Kind: CornerKind.Diagonal } && c.Run == run.Id);

    // To the nearest 0.01 mm, as the other corners.
    private static Length Tenth(double nanometres) => Length.FromNanometres((long)Math.Round(nanometres / 10_000) * 10_000);
}

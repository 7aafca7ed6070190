using Casewright.Engine.Schemes;
using Casewright.Model.Collections;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Stock;

namespace Casewright.Engine.Nudges;

/// <summary>
/// Small changes that a seasoned maker would try: those that get uprights out of one sheet, depths just under a rip-count step, widths that
/// yield one more shelf a strip; then one step of everything else.
/// </summary>
internal sealed class NudgeCandidates(Plan plan)
{
    private readonly NudgeSizes _sizes = NudgeSizes.For(plan.Job.Units);
    private readonly CrownNudges _crowns = new(plan.Job, NudgeSizes.For(plan.Job.Units));

    private Job Job => plan.Job;

    /// <summary>All candidates, the most promising first.</summary>
    public IEnumerable<NudgeCandidate> All()
    {
        Func<Run, IEnumerable<NudgeCandidate>>[] kinds = [Fitting, DepthSteps, ShelfSteps, Bays, Thicknesses, SpliceHeights, Shelves, Heights];
        return kinds.SelectMany(kind => Job.Runs.SelectMany(kind));
    }

    /// <summary>Base or crown higher, or cases lower, by just what uprights are over a sheet.</summary>
    private IEnumerable<NudgeCandidate> Fitting(Run run)
    {
        var uprights = plan.Parts.Where(p => p.Run == run.Id && p.Role is PartRole.Side or PartRole.Partition).ToList();
        if (uprights.Count == 0)
            yield break;
        var longest = uprights.Select(p => p.Length).Aggregate(Length.Max);
        foreach (var over in SheetLengths(run.Material).Select(l => longest - l).Where(o => o > Length.Zero && o <= _sizes.MostHeight).Distinct().Order())
        {
            var round = over.CeilingTo(_sizes.Step);
            if (run.Base.Kind == BaseKind.Plinth)
                yield return Base(run, round);
            foreach (var lower in Lower(run, round))
                yield return lower;
        }
    }

    /// <summary>Depths at which one more strip of the uprights, or of the shelves, comes out of a sheet.</summary>
    private IEnumerable<NudgeCandidate> DepthSteps(Run run)
    {
        var panels = plan.Parts.Where(p => p.Run == run.Id && p.Material == run.Material).ToList();
        var uprights = panels.Where(p => p.Role is PartRole.Side or PartRole.Partition).Select(p => p.Width).DefaultIfEmpty(Length.Zero).Max();
        var shelves = panels.Where(p => p.Role is PartRole.FixedShelf or PartRole.AdjustableShelf).Select(p => p.Width).DefaultIfEmpty(Length.Zero).Max();
        var (kerf, trim) = (Job.Shop.Saw.Kerf, Job.Shop.Saw.EdgeTrim * 2);
        var usable = Sheets(run.Material).Select(s => (s.GrainAcross ? s.Length : s.Width) - trim).Distinct().Order().ToList();
        return new[] { uprights, shelves }
            .Where(width => width > Length.Zero)
            .SelectMany(width => usable.Select(u => (width - OneMore(u, width, kerf)).CeilingTo(_sizes.Step)))
            .Where(less => less > Length.Zero && less <= _sizes.MostDepth)
            .Distinct()
            .Select(less => Depth(run, -less));
    }

    /// <summary>The size at which one more comes out of a length than of the size given.</summary>
    private static Length OneMore(Length usable, Length size, Length kerf) => ((usable + kerf) / (((usable + kerf) / (size + kerf)) + 1)) - kerf;

    /// <summary>Bays narrower by just what yields one more shelf a strip: wider fillers at walls, or a narrower run where an end stands free.</summary>
    private IEnumerable<NudgeCandidate> ShelfSteps(Run run)
    {
        var bays = plan.Cases.Where(c => c.Run == run.Id && c.Tier == 0).Sum(c => c.Bays);
        var lengths = plan.Parts
            .Where(p => p.Run == run.Id && p.Material == run.Material && p.Role is PartRole.FixedShelf or PartRole.AdjustableShelf)
            .Select(p => p.Length)
            .Distinct()
            .OrderDescending();
        var kerf = Job.Shop.Saw.Kerf;
        var steps = lengths
            .SelectMany(length => SheetLengths(run.Material).Select(usable => length - OneMore(usable, length, kerf)))
            .Select(less => less.CeilingTo(_sizes.Step))
            .Where(less => less > Length.Zero && less <= _sizes.MostBay)
            .Distinct()
            .Order();
        return steps.SelectMany(less => Narrower(run, less * bays, less));
    }

    private IEnumerable<NudgeCandidate> Narrower(Run run, Length total, Length bay)
    {
        var walls = (run.Left.Kind == EndKind.Wall ? 1 : 0) + (run.Right.Kind == EndKind.Wall ? 1 : 0);
        if (walls > 0)
        {
            var more = (total / walls).CeilingTo(_sizes.Step);
            if (more <= _sizes.MostFiller)
                yield return Change(run, $"fillers of {run.Name} {Text(more)} wider, so that every bay is {Text(bay)} narrower", run with { Left = Wider(run.Left, more), Right = Wider(run.Right, more) });
        }
        else if (run.Width is { } width && total <= _sizes.MostFiller * 2)
        {
            yield return Change(run, $"{run.Name} {Text(total)} narrower, so that every bay is {Text(bay)} narrower", run with { Width = width - total });
        }
    }

    private static RunEnd Wider(RunEnd end, Length more) => end.Kind == EndKind.Wall ? end with { Filler = end.Filler + more } : end;

    private IEnumerable<NudgeCandidate> Bays(Run run)
    {
        if (run.Division is not { } division || run.Columns.Count > 0)
            yield break;
        var bays = plan.Cases.Where(c => c.Run == run.Id && c.Tier == 0).Sum(c => c.Bays);
        foreach (var count in new[] { bays + 1, bays - 1 }.Where(b => b > 0))
            yield return Change(run, $"{count} bays instead of {bays} in {run.Name}", run with { Division = division with { Bays = count, WidestClear = null } });
    }

    private IEnumerable<NudgeCandidate> SpliceHeights(Run run)
    {
        var lines = PlanFigures.Splices(plan).Where(s => s.SightLine is not null && plan.Parts.Any(p => p.Id == s.Part && p.Run == run.Id)).Select(s => s.SightLine!.Value).Distinct().Order().Take(1);
        foreach (var line in lines)
        {
            foreach (var by in new[] { _sizes.LineStep, _sizes.LineStep * -1, _sizes.LineStep * 2, _sizes.LineStep * -2 })
                yield return Change(run, $"joints of {run.Name} {Text(line + by)} above the floor instead of {Text(line)}", run with { Splices = run.Splices with { Height = line + by } });
        }
    }

    private IEnumerable<NudgeCandidate> Shelves(Run run)
    {
        if (run.Tiers.Any(t => t.Interior.Loose > 1))
        {
            var tiers = run.Tiers.Select(t => t.Interior.Loose > 1 ? t with { Interior = t.Interior with { Loose = t.Interior.Loose - 1 } } : t).ToValueList();
            yield return Change(run, $"one loose shelf less in every bay of {run.Name}", run with { Tiers = tiers });
        }
    }

    private IEnumerable<NudgeCandidate> Heights(Run run)
    {
        if (run.Base.Kind == BaseKind.Plinth)
            yield return Base(run, _sizes.Small * 2);
        foreach (var lower in Lower(run, _sizes.Small * 2))
            yield return lower;
        yield return Depth(run, -_sizes.Small);
    }

    /// <summary>The next material of the same kind, thinner or thicker.</summary>
    private IEnumerable<NudgeCandidate> Thicknesses(Run run)
    {
        var now = Job.Stock.Material(run.Material);
        var others = Job.Stock.Materials.Where(m => m.Kind == now.Kind && !m.IsBoard && m.Id != now.Id && Sheets(m.Id).Any()).ToList();
        var thinner = others.Where(m => m.Thickness < now.Thickness && m.Thickness * 3 >= now.Thickness * 2).MaxBy(m => m.Thickness);
        var thicker = others.Where(m => m.Thickness > now.Thickness && m.Thickness * 2 <= now.Thickness * 3).MinBy(m => m.Thickness);
        foreach (var other in new[] { thinner, thicker }.OfType<Material>())
            yield return Change(run, $"{other.Name} instead of {now.Name} in {run.Name}", run with { Material = other.Id });
    }

    private NudgeCandidate Base(Run run, Length by) =>
        Change(run, $"base of {run.Name} {Text(by)} higher", run with { Base = run.Base with { Height = run.Base.Height + by } });

    /// <summary>Cases ending lower: behind the crown where its lap allows it, since then nothing else changes; else with a higher crown, or an open line.</summary>
    private IEnumerable<NudgeCandidate> Lower(Run run, Length by)
    {
        if (_crowns.Lower(run, by) is { } crowned)
            yield return crowned;
        if (!_crowns.LapSuffices(run, by))
            yield return Change(run, $"cases of {run.Name} end {Text(by)} lower", Heads.Lower(run, by));
    }

    private NudgeCandidate Depth(Run run, Length by) =>
        Change(run, $"{run.Name} {Text(by.Abs())} {(by < Length.Zero ? "less" : "more")} deep", run with { Depth = run.Depth + by });

    private NudgeCandidate Change(Run run, string words, Run changed) => NudgeCandidate.Of(Job, run, words, changed);

    private IEnumerable<SheetStock> Sheets(string material) => Job.Stock.Sheets.Where(s => s.Material == material && !s.IsOffcut && s.Limit is null or > 0);

    private IEnumerable<Length> SheetLengths(string material) => Sheets(material).Select(s => (s.GrainAcross ? s.Width : s.Length) - (Job.Shop.Saw.EdgeTrim * 2));

    private string Text(Length length) => LengthText.Of(length, Job.Units);
}

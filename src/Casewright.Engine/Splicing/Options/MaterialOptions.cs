using System.Globalization;
using Casewright.Engine.Splicing.Zones;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Stock;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Finds the options of the parts of one material, and gathers the problems of those that have none.</summary>
internal sealed class MaterialOptions
{
    private readonly Job _job;
    private readonly Casework _casework;
    private readonly Material _material;
    private readonly SpliceRoomFinder _finder;
    private readonly List<Problem> _problems;
    private readonly List<PartFailure> _failures = [];
    private readonly StockFit _fit;
    private readonly OptionBuilder _builder;
    private readonly OptionProblems _explain;
    private readonly ILookup<string, SawnPiece> _sawn;

    public MaterialOptions(Job job, Casework casework, Material material, SpliceRoomFinder finder, List<Problem> problems)
    {
        _job = job;
        _casework = casework;
        _material = material;
        _finder = finder;
        _problems = problems;
        _fit = new StockFit(job, material);
        _builder = new OptionBuilder(job.Shop);
        _explain = new OptionProblems(job, finder);
        var sawn = (job.Sawn?.Sheets ?? []).SelectMany(s => s.Pieces).Concat((job.Sawn?.Boards ?? []).SelectMany(b => b.Pieces));
        _sawn = sawn.Where(p => !p.Lost).ToLookup(p => p.Part, StringComparer.Ordinal);
    }

    /// <summary>The demands, in the order of their first parts.</summary>
    public ValueList<PartDemand> For(IReadOnlyList<Part> parts)
    {
        if (!_fit.Any)
        {
            _problems.Add(OptionProblems.NoStock(_material, parts.Count));
            return [];
        }

        var order = parts.Index().ToDictionary(p => p.Item.Id, p => p.Index, StringComparer.Ordinal);
        var demands = new List<PartDemand>();
        var overlong = new List<OverlongPart>();
        var simple = new List<Simple>();
        foreach (var part in parts)
            Sort(part, simple, overlong);
        demands.AddRange(Grouped(simple));
        demands.AddRange(Spliced(overlong));
        _problems.AddRange(PartFailure.Problems(_failures));
        return [.. demands.OrderBy(d => order[d.Id])];
    }

    private void Sort(Part part, List<Simple> simple, List<OverlongPart> overlong)
    {
        var longest = _fit.LongestPieces(part.Width, part.Grain);
        if (longest.Count == 0)
        {
            if (Strips(part) is { } strips)
                simple.Add(new(part, strips));
            return;
        }

        var usual = _fit.LongestUsualPieces(part.Width, part.Grain);
        if (part.Length <= (usual.Count > 0 ? usual : longest)[0])
        {
            simple.Add(new(part, OptionBuilder.Whole(part)));
            return;
        }

        if (_finder.Find(part, longest, out var failure) is { } found)
            overlong.Add(found);
        else if (part.Length <= longest[0])
            simple.Add(new(part, OptionBuilder.Whole(part), failure!.Reason));
        else
            _failures.Add(failure!);
    }

    private PartOption? Strips(Part part)
    {
        var (run, index) = _finder.RunOf(part);
        var widest = _fit.WidestPiece(part.Length, part.Grain);
        if (!run.Splices.AllowEdgeJoint || widest is not { } width)
        {
            _failures.Add(_explain.TooWide(part, index, _fit, run.Splices.AllowEdgeJoint));
            return null;
        }

        var count = (int)((part.Width.Nanometres + width.Nanometres - 1) / width.Nanometres);
        var step = (part.Width / count).CeilingTo(run.Joinery.RoundingStep) <= width ? run.Joinery.RoundingStep : Length.FromNanometres(1);
        return _builder.Strips(part, count, step);
    }

    /// <summary>Parts with one option, grouped by size and option.</summary>
    private static IEnumerable<PartDemand> Grouped(IEnumerable<Simple> parts) =>
        parts.GroupBy(p => (p.Part.Length, p.Part.Width, p.Part.Grain, p.Option))
            .Select(g => new PartDemand([.. g.Select(p => p.Part)], [g.Key.Option], WhyWhole: g.First().WhyWhole));

    private List<PartDemand> Spliced(List<OverlongPart> overlong)
    {
        var demands = new List<PartDemand>();
        foreach (var group in overlong.Where(SharesLine).GroupBy(LineGroup, StringComparer.Ordinal))
            demands.AddRange(Plan(group.Key, [.. group.GroupBy(SharedKind.Of).Select(Kind.Of)]));
        foreach (var kind in overlong.Where(o => !SharesLine(o)).GroupBy(o => LoneKind.Of(o, Forced(o))))
            demands.AddRange(Plan("", [Kind.Of(kind)]));
        return demands;
    }

    /// <summary>Plans the kinds of one group of lines together; parts that fit longer stock are left whole where no line suits the rest.</summary>
    private List<PartDemand> Plan(string group, List<Kind> kinds)
    {
        var sets = Planner(kinds).Sets();
        if (sets.Count > 0)
            return Demands(group, kinds, sets);
        if (kinds.TrueForAll(k => k.Sample.WholeFits))
            return [.. kinds.Select(WholeOnly)];
        var alone = kinds.Find(k => !k.Sample.WholeFits && Planner([k]).Sets().Count == 0);
        if (alone is null)
            _problems.Add(_explain.NoCommonLine([.. kinds.Where(k => !k.Sample.WholeFits).Select(k => k.Sample)]));
        else
            _failures.AddRange(alone.Parts.Select(p => _explain.NoLine(alone.Sample with { Part = p }, Forced(alone.Sample))));
        return [];
    }

    private List<PartDemand> Demands(string group, List<Kind> kinds, IReadOnlyList<LineSet> sets)
    {
        var demands = new List<PartDemand>();
        foreach (var kind in kinds)
        {
            PartOption[] whole = kind.Sample.WholeFits ? [OptionBuilder.Whole(kind.Sample.Part)] : [];
            var spliced =
                from set in sets.Index()
                from joints in kind.Sample.Ways(set.Item.Lines, Forced(kind.Sample), set.Item.All)
                from option in _builder.Spliced(kind.Sample, joints, LineNumber(set.Item.Lines, set.Index))
                select option with { Preference = Hides(kind.Sample, joints) ? 0 : 1 };
            demands.Add(new PartDemand(kind.Parts, [.. whole, .. spliced.DistinctBy(o => o.Id, StringComparer.Ordinal)], SharesLine(kind.Sample) ? group : null));
        }

        return demands;
    }

    private static bool Hides(OverlongPart overlong, Length[] joints) =>
        overlong.BestSpots.Count == 0 || Array.TrueForAll(joints, j => overlong.BestSpots.Contains(overlong.Part.ToRoom(j)));

    private PartDemand WholeOnly(Kind kind) =>
        new(kind.Parts, [OptionBuilder.Whole(kind.Sample.Part)], WhyWhole: _explain.NoLine(kind.Sample, Forced(kind.Sample)).Reason);

    /// <summary>The height itself for one joint; for several a negative number of their set.</summary>
    private static long LineNumber(ValueList<Length> lines, int index) => lines.Count == 1 ? lines[0].Nanometres : -1 - index;

    private LinePlanner Planner(List<Kind> kinds)
    {
        var sample = kinds[0].Sample;
        return new LinePlanner(
            [.. kinds.Select(k => k.Sample)], _job.Shop.Splicing, _job.Shop.Saw.Kerf, sample.Run.Joinery.RoundingStep, Forced(sample),
            [.. kinds.SelectMany(k => k.Parts).SelectMany(SawnLines).Distinct()]);
    }

    /// <summary>Joint lines in the room that sawn pieces of a part were cut to.</summary>
    private IEnumerable<Length> SawnLines(Part part) => _sawn[part.Id]
        .SelectMany(piece => new[] { piece.From, piece.To })
        .Where(x => x > Length.Zero && x < part.Length)
        .Select(part.ToRoom);

    /// <summary>The height that the run wishes, where it lies within the part.</summary>
    private static Length? Forced(OverlongPart overlong) =>
        IsPanel(overlong.Part) && overlong.Run.Splices.Height is { } height
        && overlong.Part.FromRoom(height) is var x && x > Length.Zero && x < overlong.Part.Length
            ? height
            : null;

    private bool SharesLine(OverlongPart overlong) => _job.Shop.Splicing.OneSightLine && IsPanel(overlong.Part);

    private static bool IsPanel(Part part) => part.IsUpright() && part.Role is PartRole.Side or PartRole.Partition or PartRole.EndPanel;

    private string LineGroup(OverlongPart overlong)
    {
        var part = overlong.Part;
        var tier = _casework.Cases.FirstOrDefault(c => c.Id == part.Case)?.Tier ?? 0;
        var forced = Forced(overlong) is null ? "" : ", at the height wished";
        return string.Create(CultureInfo.InvariantCulture, $"uprights of run {part.Run}, tier {tier + 1}{forced}");
    }

    /// <summary>A part that can be made in one way.</summary>
    private sealed record Simple(Part Part, PartOption Option, string? WhyWhole = null);

    private sealed record Kind(OverlongPart Sample, ValueList<Part> Parts)
    {
        public static Kind Of(IEnumerable<OverlongPart> alike)
        {
            OverlongPart[] all = [.. alike];
            return new(all[0], [.. all.Select(o => o.Part)]);
        }
    }

    /// <summary>What makes parts alike that keep their lines with others: their place in the room counts.</summary>
    private sealed record SharedKind(
        Length Length, Length Width, Length Thickness, Grain Grain, ValueList<JointRoom> Rooms, Length Start, Length End)
    {
        public static SharedKind Of(OverlongPart o) => new(
            o.Part.Length, o.Part.Width, o.Part.Thickness, o.Part.Grain, o.Rooms, o.Part.ToRoom(Length.Zero), o.Part.ToRoom(o.Part.Length));
    }

    /// <summary>What makes parts alike whose lines are their own: only places along the part count.</summary>
    private sealed record LoneKind(
        Length Length, Length Width, Length Thickness, Grain Grain, ValueList<JointRoom> Rooms, ValueList<Length> BestSpots, Length? Forced)
    {
        public static LoneKind Of(OverlongPart o, Length? forced) => new(
            o.Part.Length, o.Part.Width, o.Part.Thickness, o.Part.Grain, o.Rooms,
            [.. o.BestSpots.Select(o.Part.FromRoom)], forced is { } height ? o.Part.FromRoom(height) : null);
    }
}

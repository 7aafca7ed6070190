using System.Globalization;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// Splicing: one setting-up for each method and thickness, joints prepared lot by lot, then one glue-up for each loading of a station, with
/// as many parts as lie on it and as the glue's working time allows. Alike loads are begun in the order of the wall. When all of a lot has
/// cured it is flushed and trimmed to length in one go.
/// </summary>
internal static class SpliceWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        var parts = context.Casework.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var splices = context.Cutting.Splices.Where(s => s.Method != SpliceMethod.CoveredButt).ToList();
        foreach (var group in splices.GroupBy(s => GroupOf(s, parts[s.Part]), StringComparer.Ordinal))
            AddGroup(context, list, group.Key, [.. group], parts);
        AddTrimming(context, list, splices, parts);
    }

    private static string GroupOf(Splice splice, Part part) => $"{MethodIds.Of(splice.Method)}/{part.Material}";

    private static void AddGroup(WorkContext context, WorkList list, string group, List<Splice> splices, Dictionary<string, Part> parts)
    {
        var material = parts[splices[0].Part].Material;
        list.Add(
            new()
            {
                Id = TaskIds.SetUpSplices(group),
                Name = $"Set up {MethodIds.Words(splices[0].Method)}, test joint",
                Phase = WorkPhase.Splicing,
                Skill = Skill.Machining,
                Work = [.. SetUp(splices[0].Method).Select(o => context.Work(o, 1))],
            },
            TaskIds.Unload(context.Cutting.Sheets.FirstOrDefault(s => s.Material == material)?.Stock ?? ""));
        foreach (var lot in splices.GroupBy(s => context.LotOf(parts[s.Part])).OrderBy(g => g.Key))
        {
            var prepare = TaskIds.PrepareSplices(group, lot.Key);
            list.Add(
                new()
                {
                    Id = prepare,
                    Name = $"Square ends and cut {MethodIds.Words(splices[0].Method)}, {lot.Count()} joints",
                    Phase = WorkPhase.Splicing,
                    Skill = Skill.Machining,
                    Work = [SpliceTimes.Work(context, splices[0].Method, Operation.PrepareSplice, lot.Count())],
                    Splices = [.. lot.Select(s => s.Id)],
                },
                context.Sawn(lot.Select(s => parts[s.Part])).Append(TaskIds.SetUpSplices(group)));
            SpliceLoad? ahead = null;
            foreach (var load in Loads(context, [.. lot], parts))
            {
                AddLoad(context, list, load, prepare);
                if (ahead is { Round: 0 } && load.Round == 0)
                    list.Order(TaskIds.Glue(ahead.Id), TaskIds.Glue(load.Id));
                ahead = load;
            }
        }
    }

    private static IEnumerable<SpliceLoad> Loads(WorkContext context, List<Splice> splices, Dictionary<string, Part> parts)
    {
        var waiting = new List<(Part Part, List<Splice> Joints)>();
        foreach (var joints in splices.GroupBy(s => s.Part, StringComparer.Ordinal))
        {
            var part = parts[joints.Key];
            var each = SpliceTimes.Minutes(context, joints.First().Method, Operation.GlueSplice);
            if (joints.Count() > 1 && (joints.Count() * each > context.Glue.Working || joints.Select(j => j.Holding).Distinct().Count() > 1))
            {
                // Too many joints for the glue's working time: one after the other, each on its own loading.
                var round = 0;
                foreach (var joint in joints)
                    yield return new(joint.Id, [part], [joint], round++);
                continue;
            }

            if (waiting.Count > 0 && !FitsIn(context, waiting, part, joints, each))
            {
                yield return Close(waiting);
                waiting = [];
            }

            waiting.Add((part, [.. joints]));
        }

        if (waiting.Count > 0)
            yield return Close(waiting);
    }

    private static bool FitsIn(WorkContext context, List<(Part Part, List<Splice> Joints)> waiting, Part part, IEnumerable<Splice> joints, decimal each)
    {
        var first = waiting[0].Joints[0];
        var longest = waiting.Select(w => w.Part.Length).Append(part.Length).Aggregate(Length.Max);
        var places = HoldingGear.KeepsStation(first.Holding)
            ? context.Job.Shop.Stations.Where(s => s.Length >= longest).Select(s => s.Places).DefaultIfEmpty(1).Min()
            : 1;
        var count = waiting.Sum(w => w.Joints.Count) + joints.Count();
        return joints.First().Holding == first.Holding && waiting.Count < places && count * each <= context.Glue.Working;
    }

    private static SpliceLoad Close(List<(Part Part, List<Splice> Joints)> waiting) => new(
        string.Join('+', waiting.Select(w => w.Part.Id)), [.. waiting.Select(w => w.Part)], [.. waiting.SelectMany(w => w.Joints)], 0);

    private static void AddLoad(WorkContext context, WorkList list, SpliceLoad load, string prepare)
    {
        var (glue, unclamp) = (TaskIds.Glue(load.Id), TaskIds.Unclamp(load.Id));
        var clamped = HoldingGear.KeepsStation(load.Holding);
        var tall = load.Longest > context.Job.Shop.Checks.PieceForOne;
        var names = string.Join(", ", load.Parts.Select(p => p.Id));
        var draft = new TaskDraft
        {
            Id = glue,
            Name = $"Glue up {names}",
            Phase = WorkPhase.Splicing,
            Skill = Skill.Assembling,
            Hands = tall && HoldingGear.TallNeedsTwo(load.Holding) ? 2 : 1,
            Unbroken = true,
            Work = [SpliceTimes.Work(context, load.Method, Operation.GlueSplice, load.Splices.Count)],
            Parts = [.. load.Parts.Select(p => p.Id)],
            Splices = [.. load.Splices.Select(s => s.Id)],
            RunsOn = clamped ? [("under clamps", context.Glue.Clamp), ("curing", context.Glue.Cure)] : [("curing", context.Glue.Cure)],
        };
        list.Add(draft, prepare);
        CheckWorkingTime(context, list, draft, load);
        if (load.Round > 0)
            list.Link(list.Tasks.Last(t => t.Id != glue && t.Parts.Contains(load.Parts[0].Id, StringComparer.Ordinal) && t.Id.StartsWith("glue/", StringComparison.Ordinal)).Id, glue, context.Glue.Handle);
        CheckStation(context, list, load);
        if (!clamped)
        {
            list.HoldStation(glue, glue, load.Longest);
            return;
        }

        list.Add(new()
        {
            Id = unclamp,
            Name = $"Unclamp and scrape {names}",
            Phase = WorkPhase.Splicing,
            Skill = Skill.Assembling,
            Unbroken = true,
            Work = [SpliceTimes.Work(context, load.Method, Operation.UnclampSplice, load.Splices.Count)],
            Parts = draft.Parts,
            Splices = draft.Splices,
        });
        list.Link(glue, unclamp, context.Glue.Clamp);
        list.HoldStation(glue, unclamp, load.Longest);
        if (HoldingGear.Clamps(load.Holding) is { } clamps)
            list.HoldClamps(glue, unclamp, clamps.Kind, clamps.Count);
    }

    private static void CheckWorkingTime(WorkContext context, WorkList list, TaskDraft draft, SpliceLoad load)
    {
        var minutes = draft.Minutes(context.Times);
        if (minutes <= context.Glue.Working)
            return;
        list.Problems.Add(new(
            "shop.glue",
            string.Create(CultureInfo.InvariantCulture, $"Gluing up {string.Join(", ", load.Parts.Select(p => p.Id))} takes {minutes} minutes, longer than the glue can wait."),
            string.Create(CultureInfo.InvariantCulture, $"{context.Glue.Working} minutes from spreading to tight clamps"),
            "a glue with a longer open time, a cooler shop, or quicker clamps"));
    }

    private static void CheckStation(WorkContext context, WorkList list, SpliceLoad load)
    {
        var stations = context.Job.Shop.Stations;
        if (stations.Any(s => s.Length >= load.Longest))
            return;
        var longest = stations.Count == 0 ? "" : $"stations up to {stations.Select(s => s.Length).Aggregate(Length.Max)}";
        list.Problems.Add(new(
            "shop.stations",
            $"No station is long enough to glue up {string.Join(", ", load.Parts.Select(p => p.Id))}.",
            longest,
            $"a station of at least {load.Longest}"));
    }

    private static void AddTrimming(WorkContext context, WorkList list, List<Splice> splices, Dictionary<string, Part> parts)
    {
        foreach (var lot in splices.GroupBy(s => context.LotOf(parts[s.Part])).OrderBy(g => g.Key))
        {
            var spliced = lot.Select(s => s.Part).Distinct(StringComparer.Ordinal).Select(id => parts[id]).ToList();
            var flush = lot.GroupBy(s => s.Method).OrderBy(g => g.Key).Select(g => SpliceTimes.Work(context, g.Key, Operation.FlushSplice, g.Count()));
            var trim = TaskIds.Trim(lot.Key);
            list.Add(new()
            {
                Id = trim,
                Name = $"Flush joints and trim {spliced.Count} spliced parts to length",
                Phase = WorkPhase.Splicing,
                Skill = Skill.Machining,
                Hands = spliced.Exists(p => p.Length > context.Job.Shop.Checks.PieceForOne) ? 2 : 1,
                Work =
                [
                    .. flush,
                    context.Work(Operation.FenceSetting, spliced.Select(p => p.Length).Distinct().Count()),
                    context.Work(Operation.Crosscut, 2 * spliced.Count),
                ],
                Parts = [.. spliced.Select(p => p.Id)],
                Splices = [.. lot.Select(s => s.Id)],
            });
            var mine = lot.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
            foreach (var task in list.Tasks.Where(t => t.Splices.Any(mine.Contains)).ToList())
            {
                if (task.Id.StartsWith("glue/", StringComparison.Ordinal))
                    list.Link(task.Id, trim, context.Glue.Cure);
                else if (task.Id.StartsWith("unclamp/", StringComparison.Ordinal))
                    list.Link(task.Id, trim);
            }
        }
    }

    private static Operation[] SetUp(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => [Operation.SetUpTenons],
        SpliceMethod.TenonsAndConnectors => [Operation.SetUpTenons, Operation.SetUpConnectors],
        SpliceMethod.Spline => [Operation.SetUpSplines],
        SpliceMethod.HalfLap => [Operation.SetUpHalfLaps],
        SpliceMethod.Scarf => [Operation.SetUpScarfs],
        _ => [Operation.SetUpBackedButts],
    };
}

using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Housings, rabbets, pin rows, nosings and face frames, lot by lot; what is set up once is counted in the first lot that needs it.</summary>
internal static class JoineryWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        var cutters = new HashSet<(string, Length, Length)>();
        for (var lot = 0; lot < context.Lots.Count; lot++)
        {
            var parts = context.PartsByLot[lot].ToList();
            AddHousings(context, list, lot, parts, cutters);
            AddPinRows(context, list, lot, parts, cutters);
            AddNosings(context, list, lot, parts);
            AddFrames(context, list, lot, parts);
        }
    }

    /// <summary>Tasks that must be over before parts of these can be worked on.</summary>
    public static IEnumerable<string> PartsReady(WorkContext context, int lot, IEnumerable<Part> parts) =>
        context.Sawn(parts).Append(TaskIds.Trim(lot));

    private static void AddHousings(WorkContext context, WorkList list, int lot, List<Part> parts, HashSet<(string, Length, Length)> cutters)
    {
        var machined = parts.Where(p => p.Machining.Any(m => m is Dado or Groove or Rabbet or Notch or CutOut)).ToList();
        var all = machined.SelectMany(p => p.Machining.Select(m => (Part: p, Work: m))).ToList();
        var dadoSetUps = all.Count(m => m.Work switch
        {
            Dado dado => cutters.Add(("dado", dado.Width, dado.Depth)),
            Groove groove => cutters.Add(("dado", groove.Width, groove.Depth)),
            _ => false,
        });
        var rabbetSetUps = all.Count(m => m.Work is Rabbet rabbet && cutters.Add(("rabbet", rabbet.Width, rabbet.Depth)));
        var rabbets = all.Sum(m => m.Work is Rabbet r ? WorkContext.Metres(r.Edge is PartEdge.Reference or PartEdge.Opposite ? m.Part.Length : m.Part.Width) : 0);
        list.Add(
            new()
            {
                Id = TaskIds.Housings(lot),
                Name = $"Dados, grooves and rabbets of {machined.Count} parts",
                Phase = WorkPhase.Joinery,
                Skill = Skill.Machining,
                Work =
                [
                    context.Work(Operation.SetUpDados, dadoSetUps),
                    context.Work(Operation.Dado, all.Count(m => m.Work is Dado or Groove)),
                    context.Work(Operation.SetUpRabbets, rabbetSetUps),
                    context.Work(Operation.Rabbet, rabbets),
                    context.Work(Operation.Notch, all.Count(m => m.Work is Notch or CutOut)),
                ],
                Parts = [.. machined.Select(p => p.Id)],
            },
            [.. PartsReady(context, lot, machined), TaskIds.Housings(lot - 1)]);
    }

    private static void AddPinRows(WorkContext context, WorkList list, int lot, List<Part> parts, HashSet<(string, Length, Length)> cutters)
    {
        var bored = parts.Where(p => p.Machining.Any(m => m is PinRow)).ToList();
        var rows = bored.SelectMany(p => p.Machining.OfType<PinRow>()).ToList();
        list.Add(
            new()
            {
                Id = TaskIds.PinRows(lot),
                Name = $"Bore {rows.Count} pin rows",
                Phase = WorkPhase.Drilling,
                Skill = Skill.Machining,
                Work =
                [
                    context.Work(Operation.SetUpPinRows, rows.Count(r => cutters.Add(("pin row", r.Diameter, r.Depth)))),
                    context.Work(Operation.PinRow, rows.Sum(r => WorkContext.Metres(r.LastX - r.FirstX))),
                ],
                Parts = [.. bored.Select(p => p.Id)],
            },
            [.. PartsReady(context, lot, bored), TaskIds.Housings(lot), TaskIds.PinRows(lot - 1)]);
    }

    private static void AddNosings(WorkContext context, WorkList list, int lot, List<Part> parts)
    {
        var nosings = parts.Where(p => p.Role == PartRole.Nosing).ToList();
        var nosed = parts.Where(p => p.Nosing is not null).ToList();
        list.Add(
            new()
            {
                Id = TaskIds.Nosings(lot),
                Name = $"Glue and flush nosings of {nosed.Count} parts",
                Phase = WorkPhase.Edges,
                Skill = Skill.Assembling,
                Work = [context.Work(Operation.Nosing, nosings.Sum(n => WorkContext.Metres(n.Length)))],
                Parts = [.. nosed.Select(p => p.Id)],
                RunsOn = [("curing", context.Glue.Handle)],
            },
            [.. PartsReady(context, lot, nosings.Concat(nosed)), TaskIds.Housings(lot), TaskIds.PinRows(lot)]);
    }

    private static void AddFrames(WorkContext context, WorkList list, int lot, List<Part> parts)
    {
        var members = parts.Where(p => p.Role is PartRole.Stile or PartRole.Rail).ToList();
        list.Add(
            new()
            {
                Id = TaskIds.Frames(lot),
                Name = $"Join {members.Select(m => m.Case).Distinct(StringComparer.Ordinal).Count()} face frames",
                Phase = WorkPhase.Edges,
                Skill = Skill.Assembling,
                Work = [context.Work(Operation.FaceFrameJoint, members.GroupBy(m => m.Case, StringComparer.Ordinal).Sum(FrameJoints))],
                Parts = [.. members.Select(p => p.Id)],
                RunsOn = [("curing", context.Glue.Handle)],
            },
            PartsReady(context, lot, members));
    }

    /// <summary>Every end of a rail meets a stile; every stile between the outer two meets a rail at both ends.</summary>
    private static int FrameJoints(IEnumerable<Part> frame)
    {
        var (rails, stiles) = (frame.Count(p => p.Role == PartRole.Rail), frame.Count(p => p.Role == PartRole.Stile));
        return (2 * rails) + (2 * Math.Max(0, stiles - 2));
    }
}

using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Bases, and every case by itself: assembled, kept in clamps, its back fitted, its face frame glued on.</summary>
internal static class AssemblyWork
{
    /// <summary>Bar clamps for each panel housed between the sides (common practice, no source).</summary>
    private const int ClampsPerPanel = 2;

    public static void Add(WorkContext context, WorkList list)
    {
        foreach (var run in context.Job.Runs)
            AddBase(context, list, run.Id, run.Name);
        foreach (var box in context.Casework.Cases)
            AddCase(context, list, box);
    }

    private static void AddBase(WorkContext context, WorkList list, string run, string name)
    {
        var rails = context.Casework.Parts.Where(p => p.Run == run && p.Role == PartRole.BaseRail).ToList();
        var members = context.Casework.Parts.Where(p => p.Run == run && p.Role is PartRole.BaseRail or PartRole.BaseRung).ToList();

        // A base has a front and a rear rail: its length is half of theirs.
        list.Add(
            new()
            {
                Id = TaskIds.Base(run),
                Name = $"Build the base of {name}",
                Phase = WorkPhase.Assembly,
                Skill = Skill.Assembling,
                Work = [context.Work(Operation.LadderBase, rails.Sum(r => WorkContext.Metres(r.Length)) / 2)],
                Parts = [.. members.Select(m => m.Id)],
            },
            context.Sawn(members));
    }

    private static void AddCase(WorkContext context, WorkList list, CaseBox box)
    {
        var lot = context.LotOf(box);
        var parts = context.PartsOf(box).ToList();
        var carcase = parts.Where(p => p.Role is PartRole.Side or PartRole.Partition or PartRole.Top or PartRole.Bottom or PartRole.FixedShelf or PartRole.Nailer or PartRole.EndPanel).ToList();
        var panels = carcase.Count(p => p.Role is PartRole.Top or PartRole.Bottom or PartRole.FixedShelf);
        var (assemble, back) = (TaskIds.Assemble(box.Id), TaskIds.Back(box.Id));
        list.Add(
            new()
            {
                Id = assemble,
                Name = $"Assemble case {box.Id}",
                Phase = WorkPhase.Assembly,
                Skill = Skill.Assembling,
                Hands = context.HandsFor(box),
                Unbroken = true,
                Work = [context.Work(Operation.AssembleCase, 1), context.Work(Operation.AssemblePart, carcase.Count)],
                Parts = [.. carcase.Select(p => p.Id)],
                RunsOn = [("under clamps", context.Glue.UnstressedClamp)],
            },
            [.. JoineryWork.PartsReady(context, lot, carcase), TaskIds.Housings(lot), TaskIds.PinRows(lot)]);
        list.Link(TaskIds.Nosings(lot), assemble, context.Glue.Handle);
        var backs = parts.Where(p => p.Role == PartRole.Back).ToList();
        list.Add(
            new()
            {
                Id = back,
                Name = backs.Count > 0 ? $"Unclamp case {box.Id} and fit its back" : $"Unclamp case {box.Id}",
                Phase = WorkPhase.Assembly,
                Skill = Skill.Assembling,
                Work = [context.Work(backs.Count > 0 ? Operation.FitBack : Operation.UnclampCase, 1)],
                Parts = [.. backs.Select(p => p.Id)],
            },
            context.Sawn(backs));
        list.Link(assemble, back, context.Glue.UnstressedClamp);
        if (panels > 0)
            list.HoldClamps(assemble, back, ClampKind.Bar, AvailableBars(context, panels * ClampsPerPanel));
        if (parts.Exists(p => p.Role == PartRole.Stile))
            AddFrame(context, list, box, lot);
    }

    private static void AddFrame(WorkContext context, WorkList list, CaseBox box, int lot)
    {
        var frame = TaskIds.FrameToCase(box.Id);
        list.Add(
            new()
            {
                Id = frame,
                Name = $"Glue the face frame to case {box.Id} and flush it",
                Phase = WorkPhase.Edges,
                Skill = Skill.Assembling,
                Hands = context.HandsFor(box),
                Work = [context.Work(Operation.FrameToCase, 1)],
                RunsOn = [("curing", context.Glue.Handle)],
            },
            TaskIds.Back(box.Id));
        list.Link(TaskIds.Frames(lot), frame, context.Glue.Handle);
    }

    /// <summary>A case with more panels than there are clamps is clamped up in turns with all of them.</summary>
    private static int AvailableBars(WorkContext context, int wanted)
    {
        var there = context.Job.Shop.Clamps.FirstOrDefault(c => c.Kind == ClampKind.Bar)?.Count;
        return there is > 0 and var count ? Math.Min(wanted, count) : wanted;
    }
}

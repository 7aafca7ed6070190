using Casewright.Model.Design;
using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Delivery lot by lot, then the work on site: base, cases from the lower tier up and along the run, fillers, mouldings, clean-up.</summary>
internal static class InstallWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        for (var lot = 0; lot < context.Lots.Count; lot++)
            AddDelivery(context, list, lot);
        foreach (var run in context.Job.Runs)
            AddRun(context, list, run);
        AddCleanUp(context, list);
    }

    private static void AddDelivery(WorkContext context, WorkList list, int lot)
    {
        var cases = context.Lots[lot].Cases;
        var runs = cases.Select(c => c.Run).Distinct(StringComparer.Ordinal).ToList();
        var bases = runs.Where(r => FirstLot(context, r) == lot && list.Has(TaskIds.Base(r))).ToList();
        var bundles = runs.Count(r => LastLot(context, r) == lot && context.Casework.Parts.Any(p => p.Case == r));
        list.Add(
            new()
            {
                Id = TaskIds.Deliver(lot),
                Name = $"Load and carry in {string.Join(", ", cases.Select(c => c.Id))}",
                Phase = WorkPhase.Delivery,
                Hands = cases.Max(context.HandsFor),
                Work = [context.Work(Operation.CarryIn, cases.Count + bases.Count + bundles)],
            },
            bases.Select(TaskIds.Base).Append(TaskIds.Deliver(lot - 1)));
        FinishWork.ReadyToGo(context, list, lot, TaskIds.Deliver(lot));
        if (context.Job.Shop.FloorPlaces is null)
            return;
        foreach (var box in cases)
            list.HoldFloor(TaskIds.Assemble(box.Id), TaskIds.Deliver(lot));
    }

    private static int FirstLot(WorkContext context, string run) => context.Casework.Cases.Where(c => c.Run == run).Min(context.LotOf);

    private static int LastLot(WorkContext context, string run) => context.Casework.Cases.Where(c => c.Run == run).Max(context.LotOf);

    private static void AddRun(WorkContext context, WorkList list, Run run)
    {
        var cases = context.Casework.Cases.Where(c => c.Run == run.Id).OrderBy(c => c.Tier).ThenBy(c => c.Column).ToList();
        if (cases.Count == 0)
            return;
        var parts = context.Casework.Parts.Where(p => p.Run == run.Id).ToList();
        var rails = parts.Where(p => p.Role == PartRole.BaseRail).Sum(p => WorkContext.Metres(p.Length)) / 2;
        list.Add(
            Task(context, TaskIds.SetBase(run.Id), $"Set and level the base of {run.Name}", Operation.SetBase, rails),
            TaskIds.Deliver(FirstLot(context, run.Id)));
        string? ahead = null;
        foreach (var box in cases)
        {
            var outlets = context.PartsOf(box).SelectMany(p => p.Machining).Count(m => m is CutOut);
            list.Add(
                new()
                {
                    Id = TaskIds.SetCase(box.Id),
                    Name = $"Set, plumb, join and fix case {box.Id}",
                    Phase = WorkPhase.Install,
                    Skill = Skill.Installing,
                    Hands = context.HandsFor(box),
                    Work = [context.Work(Operation.SetCase, 1), context.Work(Operation.CutOutlet, outlets)],
                },
                TaskIds.Deliver(context.LotOf(box)),
                TaskIds.SetBase(run.Id),
                ahead ?? "");
            ahead = TaskIds.SetCase(box.Id);
        }

        if (parts.Exists(p => p.Case == run.Id && p.Role == PartRole.Stile))
        {
            list.Add(
                Task(context, TaskIds.FrameToRun(run.Id), $"Glue the face frame over the cases of {run.Name} and flush it", Operation.FrameToCase, cases.Count),
                ahead ?? "",
                TaskIds.Frames(LastLot(context, run.Id)),
                TaskIds.Deliver(LastLot(context, run.Id)));
            ahead = TaskIds.FrameToRun(run.Id);
        }

        FrontWork.AddOnSite(context, list, run.Id, run.Name, parts, [ahead ?? "", TaskIds.Deliver(LastLot(context, run.Id))]);
        AddTrim(context, list, run, parts, ahead ?? "");
    }

    private static void AddTrim(WorkContext context, WorkList list, Run run, List<Part> parts, string ahead)
    {
        var (fillers, mouldings) = (TaskIds.Fillers(run.Id), TaskIds.Mouldings(run.Id));
        var after = new[] { ahead, TaskIds.Deliver(LastLot(context, run.Id)) };
        var scribed = parts.Where(p => p.Role is PartRole.Filler or PartRole.Counter or PartRole.Cleat or PartRole.Apron).Sum(p => WorkContext.Metres(p.Length));
        list.Add(Task(context, fillers, $"Scribe and fit fillers and tops of {run.Name}", Operation.ScribeFiller, scribed), after);
        var moulded = parts.Where(p => p.Role is PartRole.Crown or PartRole.TrimBand or PartRole.ToeFace or PartRole.BaseMould or PartRole.LightRail).Sum(p => WorkContext.Metres(p.Length));
        list.Add(Task(context, mouldings, $"Fit crown, bands and toe face of {run.Name}", Operation.FitMoulding, moulded), [.. after, fillers]);
    }

    private static TaskDraft Task(WorkContext context, string id, string name, Operation operation, decimal quantity) => new()
    {
        Id = id,
        Name = name,
        Phase = WorkPhase.Install,
        Skill = Skill.Installing,
        Work = [context.Work(operation, quantity)],
    };

    private static void AddCleanUp(WorkContext context, WorkList list)
    {
        var onSite = list.Tasks.Where(t => t.Phase == WorkPhase.Install).ToList();
        if (onSite.Count == 0)
            return;
        var day = context.Job.Shop.Hours.Day.Sum(s => (decimal)(s.To - s.From).TotalMinutes);
        var days = Math.Max(1, Math.Ceiling(onSite.Sum(t => t.Minutes(context.Times)) / day));
        list.Add(
            new()
            {
                Id = TaskIds.CleanUp,
                Name = "Clean up and mend snags",
                Phase = WorkPhase.Install,
                Skill = Skill.Installing,
                Work = [context.Work(Operation.CleanUp, days)],
            },
            onSite.Select(t => t.Id));
    }
}

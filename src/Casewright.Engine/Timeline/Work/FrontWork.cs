using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Hinges and drawer boxes in the shop, lot by lot; doors hung and drawers fitted on site, run by run.</summary>
internal static class FrontWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        for (var lot = 0; lot < context.Lots.Count; lot++)
        {
            var parts = context.PartsByLot[lot].ToList();
            AddHinges(context, list, lot, parts);
            AddBoxes(context, list, lot, parts);
        }
    }

    /// <summary>Adds hanging and fitting in a run, after its last case stands.</summary>
    public static void AddOnSite(WorkContext context, WorkList list, string run, string name, IReadOnlyList<Part> parts, IEnumerable<string> after) => list.Add(
        new()
        {
            Id = TaskIds.HangFronts(run),
            Name = $"Hang doors and fit drawers of {name}",
            Phase = WorkPhase.Install,
            Skill = Skill.Installing,
            Work =
            [
                context.Work(Operation.HangDoor, parts.Count(p => p.Role == PartRole.Door)),
                context.Work(Operation.FitDrawer, parts.Count(p => p.Role == PartRole.DrawerFront)),
            ],
        },
        after);

    private static void AddHinges(WorkContext context, WorkList list, int lot, List<Part> parts)
    {
        var doors = parts.Where(p => p.Role == PartRole.Door).ToList();
        var hinges = doors.Sum(d => d.Machining.OfType<Bore>().Count(b => b.For == Hinges.For));
        list.Add(
            new()
            {
                Id = TaskIds.HingeCups(lot),
                Name = $"Bore and fit {hinges} hinges",
                Phase = WorkPhase.Drilling,
                Skill = Skill.Machining,
                Work = [context.Work(Operation.FitHinge, hinges)],
                Parts = [.. doors.Select(p => p.Id)],
            },
            JoineryWork.PartsReady(context, lot, doors));
    }

    private static void AddBoxes(WorkContext context, WorkList list, int lot, List<Part> parts)
    {
        var members = parts.Where(p => p.Role is PartRole.DrawerSide or PartRole.DrawerEnd or PartRole.DrawerBottom).ToList();
        var boxes = members.Count(p => p.Role == PartRole.DrawerBottom);
        list.Add(
            new()
            {
                Id = TaskIds.DrawerBoxes(lot),
                Name = boxes == 1 ? "Glue up one drawer box" : $"Glue up {boxes} drawer boxes",
                Phase = WorkPhase.Assembly,
                Skill = Skill.Assembling,
                Work = [context.Work(Operation.DrawerBox, boxes)],
                Parts = [.. members.Select(p => p.Id)],
                RunsOn = [("under clamps", context.Glue.UnstressedClamp)],
            },
            [.. JoineryWork.PartsReady(context, lot, members), TaskIds.Housings(lot)]);
    }
}

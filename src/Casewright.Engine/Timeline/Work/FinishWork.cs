using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// Sanding case by case, so that two people can share it, and coats lot by lot, since a gun is filled once; drying goes on through the
/// night. Without a finish there are none.
/// </summary>
internal static class FinishWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        if (context.Job.Shop.Finish is not { } finish)
            return;
        for (var lot = 0; lot < context.Lots.Count; lot++)
        {
            var shown = context.PartsByLot[lot].Where(p => Faces(p) > 0).ToList();
            var sanded = AddSanding(context, list, lot, shown);
            var area = shown.Sum(FinishedArea);
            for (var c = 0; c < finish.Coats.Count; c++)
                AddCoat(context, list, lot, c, finish, area, sanded);
        }
    }

    /// <summary>Puts a task after all that makes a lot ready to go, with the clock minutes that must pass.</summary>
    public static void ReadyToGo(WorkContext context, WorkList list, int lot, string next)
    {
        if (context.Job.Shop.Finish is { } finish && list.Has(TaskIds.Coat(finish.Coats.Count - 1, lot)))
        {
            list.Link(TaskIds.Coat(finish.Coats.Count - 1, lot), next, Dry(finish.Coats[^1]));
            return;
        }

        foreach (var box in context.Lots[lot].Cases)
            Built(context, list, box.Id, next);
        PartsMade(context, list, lot, context.PartsByLot[lot], next);
    }

    /// <summary>Faces of a part that take finish.</summary>
    public static int Faces(Part part) =>
        (part.ReferenceFace == Exposure.Shows ? 1 : 0) + (part.OppositeFace == Exposure.Shows ? 1 : 0);

    private static decimal FinishedArea(Part part) => Faces(part) * WorkContext.Area(part);

    private static void Built(WorkContext context, WorkList list, string box, string next)
    {
        list.Link(TaskIds.Back(box), next);
        list.Link(TaskIds.FrameToCase(box), next, context.Glue.Handle);
    }

    private static void PartsMade(WorkContext context, WorkList list, int lot, IEnumerable<Part> parts, string next)
    {
        foreach (var ready in JoineryWork.PartsReady(context, lot, parts.Where(p => Faces(p) > 0)))
            list.Link(ready, next);
        list.Link(TaskIds.Nosings(lot), next, context.Glue.Handle);
        list.Link(TaskIds.HingeCups(lot), next);
        list.Link(TaskIds.DrawerBoxes(lot), next, context.Glue.UnstressedClamp);
    }

    /// <summary>Adds the sanding of a lot: a task for each case with its loose parts, and one for parts that span cases.</summary>
    /// <returns>Ids of the tasks.</returns>
    private static List<string> AddSanding(WorkContext context, WorkList list, int lot, List<Part> shown)
    {
        var boxes = context.Lots[lot].Cases.Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var ids = new List<string>();
        foreach (var group in shown.GroupBy(p => boxes.Contains(p.Case) ? p.Case : TaskIds.Lot(lot), StringComparer.Ordinal))
        {
            var id = TaskIds.Sand(group.Key);
            var what = boxes.Contains(group.Key) ? $"case {group.Key}" : "parts that span cases";
            list.Add(new()
            {
                Id = id,
                Name = $"Sand {what}, {group.Count()} parts",
                Phase = WorkPhase.Sanding,
                Skill = Skill.Finishing,
                Work = [context.Work(Operation.MachineSand, group.Sum(FinishedArea)), context.Work(Operation.HandSand, group.Count())],
            });
            Built(context, list, group.Key, id);
            PartsMade(context, list, lot, group, id);
            ids.Add(id);
        }

        return ids;
    }

    private static void AddCoat(WorkContext context, WorkList list, int lot, int c, FinishSystem finish, decimal area, List<string> sanded)
    {
        var coat = finish.Coats[c];
        var id = TaskIds.Coat(c, lot);
        list.Add(
            new()
            {
                Id = id,
                Name = $"{Capital(coat.Name)} on {string.Join(", ", context.Lots[lot].Cases.Select(x => x.Id))}",
                Phase = WorkPhase.Finishing,
                Skill = Skill.Finishing,
                Work =
                [
                    context.Work(Operation.Denib, coat.DenibFirst ? area : 0),
                    context.Work(coat.Application == CoatApplication.Spray ? Operation.SprayCoat : Operation.BrushCoat, area),
                ],
                RunsOn = [("drying", Dry(coat))],
            },
            sanded);
        if (c > 0)
            list.Link(TaskIds.Coat(c - 1, lot), id, Dry(finish.Coats[c - 1]));
    }

    private static long Dry(Coat coat) => (long)Math.Ceiling(coat.DryHours * 60);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}

using Casewright.Model.Parts;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Sanding and coats, lot by lot, with drying that goes on through the night. Without a finish there are none.</summary>
internal static class FinishWork
{
    public static void Add(WorkContext context, WorkList list)
    {
        if (context.Job.Shop.Finish is not { } finish)
            return;
        for (var lot = 0; lot < context.Lots.Count; lot++)
        {
            var shown = context.PartsByLot[lot].Where(p => Faces(p) > 0).ToList();
            var area = shown.Sum(p => Faces(p) * WorkContext.Area(p));
            AddSanding(context, list, lot, shown, area);
            for (var c = 0; c < finish.Coats.Count; c++)
                AddCoat(context, list, lot, c, finish, area);
        }
    }

    /// <summary>The task after which a lot is ready to go, and the clock minutes that must pass then.</summary>
    public static void ReadyToGo(WorkContext context, WorkList list, int lot, string next)
    {
        if (context.Job.Shop.Finish is { } finish && list.Has(TaskIds.Coat(finish.Coats.Count - 1, lot)))
        {
            list.Link(TaskIds.Coat(finish.Coats.Count - 1, lot), next, Dry(finish.Coats[^1]));
            return;
        }

        Built(context, list, lot, next);
    }

    /// <summary>Faces of a part that take finish.</summary>
    public static int Faces(Part part) =>
        (part.ReferenceFace == Exposure.Shows ? 1 : 0) + (part.OppositeFace == Exposure.Shows ? 1 : 0);

    private static void Built(WorkContext context, WorkList list, int lot, string next)
    {
        foreach (var box in context.Lots[lot].Cases)
        {
            list.Link(TaskIds.Back(box.Id), next);
            list.Link(TaskIds.FrameToCase(box.Id), next, context.Glue.Handle);
        }

        foreach (var part in context.PartsByLot[lot].Where(p => Faces(p) > 0).Select(p => TaskIds.Crosscut(p.Material)).Distinct(StringComparer.Ordinal))
            list.Link(part, next);
        list.Link(TaskIds.Nosings(lot), next, context.Glue.Handle);
        list.Link(TaskIds.Trim(lot), next);
    }

    private static void AddSanding(WorkContext context, WorkList list, int lot, List<Part> shown, decimal area)
    {
        list.Add(new()
        {
            Id = TaskIds.Sand(lot),
            Name = $"Sand {shown.Count} parts of {string.Join(", ", context.Lots[lot].Cases.Select(c => c.Id))}",
            Phase = WorkPhase.Sanding,
            Skill = Skill.Finishing,
            Work = [context.Work(Operation.MachineSand, area), context.Work(Operation.HandSand, shown.Count)],
        });
        Built(context, list, lot, TaskIds.Sand(lot));
    }

    private static void AddCoat(WorkContext context, WorkList list, int lot, int c, FinishSystem finish, decimal area)
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
            TaskIds.Sand(lot));
        if (c > 0)
            list.Link(TaskIds.Coat(c - 1, lot), id, Dry(finish.Coats[c - 1]));
    }

    private static long Dry(Coat coat) => (long)Math.Ceiling(coat.DryHours * 60);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}

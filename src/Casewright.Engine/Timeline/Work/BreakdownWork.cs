using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// Unloading and sawing. One task a stock for unloading and one a delivery of a material for all its rips: every setting of the fence is made
/// once for all sheets that are there, and what comes later does not keep the saw waiting. Crosscuts follow a few sheets at a time, so that splicing can begin while the saw goes on.
/// </summary>
internal static class BreakdownWork
{
    private static readonly Length LongSheet = Length.FromMillimetres(2500);

    public static void Add(WorkContext context, WorkList list)
    {
        AddUnloading(context, list);
        foreach (var material in context.Cutting.Sheets.Select(s => s.Material).Distinct(StringComparer.Ordinal))
            AddSawing(context, list, material);
        foreach (var material in context.Cutting.Boards.Select(b => b.Material).Distinct(StringComparer.Ordinal))
            AddBoards(context, list, material);
    }

    private static void AddUnloading(WorkContext context, WorkList list)
    {
        foreach (var group in context.Cutting.Sheets.Where(s => s.LeftOver is null).GroupBy(s => s.Stock, StringComparer.Ordinal))
        {
            var first = group.First();
            var isLong = Length.Max(first.Length, first.Width) > LongSheet;
            var two = isLong || context.SheetMass(first.Material, first.Length, first.Width) > context.Job.Shop.Checks.SheetForOne;
            list.Add(new()
            {
                Id = TaskIds.Unload(group.Key),
                Name = $"Unload and check {group.Count()} {(group.Count() == 1 ? "sheet" : "sheets")} of {context.Material(first.Material).Name}",
                Phase = WorkPhase.Breakdown,
                Hands = two ? 2 : 1,
                TimedForTwo = isLong,
                NotBefore = Arrival(context, group.Key, group.Any(s => s is { Bought: true, Sawn: false })),
                Work = [context.Work(isLong ? Operation.UnloadLongSheet : Operation.UnloadSheet, group.Count())],
            });
        }

        foreach (var group in context.Cutting.Boards.Where(b => b.LeftOver is null).GroupBy(b => b.Stock, StringComparer.Ordinal))
        {
            list.Add(new()
            {
                Id = TaskIds.Unload(group.Key),
                Name = $"Unload and check {group.Count()} {(group.Count() == 1 ? "board" : "boards")} of {context.Material(group.First().Material).Name}",
                Phase = WorkPhase.Breakdown,
                NotBefore = Arrival(context, group.Key, group.Any(b => b is { Bought: true, Sawn: false })),
                Work = [context.Work(Operation.UnloadBoard, group.Count())],
            });
        }
    }

    private static DateOnly? Arrival(WorkContext context, string stock, bool bought)
    {
        var stocks = context.Job.Stock;
        var days = stocks.Sheets.FirstOrDefault(s => s.Id == stock)?.LeadDays ?? stocks.Boards.FirstOrDefault(b => b.Id == stock)?.LeadDays ?? 0;
        return bought && days > 0 ? context.Job.Shop.Hours.WorkingDayAfter(context.Start, days) : null;
    }

    private static void AddSawing(WorkContext context, WorkList list, string material)
    {
        var name = context.Material(material).Name;
        var deliveries = context.Cutting.Sheets.Where(s => s.Material == material).GroupBy(context.Deliveries.Of).OrderBy(d => d.Key).ToList();
        foreach (var delivery in deliveries)
        {
            var sheets = delivery.ToList();
            var two = sheets.Exists(s => context.SheetMass(material, s.Length, s.Width) > context.Job.Shop.Checks.SheetForOne || Length.Max(s.Length, s.Width) > context.Job.Shop.Checks.PieceForOne);
            var which = deliveries.Count == 1 ? "" : " " + LengthFormat.Usual(sheets.Select(s => s.Length).Aggregate(Length.Max), context.Job.Units) + " long";
            list.Add(
                new()
                {
                    Id = TaskIds.Rip(material, delivery.Key),
                    Name = $"Rip {name}, {sheets.Count} sheets{which}",
                    Phase = WorkPhase.Breakdown,
                    Skill = Skill.Machining,
                    Hands = two ? 2 : 1,
                    Work = Cuts(context, sheets, CutKind.Rip, Operation.TableRip),
                },
                sheets.Select(s => TaskIds.Unload(s.Stock)));
        }

        var portions = context.Portions.Of(material);
        for (var i = 0; i < portions.Count; i++)
        {
            var portion = portions[i].ToList();
            list.Add(
                new()
                {
                    Id = TaskIds.Crosscut(material, i),
                    Name = portions.Count == 1 ? $"Crosscut and label {name}" : $"Crosscut and label {name}, {portion[0].Id} to {portion[^1].Id}",
                    Phase = WorkPhase.Breakdown,
                    Skill = Skill.Machining,
                    Work = [.. Cuts(context, portion, CutKind.Crosscut, Operation.Crosscut), Labels(context, portion.Select(s => s.Id), fromBoard: false)],
                },
                [.. portion.Select(s => TaskIds.Unload(s.Stock)), TaskIds.Rip(material, context.Deliveries.Of(portion[0])), i > 0 ? TaskIds.Crosscut(material, i - 1) : ""]);
        }
    }

    private static WorkQuantity[] Cuts(WorkContext context, List<SheetLayout> sheets, CutKind kind, Operation operation)
    {
        var cuts = sheets.SelectMany(s => s.Cuts).Where(c => c.Kind == kind).ToList();
        var settings = cuts.Where(c => c.Stage > 0).Select(c => c.Setting).Distinct().Count() + (cuts.Exists(c => c.Stage == 0) ? 1 : 0);
        return [context.Work(Operation.FenceSetting, settings), context.Work(operation, cuts.Count)];
    }

    private static WorkQuantity Labels(WorkContext context, IEnumerable<string> layouts, bool fromBoard)
    {
        var ids = layouts.ToHashSet(StringComparer.Ordinal);
        return context.Work(Operation.Label, context.Cutting.Pieces.Count(p => p.FromBoard == fromBoard && ids.Contains(p.Stock)));
    }

    private static void AddBoards(WorkContext context, WorkList list, string material)
    {
        var boards = context.Cutting.Boards.Where(b => b.Material == material).ToList();
        var ids = boards.Select(b => b.Id).ToHashSet(StringComparer.Ordinal);
        var stops = context.Cutting.Pieces.Where(p => p.FromBoard && ids.Contains(p.Stock)).Select(p => p.Length).Distinct().Count();
        list.Add(
            new()
            {
                Id = TaskIds.Crosscut(material, 0),
                Name = $"Cut {context.Material(material).Name} to length, {boards.Count} boards",
                Phase = WorkPhase.Breakdown,
                Skill = Skill.Machining,
                Work =
                [
                    context.Work(Operation.FenceSetting, stops),
                    context.Work(Operation.Crosscut, boards.Sum(b => b.Cuts.Count)),
                    Labels(context, ids, fromBoard: true),
                ],
            },
            boards.Select(b => TaskIds.Unload(b.Stock)));
    }
}

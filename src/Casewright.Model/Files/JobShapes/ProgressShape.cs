using Casewright.Model.Files.Shapes;
using Casewright.Model.Timeline;

namespace Casewright.Model.Files.JobShapes;

/// <summary>How far the work of a job has come, in a job file.</summary>
internal static class ProgressShape
{
    private const int MostTasks = 20_000;

    private static readonly RecordShape<WorkRecord> s_record = new("workRecord", "What was really done of a task.", f => new(
        f.Required("task", r => r.Task, TextShape.Words, "Id of the task, as the timetable names it."),
        f.Required("start", r => r.Start, MomentShape.Instance, "When it was begun, by the clock of the shop."),
        f.OptionalValue("finish", r => r.Finish, MomentShape.Instance, "When it was done; left out while it is being done."))
    {
        HandsOn = f.OptionalValue(
            "handsOn", r => r.HandsOn, DecimalShape.Positive(1_000_000), "Minutes it took, every pair of hands counted; left out when nobody logged them."),
    })
    {
        Check = (record, spot) =>
        {
            if (record.Finish < record.Start)
                spot["finish"].Fail("The task is done before it was begun.", null, "a moment not before \"start\"");
        },
    };

    public static RecordShape<ShopProgress> Shape { get; } = new(
        "progress",
        "How far the work has come: what is done stays, what is left is scheduled from now.",
        f => new(
            f.Required("now", p => p.Now, MomentShape.Instance, "The moment by the clock of the shop; nothing new begins before it."),
            f.Items("tasks", p => p.Records, s_record, 0, MostTasks, "Tasks begun or done.")))
    {
        Check = CheckRecords,
    };

    private static void CheckRecords(ShopProgress progress, Spot spot)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < progress.Records.Count; i++)
        {
            var record = progress.Records[i];
            if (!seen.Add(record.Task))
                spot["tasks"][i]["task"].Fail("This task is recorded twice.", null, "one record for each task");
            if (record.Start > progress.Now || record.Finish > progress.Now)
                spot["tasks"][i].Fail("This lies after now.", null, "moments not after \"now\"");
        }
    }
}

namespace Casewright.Engine.Timeline.Work;

/// <summary>Derives all the tasks of a job, stage by stage in the order of the work.</summary>
internal static class WorkBreakdown
{
    public static WorkList Derive(WorkContext context)
    {
        var list = new WorkList();
        BreakdownWork.Add(context, list);
        SpliceWork.Add(context, list);
        JoineryWork.Add(context, list);
        AssemblyWork.Add(context, list);
        FrontWork.Add(context, list);
        FinishWork.Add(context, list);
        InstallWork.Add(context, list);
        return list;
    }
}

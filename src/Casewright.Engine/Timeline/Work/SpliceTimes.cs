using Casewright.Model.Splices;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// Hands-on minutes of a splice, step by step. The shop's minutes for the method are the whole, the figure that the cutting is priced with;
/// the standard times say how the steps share it.
/// </summary>
internal static class SpliceTimes
{
    private static readonly Operation[] Steps = [Operation.PrepareSplice, Operation.GlueSplice, Operation.UnclampSplice, Operation.FlushSplice];

    public static decimal Minutes(WorkContext context, SpliceMethod method, Operation step)
    {
        var steps = Steps.Where(s => s != Operation.UnclampSplice || HasUnclamping(method)).ToList();
        var shares = steps.Sum(context.Times.Minutes);
        var whole = context.Job.Shop.Splicing.Methods.FirstOrDefault(m => m.Method == method) is { } own ? (decimal)own.Minutes : shares;
        var clear = context.Job.Shop.Finish is { Clear: true } ? context.Times.ClearFinishFactor : 1;
        return context.Times.Minutes(step) * whole / shares * clear;
    }

    public static WorkQuantity Work(WorkContext context, SpliceMethod method, Operation step, int joints) => new(step, joints, Minutes(context, method, step));

    private static bool HasUnclamping(SpliceMethod method) => method != SpliceMethod.TenonsAndConnectors;
}

/// <summary>Splice methods in ids and in words.</summary>
internal static class MethodIds
{
    public static string Of(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => "tenons",
        SpliceMethod.TenonsAndConnectors => "connectors",
        SpliceMethod.Spline => "spline",
        SpliceMethod.HalfLap => "half-lap",
        SpliceMethod.Scarf => "scarf",
        SpliceMethod.BackedButt => "backed-butt",
        _ => "butt",
    };

    public static string Words(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => "loose tenons",
        SpliceMethod.TenonsAndConnectors => "loose tenons with draw connectors",
        SpliceMethod.Spline => "splines",
        SpliceMethod.HalfLap => "half-laps",
        SpliceMethod.Scarf => "scarfs",
        SpliceMethod.BackedButt => "backed butts",
        _ => "butts",
    };
}

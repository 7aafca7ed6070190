using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Figures;

/// <summary>Notes lippings that cannot be glued on or planed to the wall.</summary>
internal static class LippingReader
{
    /// <summary>Checks both ends of a run.</summary>
    public static void Check(RunFigures run, ProblemList problems)
    {
        foreach (var (design, end, field) in new[] { (run.Run.Left, run.Left, "left"), (run.Run.Right, run.Right, "right") })
        {
            if (design.Lipping is not { } lipping)
                continue;
            var path = $"{run.Path}.{field}.lipping";
            if (end.Kind != EndKind.Finished || end.Panel is not null)
                problems.Add(path, "Only a side that shows at a finished end is lipped.", end.Panel is null ? end.Kind.ToString() : "a panel", "kind finished and no panel, or no lipping");
            else
                CheckLips(run, end, lipping, path, problems);
        }
    }

    private static void CheckLips(RunFigures run, EndFigures end, LippingDesign lipping, string path, ProblemList problems)
    {
        CheckWidth(run, end.FrontLip, path + ".front", problems);
        CheckWidth(run, end.RearLip, path + ".rear", problems);
        if (end.FrontLip is not null && run.Frame is not null)
            problems.Add(path + ".front", "The face frame covers the front edges of the sides already.", $"'{lipping.Front}'", "no lipping in front");
        else if (end.FrontLip is not null && run.UprightNosing is not null)
            problems.Add(path + ".front", "The nosing of the uprights covers the front edges of the sides already.", $"'{lipping.Front}'", "no lipping in front");
        if (end.RearLip is { } rear)
            CheckRear(run, end, rear, path + ".rear", problems);
    }

    private static void CheckWidth(RunFigures run, Material? lip, string path, ProblemList problems)
    {
        if (lip?.BoardWidth is { } width)
            problems.Least(path, "board width of the lipping, which must cover the edge of the side,", width, run.T);
    }

    /// <summary>The rear lip must outlast the planing, and the groove of the back must keep wood behind it in the side itself.</summary>
    private static void CheckRear(RunFigures run, EndFigures end, Material rear, string path, ProblemList problems)
    {
        var proud = run.Joinery.ScribeAllowance + (end.Behind ?? Length.Zero);
        if (rear.Thickness <= proud)
            problems.Add(path, "The lipping is planed away where the wall is nearest.", rear.Thickness, $"thicker than {problems.Say(proud)}, which is left on for the wall");
        if (run.Run.Back.Kind is BackKind.Overlaid or BackKind.Rabbeted)
            problems.Add(path, "The back lies in the rear edge of the side, where the lipping would be.", run.Run.Back.Kind.ToString(), "a captured back, or none");
        var behind = run.Run.Back.Inset - (rear.Thickness - proud);
        if (run.Run.Back.Kind == BackKind.Captured && behind < run.Joinery.GrooveDepth)
            problems.Add(path, "The lipping leaves too little of the side behind the groove of the back.", behind, $"{problems.Say(run.Joinery.GrooveDepth)} or more: a thinner lipping or more inset");
    }
}

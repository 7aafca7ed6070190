using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What dados leave of an upright: a third of a partition between its two dados, two thirds of a side behind its one.</summary>
internal static class HousingNotice
{
    /// <summary>One finding for partitions where a case has them, one for sides.</summary>
    public static IEnumerable<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        if (run.Joinery.DadoDepth == Length.Zero)
            yield break;
        var share = run.Job.Shop.Checks.LeastWeb;
        if (cases.Any(c => c.Bays > 1 && c.Fixed.Count > 0))
            yield return Make(run, "partitions", "t − 2a", run.T - (run.Joinery.DadoDepth * 2), (double)run.T.Millimetres * share, Severity.Stop);
        yield return Make(run, "sides", "t − a", run.T - run.Joinery.DadoDepth, (double)run.T.Millimetres * 2 / 3, Severity.Caution);
    }

    private static Finding Make(RunFigures run, string uprights, string formula, Length web, double limit, Severity worst)
    {
        var thin = (double)web.Millimetres < limit - 1e-9;
        return new()
        {
            Check = "housing-web",
            Severity = thin ? worst : Severity.Pass,
            Subject = run.Run.Id,
            Message = $"Dados leave {LengthFormat.Usual(web, run.Job.Units)} of wood in the {uprights} of run {run.Run.Name}.",
            Value = (double)web.Millimetres,
            Limit = limit,
            Unit = "mm",
            Formula = formula,
            Source = LayoutNotices.Practice,
            Standing = Standing.CommonPractice,
            Advice = thin ? $"Cut dados no deeper than a third of the measured panel, {LengthFormat.Usual(run.T / 3, run.Job.Units)}." : "",
            Inputs = [LayoutNotices.Input("panel thickness t", run.T), LayoutNotices.Input("dado depth a", run.Joinery.DadoDepth)],
        };
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks;

/// <summary>The stage that holds a plan against every check.</summary>
public static class CheckStage
{
    /// <summary>Runs every check of the catalogue.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">Cases and parts derived from it.</param>
    /// <param name="plan">What is cut from what; null before cutting, and then checks of splices and sheets say they have nothing to look at.</param>
    /// <returns>Stops first, then cautions, then what was not checked, then passes; within each in the catalogue's and the plan's order.</returns>
    public static ValueList<Finding> Run(Job job, Casework casework, CutPlan? plan) => Run(CheckCatalogue.All, new CheckContext(job, casework, plan));

    /// <summary>Runs the given checks on a plan already looked up.</summary>
    public static ValueList<Finding> Run(IEnumerable<ICheck> checks, CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(checks);
        ArgumentNullException.ThrowIfNull(context);
        return checks.SelectMany(check => Findings(check, context)).OrderBy(f => Rank(f.Severity)).ToValueList();
    }

    private static IEnumerable<Finding> Findings(ICheck check, CheckContext context)
    {
        var any = false;
        foreach (var finding in check.Run(context))
        {
            any = true;
            yield return finding;
        }

        if (!any)
            yield return NothingOfItsKind(check.Sheet);
    }

    private static Finding NothingOfItsKind(CheckSheet sheet) => new()
    {
        Check = sheet.Id,
        Severity = Severity.Pass,
        Subject = "job",
        Message = "There is nothing of this kind in the plan.",
        Formula = sheet.Formula,
        Source = sheet.Source,
        Standing = sheet.Standing,
    };

    private static int Rank(Severity severity) => severity switch
    {
        Severity.Stop => 0,
        Severity.Caution => 1,
        Severity.NotChecked => 2,
        _ => 3,
    };
}

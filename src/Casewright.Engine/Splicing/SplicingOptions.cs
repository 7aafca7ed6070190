using Casewright.Engine.Splicing.Options;
using Casewright.Model.Collections;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Splicing;

/// <summary>
/// The ways in which every part of a job can be made: whole where its sheet or longer stock takes it, spliced at the places that
/// the rules of the shop and of its run allow, or of strips where that is wished. Which way is taken is decided with the cutting.
/// </summary>
/// <param name="Materials">Material by material, in the order of the job; materials that no part uses are left out.</param>
public sealed record SplicingOptions(ValueList<MaterialDemands> Materials)
{
    /// <summary>Finds the options of all parts.</summary>
    /// <returns>The options, or one problem for each group of parts that cannot be made.</returns>
    public static Outcome<SplicingOptions> For(Job job, Casework casework)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var finder = new SpliceRoomFinder(job, casework);
        var problems = new List<Problem>();
        var materials = new List<MaterialDemands>();
        foreach (var material in job.Stock.Materials)
        {
            Part[] parts = [.. casework.Parts.Where(p => p.Material == material.Id)];
            if (parts.Length > 0)
                materials.Add(new MaterialDemands(material, new MaterialOptions(job, casework, material, finder, problems).For(parts)));
        }

        return problems.Count == 0 ? Outcome<SplicingOptions>.Of(new(materials.ToValueList())) : Outcome<SplicingOptions>.Failed(problems);
    }
}

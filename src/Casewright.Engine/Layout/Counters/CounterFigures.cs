using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Layout.Counters;

/// <summary>A counter with its materials resolved.</summary>
/// <param name="Design">As designed.</param>
/// <param name="Path">Its path in the job file.</param>
/// <param name="Material">Its material.</param>
/// <param name="Edge">Board on its front; null for a bare edge.</param>
internal sealed record CounterFigures(CounterDesign Design, string Path, Material Material, Material? Edge)
{
    /// <summary>Thickness of all layers.</summary>
    public Length Thickness => Material.Thickness * Design.Layers;

    /// <summary>Resolves a counter; null where there is none or it has a problem, which the list then holds.</summary>
    public static CounterFigures? Read(RunFigures run, CounterDesign? design, string path, ProblemList problems)
    {
        if (design is null)
            return null;
        var materials = run.Job.Stock.Materials;
        var material = materials.FirstOrDefault(m => m.Id == design.Material && !m.IsBoard);
        var edge = materials.FirstOrDefault(m => m.Id == design.Edge && m.IsBoard);
        if (material is null)
            problems.Add(path + ".material", "There is no such sheet material.", $"'{design.Material}'", "one of " + string.Join(", ", materials.Where(m => !m.IsBoard).Select(m => m.Id)));
        if (design.Edge is not null && edge is null)
            problems.Add(path + ".edge", "There is no such board material.", $"'{design.Edge}'", "one of " + string.Join(", ", materials.Where(m => m.IsBoard).Select(m => m.Id)));
        if (design.Layers is not (1 or 2))
            problems.Add(path + ".layers", "A counter has one layer or two.", design.Layers.ToString(CultureInfo.InvariantCulture), "1 or 2");
        problems.Least(path + ".overhang", "overhang", design.Overhang, Length.Zero);
        problems.Least(path + ".endOverhang", "overhang", design.EndOverhang, Length.Zero);
        problems.Least(path + ".apron", "height of the apron", design.Apron, Length.Zero);
        if (material is null || (design.Edge is not null && edge is null) || design.Layers is not (1 or 2))
            return null;
        if (edge is not null)
            problems.Least(path + ".edge", "board width of the edge, which must cover the layers,", edge.BoardWidth!.Value, material.Thickness * design.Layers);
        return new(design, path, material, edge);
    }
}

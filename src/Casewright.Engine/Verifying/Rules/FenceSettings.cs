using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The setting of every cut is the true size of what comes off or of what stays against the fence.</summary>
internal sealed class FenceSettings : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        from sheet in evidence.Plan.Sheets
        from made in evidence.Simulation(sheet).Cuts
        where made.Panel is not null
        let low = Across(made.Cut, made.Low)
        let high = Across(made.Cut, made.High)
        where made.Cut.Setting != low && made.Cut.Setting != high && (made.Cut.Stage > 0 || made.Cut.Setting != sheet.Trim)
        select new Problem($"{made.Place}.setting", "The setting is the size of neither side of the cut.", $"{made.Cut.Setting}", $"{low} or {high}");

    private static Length Across(Cut cut, Rectangle side) => cut.Kind == CutKind.Rip ? side.SizeY : side.SizeX;
}

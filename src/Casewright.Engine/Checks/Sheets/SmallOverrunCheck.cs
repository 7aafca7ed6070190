using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Splices that a little less height would save.</summary>
public sealed class SmallOverrunCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "small-overrun",
        "How far each spliced part is longer than the longest sheet.",
        "overrun = length − (sheet − 2 trim)",
        "Common practice: under 60 mm, design the splice away",
        Standing.CommonPractice)
    {
        Limits = [new("overrun worth designing away", l => (double)l.SmallOverrun.Millimetres, 60, "mm", "common practice, no source", Standing.CommonPractice)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var panels = context.Parts.Where(p => !context.Material(p).IsBoard).ToList();
        foreach (var material in SheetFit.WithoutSheets(context, panels))
            yield return NotChecked(context, material.Id, $"no sheet of {material.Name} is on offer.", "Add the sheet sizes that you can buy.");
        foreach (var part in panels)
        {
            var sheets = SheetFit.Usable(context, part).ToList();
            if (sheets.Count > 0 && SheetFit.Sizes(part).Along - sheets.Max(s => s.Along) is var over && over > Length.Zero)
                yield return One(context, part, over);
        }
    }

    private Finding One(CheckContext context, Part part, Length over)
    {
        var (say, limit) = (context.Say, context.Limits.SmallOverrun);
        return Report(
            context,
            over < limit ? Severity.Caution : Severity.Pass,
            part.Id,
            $"{part.Name} is {say.Size(over)} longer than the longest sheet gives.",
            new((double)over.Millimetres, (double)limit.Millimetres, "mm", []),
            $"A base {say.AtLeast(over.Metres)} higher, a crown that much deeper or a case that much lower saves the joint: compare the schemes.");
    }
}

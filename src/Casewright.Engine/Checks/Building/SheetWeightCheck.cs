using Casewright.Engine.Checks.Materials;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Measure;

namespace Casewright.Engine.Checks.Building;

/// <summary>Full sheets that one person should not handle.</summary>
public sealed class SheetWeightCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "sheet-weight",
        "Mass and length of each kind of sheet in the plan, for one person.",
        "mass = volume × density",
        "Common practice: two people for sheets over 35 kg and anything over 2.6 m",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("sheet for one person", l => l.SheetForOne, 35, "kg", "common practice, no source", Standing.CommonPractice),
            new("longest for one person", l => (double)l.PieceForOne.Millimetres, 2600, "mm", "common practice, no source", Standing.CommonPractice),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return (context.Plan?.Sheets ?? []).DistinctBy(s => s.Stock, StringComparer.Ordinal).Select(s => One(context, s));
    }

    private Finding One(CheckContext context, SheetLayout sheet)
    {
        var material = context.Job.Stock.Material(sheet.Material);
        var mass = sheet.Length.Metres * sheet.Width.Metres * material.Thickness.Metres * MaterialTable.For(material).Density;
        var (say, limits) = (context.Say, context.Limits);
        var passes = mass <= limits.SheetForOne && Length.Max(sheet.Length, sheet.Width) <= limits.PieceForOne;
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            sheet.Stock,
            $"A sheet of {material.Name}, {say.Size(sheet.Length)} × {say.Size(sheet.Width)}, weighs {say.Mass(mass)}{(passes ? "." : ": two people.")}",
            new(mass, limits.SheetForOne, "kg", []),
            "Two people, or break it down where it lies; never lift a sheet over the saw alone.");
    }
}

using Casewright.Model.Files.PlanShapes;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Model.Files;

/// <summary>
/// Writes a plan for other programs, as JSON: every part and piece by itself, lengths in millimetres as exact decimals. One plan always
/// gives the same bytes. The file's form is stated by <see cref="PlanSchema"/>.
/// </summary>
public static class PlanFile
{
    /// <summary>Writes a plan.</summary>
    public static string Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JsonText.Of(PlanShape.Shape.Write(plan, UnitSystem.Millimetres));
    }
}

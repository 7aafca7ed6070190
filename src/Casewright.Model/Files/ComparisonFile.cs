using Casewright.Model.Collections;
using Casewright.Model.Files.PlanShapes;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Schemes;

namespace Casewright.Model.Files;

/// <summary>
/// Writes schemes or nudges of a job for other programs, as JSON, with the same fields as plan.json has for them. The same comparison
/// always gives the same bytes.
/// </summary>
public static class ComparisonFile
{
    /// <summary>Writes schemes.</summary>
    public static string Write(Job job, ValueList<Scheme> schemes) => JsonText.Of(Head<ValueList<Scheme>>(job, "comparison", "Schemes of a job, compared.")
        .Many("schemes", s => s, SchemeShapes.Scheme, "The schemes.")
        .Write(schemes, UnitSystem.Millimetres));

    /// <summary>Writes nudges.</summary>
    /// <param name="job">The job as stated.</param>
    /// <param name="nudges">The nudges, the best first.</param>
    /// <param name="tried">How many changes were planned.</param>
    public static string Write(Job job, ValueList<Nudge> nudges, int tried) => JsonText.Of(Head<ValueList<Nudge>>(job, "nudges", "Small changes that save something.")
        .Count("tried", _ => tried, "How many changes were planned.")
        .Many("nudges", n => n, SchemeShapes.Nudge, "The nudges: those that mend a stop first, then the most money first.")
        .Write(nudges, UnitSystem.Millimetres));

    private static ViewShape<T> Head<T>(Job job, string name, string about)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new ViewShape<T>(name, about)
            .Constant("version", PlanShape.Version, "Version of this file's form.")
            .Text("job", _ => job.Name, "Name of the job.")
            .Text("currency", _ => job.Currency, "Currency of all amounts, ISO 4217.");
    }
}

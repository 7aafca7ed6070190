using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>Single parts that one person should not carry.</summary>
public sealed class PieceWeightCheck : Check
{
    // A strip as light as this is no burden, however long it is (our judgement).
    private const double Light = 5;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "piece-weight",
        "Mass and length of each finished part, for one person; length counts from 5 kg on.",
        "mass = volume × density",
        "Common practice: about 50 lb, and 2.6 m",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("mass per person", l => l.MassPerPerson, 23, "kg", "about 50 lb, common practice, no source", Standing.CommonPractice),
            new("longest for one person", l => (double)l.PieceForOne.Millimetres, 2600, "mm", "common practice, no source", Standing.CommonPractice),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.Parts.Where(p => !context.Material(p).IsBoard).Select(p => One(context, p));
    }

    private Finding One(CheckContext context, Part part)
    {
        var (say, limits) = (context.Say, context.Limits);
        var mass = context.Mass(part);
        var passes = mass <= limits.MassPerPerson && (part.Length <= limits.PieceForOne || mass < Light);
        return Report(
            context,
            passes ? Severity.Pass : Severity.Caution,
            part.Id,
            $"{part.Name} weighs {say.Mass(mass)} and is {say.Size(part.Length)} long{(passes ? "." : ": two people.")}",
            new(mass, limits.MassPerPerson, "kg", []),
            "Two people, on edge; clear the way first.");
    }
}

using Casewright.Engine.Checks.Mechanics;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Building;

/// <summary>Weight of each case, hands it needs, and the lifting equation for each pair of them.</summary>
public sealed class CaseWeightCheck : Check
{
    /// <summary>Most people who can lift one case together.</summary>
    public const int MostHands = 4;

    // From near the floor to carrying height, in cm; an edge to hold by.
    private const double From = 10;
    private const double Travel = 70;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "case-weight",
        "Mass of each case as built, the people it takes, and the lifting index of one person's share.",
        "people = ⌈mass ÷ mass per person⌉; index = share ÷ (23 kg · HM · VM · DM · CM)",
        "Volume × density; NIOSH publication 94-110 (made for one person, given here as a measure); mass per person is common practice, about 50 lb",
        Standing.CommonPractice)
    {
        Limits =
        [
            new("mass per person", l => l.MassPerPerson, 23, "kg", "about 50 lb, common practice, no source", Standing.CommonPractice),
            new("reach from ankles to hands", l => (double)l.LiftReach.Millimetres, 400, "mm", "our judgement", Standing.Judgement),
        ],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        return context.BuiltCases.Select(box => One(context, box));
    }

    /// <summary>Mass in kg of a case as it is carried in: as built, loose shelves left out.</summary>
    public static double MassToLift(CheckContext context, CaseBox box)
    {
        ArgumentNullException.ThrowIfNull(context);
        return UprightLoads.OwnMass(context, box) - context.PartsOf(box).Where(p => p.Role == PartRole.AdjustableShelf).Sum(context.Mass);
    }

    /// <summary>People who share a mass in kg when each takes <paramref name="each"/> kg; at least one.</summary>
    public static int People(double mass, double each) => Math.Max(1, (int)Math.Ceiling(mass / each));

    private Finding One(CheckContext context, CaseBox box)
    {
        var (say, each) = (context.Say, context.Limits.MassPerPerson);
        var mass = MassToLift(context, box);
        var loose = UprightLoads.OwnMass(context, box) - mass;
        var people = People(mass, each);
        var advised = LiftingEquation.RecommendedMass(new(context.Limits.LiftReach.Metres * 100, From, Travel, 0, Grip.Fair));
        var index = mass / people / advised;
        var severity = people > MostHands ? Severity.Stop : people > 1 || index > 3 ? Severity.Caution : Severity.Pass;
        var message = $"Case {box.Id} weighs {say.Mass(mass)} without loose shelves: {Say.Count(people, "person", "people")}, lifting index {Say.Number(index)} each.";
        return Report(
            context,
            severity,
            box.Id,
            message,
            new(mass, each, "kg", [new("recommended mass for one person at this lift", Say.Number(advised), "kg"), new("loose shelves left out", Say.Number(loose), "kg")]),
            severity == Severity.Stop
                ? $"Too heavy for {MostHands} people: build it as {Math.Ceiling(mass / (MostHands * each)):0} cases of {say.MassAtMost(MostHands * each)} or less, assemble it in the room, or bring lifting gear."
                : "Lift together, close to the body, on skids or a dolly where you can; above an index of 1 the risk grows, above 3 it is high.");
    }
}

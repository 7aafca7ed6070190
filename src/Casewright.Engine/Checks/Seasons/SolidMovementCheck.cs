using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Seasons;

/// <summary>Swelling and shrinking of solid members across the grain.</summary>
public sealed class SolidMovementCheck : Check
{
    // Flatsawn hard maple, red oak and white oak all lie at 0.0035 to 0.0037 per %; softwoods below.
    private const double Coefficient = 0.00369;

    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "solid-wood-movement",
        "Seasonal change of width of each solid member, flatsawn.",
        "ΔD = D C ΔM, C = 0.00369 per %",
        "Wood Handbook tables 4-2 and 13-5 (northern red oak, tangential); the limit is our judgement",
        Standing.Published)
    {
        Limits = [new("change that joints and finish bear", l => (double)l.SolidMovement.Millimetres, 0.79375, "mm", "1/32 in, our judgement", Standing.Judgement)],
    };

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var solid = context.Parts.Where(p => context.Material(p).Kind is MaterialKind.Hardwood or MaterialKind.Softwood);
        return solid.DistinctBy(p => (p.Material, p.Width)).Select(p => One(context, p));
    }

    private Finding One(CheckContext context, Part part)
    {
        if (SeasonalMoisture.Of(context.Job.Site) is not { } season)
            return NotChecked(context, part.Id, "the room's temperature and its driest and dampest humidity are not known.", "Give them; 20 °C (68 °F), 35 % and 55 % are usual for heated rooms.");
        var change = Moisture.Change(part.Width.Metres, Coefficient, season.Swing);
        var limit = context.Limits.SolidMovement.Metres;
        var say = context.Say;
        return Report(
            context,
            change > limit ? Severity.Caution : Severity.Pass,
            part.Id,
            $"{part.Name}, {say.Size(part.Width)} wide, and those like it move {say.Fine(change)} between seasons; {say.Fine(limit)} is borne.",
            new(change * 1000, limit * 1000, "mm", [new("moisture content, driest", Say.Number(season.Dry), "%"), new("moisture content, dampest", Say.Number(season.Damp), "%")]),
            $"Use quartersawn stock or members {say.AtMost(limit / (Coefficient * season.Swing))} wide or less, or leave it free to move on one side.");
    }
}

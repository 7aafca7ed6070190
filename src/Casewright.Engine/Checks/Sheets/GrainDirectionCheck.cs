using Casewright.Model.Findings;
using Casewright.Model.Parts;

namespace Casewright.Engine.Checks.Sheets;

/// <summary>Pieces turned across the grain.</summary>
public sealed class GrainDirectionCheck : Check
{
    /// <inheritdoc/>
    public override CheckSheet Sheet { get; } = new(
        "grain-direction",
        "Whether each piece lies on its sheet so that its grain runs as drawn.",
        "",
        "The drawing",
        Standing.Arithmetic);

    /// <inheritdoc/>
    public override IEnumerable<Finding> Run(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var piece in context.Plan?.Pieces ?? [])
        {
            if (piece.FromBoard || context.Part(piece.Part) is not { } part || SheetFit.MayTurn(context, part))
                continue;
            var wrong = piece.Rotated != (part.Grain == Grain.AlongWidth);
            yield return wrong
                ? Rule(context, Severity.Stop, piece.Id, $"Piece {piece.Id} of {part.Name} lies with its grain the wrong way.", "Turn it on the sheet, or say that this part may run either way.")
                : Rule(context, Severity.Pass, piece.Id, $"Piece {piece.Id} lies with its grain as drawn.");
        }
    }
}

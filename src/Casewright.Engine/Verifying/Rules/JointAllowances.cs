using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// Each piece is sawn as long as its stretch and its allowances; at a joint both sides together leave what its method consumes;
/// only the outer end of a glued part, opposite the datum end, is left long.
/// </summary>
internal sealed class JointAllowances : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Plan.Pieces.SelectMany(AddsUp)
            .Concat(evidence.Casework.Parts.SelectMany(part => Ends(evidence, part)))
            .Concat(evidence.Joints().SelectMany(joint => Joint(evidence, joint.Splice, joint.Part)));

    private static IEnumerable<Problem> AddsUp(Piece piece)
    {
        var wanted = piece.To - piece.From + piece.AllowanceStart + piece.AllowanceEnd;
        return piece.Length == wanted
            ? []
            : [new Problem($"pieces[{piece.Id}].length", "The sawn length is not the stretch and its allowances.", $"{piece.Length}", $"{wanted}")];
    }

    private static IEnumerable<Problem> Ends(Evidence evidence, Part part)
    {
        var glued = evidence.SplicesOf(part).Any(splice => splice.Method != SpliceMethod.CoveredButt);
        var wanted = glued ? evidence.Job.Shop.Splicing.EndAllowance : Length.Zero;
        foreach (var piece in evidence.PiecesOf(part))
        {
            if (piece.From == Length.Zero && piece.AllowanceStart != Length.Zero)
                yield return new($"pieces[{piece.Id}].allowanceStart", "The datum end of a part is sawn true, not long.", $"{piece.AllowanceStart}", "0 mm");
            if (piece.To == part.Length && piece.AllowanceEnd != wanted)
                yield return new($"pieces[{piece.Id}].allowanceEnd", "The outer end is not left as the shop's rules say.", $"{piece.AllowanceEnd}", $"{wanted}");
        }
    }

    private static IEnumerable<Problem> Joint(Evidence evidence, Splice splice, Part part)
    {
        var (least, most) = Consumption(splice.Method, part, evidence.Job.Shop.Splicing.SquaringAllowance);
        if (splice.Consumes < least || splice.Consumes > most)
            yield return new($"splices[{splice.Id}].consumes", "The joint does not consume what its method does.", $"{splice.Consumes}", least == most ? $"{least}" : $"{least} to {most}");

        var pieces = evidence.PiecesOf(part);
        foreach (var before in pieces.Where(piece => piece.To == splice.Position))
        {
            var after = pieces.FirstOrDefault(piece => piece.From == splice.Position && piece.Strip == before.Strip);
            if (after is null)
                continue;

            if (before.AllowanceEnd + after.AllowanceStart != splice.Consumes)
            {
                yield return new(
                    $"splices[{splice.Id}].consumes",
                    "The two sides of the joint do not leave together what it consumes.",
                    $"{before.AllowanceEnd} on {before.Id} and {after.AllowanceStart} on {after.Id}",
                    $"{splice.Consumes} together");
            }

            // Half a lap may be half a nanometre; nothing else may differ.
            if ((before.AllowanceEnd - after.AllowanceStart).Abs() > Length.FromNanometres(1))
            {
                yield return new(
                    $"pieces[{after.Id}].allowanceStart",
                    "The joint line is not in the middle of what the joint consumes.",
                    $"{before.AllowanceEnd} on one side, {after.AllowanceStart} on the other",
                    "the same on both sides");
            }
        }
    }

    private static (Length Least, Length Most) Consumption(SpliceMethod method, Part part, Length squaring)
    {
        if (method == SpliceMethod.CoveredButt)
            return (Length.Zero, Length.Zero);

        var (least, most) = Practice.OverlapInThicknesses(method);
        return most == 0 ? (2 * squaring, 2 * squaring) : (part.Thickness * least, (part.Thickness * most) + (2 * squaring));
    }
}

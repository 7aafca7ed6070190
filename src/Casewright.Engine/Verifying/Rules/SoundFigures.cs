using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Sizes are positive, nothing is negative that cannot be, and all is within a kilometre, so that sums are safe.</summary>
internal sealed class SoundFigures : IPlanRule
{
    private const decimal MostMoney = 1_000_000_000_000m;

    private static readonly Length s_most = Length.FromMillimetres(1_000_000);

    public IEnumerable<Problem> Check(Evidence evidence) =>
        Parts(evidence).Concat(Pieces(evidence.Plan)).Concat(Splices(evidence.Plan)).Concat(Sheets(evidence.Plan))
            .Concat(Boards(evidence.Plan)).Concat(Bounds(evidence.Plan));

    private static IEnumerable<Problem> Parts(Evidence evidence) =>
        from part in evidence.Casework.Parts
        let place = $"parts[{part.Id}]"
        from problem in Positive($"{place}.length", part.Length).Concat(Positive($"{place}.width", part.Width))
            .Concat(Positive($"{place}.thickness", part.Thickness))
            .Concat(Within($"{place}.place", part.Place.Origin.X, part.Place.Origin.Y, part.Place.Origin.Z))
        select problem;

    private static IEnumerable<Problem> Pieces(CutPlan plan) =>
        from piece in plan.Pieces
        let place = $"pieces[{piece.Id}]"
        from problem in Positive($"{place}.length", piece.Length).Concat(Positive($"{place}.width", piece.Width))
            .Concat(NotNegative($"{place}.x", piece.X)).Concat(NotNegative($"{place}.y", piece.Y))
            .Concat(NotNegative($"{place}.from", piece.From)).Concat(NotNegative($"{place}.to", piece.To))
            .Concat(NotNegative($"{place}.allowanceStart", piece.AllowanceStart))
            .Concat(NotNegative($"{place}.allowanceEnd", piece.AllowanceEnd))
            .Concat(Unless(piece.Strip >= 0, $"{place}.strip", "A strip's number is negative.", $"{piece.Strip}", "0 or more"))
        select problem;

    private static IEnumerable<Problem> Splices(CutPlan plan) =>
        from splice in plan.Splices
        let place = $"splices[{splice.Id}]"
        from problem in Positive($"{place}.position", splice.Position).Concat(NotNegative($"{place}.consumes", splice.Consumes))
            .Concat(NotNegative($"{place}.markOffset", splice.MarkOffset))
            .Concat(Within($"{place}.sightLine", splice.SightLine ?? Length.Zero))
            .Concat(splice.Tenons.SelectMany((tenon, i) => Tenon($"{place}.tenons[{i + 1}]", tenon)))
            .Concat(splice.Connectors.SelectMany((connector, i) => Positive($"{place}.connectors[{i + 1}].offset", connector.Offset)))
        select problem;

    private static IEnumerable<Problem> Tenon(string place, Tenon tenon) =>
        Positive($"{place}.offset", tenon.Offset).Concat(Positive($"{place}.depth", tenon.Depth))
            .Concat(Positive($"{place}.thickness", tenon.Thickness)).Concat(Positive($"{place}.width", tenon.Width))
            .Concat(Positive($"{place}.length", tenon.Length)).Concat(Positive($"{place}.mortiseDepth", tenon.MortiseDepth))
            .Concat(NotNegative($"{place}.play", tenon.Play));

    private static IEnumerable<Problem> Sheets(CutPlan plan) =>
        from sheet in plan.Sheets
        let place = $"sheets[{sheet.Id}]"
        from problem in Positive($"{place}.length", sheet.Length).Concat(Positive($"{place}.width", sheet.Width))
            .Concat(NotNegative($"{place}.trim", sheet.Trim)).Concat(NotNegative($"{place}.kerf", sheet.Kerf))
            .Concat(Money($"{place}.cost", sheet.Cost))
            .Concat(sheet.Cuts.SelectMany((cut, i) => Cut($"{place}.cuts[{i + 1}]", cut)))
            .Concat(sheet.Offcuts.SelectMany((offcut, i) => Offcut($"{place}.offcuts[{i + 1}]", offcut)))
        select problem;

    private static IEnumerable<Problem> Cut(string place, Cut cut) =>
        Within(place, cut.X0, cut.Y0, cut.X1, cut.Y1).Concat(Positive($"{place}.setting", cut.Setting))
            .Concat(Unless(cut.Stage >= 0, $"{place}.stage", "A stage is negative.", $"{cut.Stage}", "0 for edge trim, else 1 or more"));

    private static IEnumerable<Problem> Offcut(string place, KeptOffcut offcut) =>
        Within(place, offcut.X, offcut.Y).Concat(Positive($"{place}.length", offcut.Length)).Concat(Positive($"{place}.width", offcut.Width));

    private static IEnumerable<Problem> Boards(CutPlan plan) =>
        from board in plan.Boards
        let place = $"boards[{board.Id}]"
        from problem in Positive($"{place}.length", board.Length).Concat(NotNegative($"{place}.trim", board.Trim))
            .Concat(NotNegative($"{place}.kerf", board.Kerf)).Concat(NotNegative($"{place}.left", board.Left))
            .Concat(Money($"{place}.cost", board.Cost))
            .Concat(board.Cuts.SelectMany((cut, i) => Within($"{place}.cuts[{i + 1}]", cut)))
        select problem;

    private static IEnumerable<Problem> Bounds(CutPlan plan) =>
        Money("bounds.cost", plan.Bounds.Cost).Concat(Money("bounds.lowerBound", plan.Bounds.LowerBound))
            .Concat(plan.Materials.SelectMany(material =>
                Money($"materials[{material.Material}].cost", material.Bounds.Cost)
                    .Concat(Money($"materials[{material.Material}].lowerBound", material.Bounds.LowerBound))));

    private static IEnumerable<Problem> Positive(string place, Length length) =>
        Unless(length > Length.Zero && length <= s_most, place, "A size is not possible.", length.ToString(), "more than 0, up to 1 km");

    private static IEnumerable<Problem> NotNegative(string place, Length length) =>
        Unless(length >= Length.Zero && length <= s_most, place, "A length is not possible.", length.ToString(), "0 or more, up to 1 km");

    private static IEnumerable<Problem> Within(string place, params Length[] lengths) =>
        from length in lengths
        from problem in Unless(length >= -s_most && length <= s_most, place, "A place is out of range.", length.ToString(), "within 1 km")
        select problem;

    private static IEnumerable<Problem> Money(string place, decimal amount) =>
        Unless(amount is >= 0 and <= MostMoney, place, "An amount is not possible.", $"{amount}", "0 or more");

    private static IEnumerable<Problem> Unless(bool holds, string place, string message, string found, string accepted) =>
        holds ? [] : [new Problem(place, message, found, accepted)];
}

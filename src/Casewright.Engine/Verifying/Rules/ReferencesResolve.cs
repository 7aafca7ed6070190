using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>Ids are unique and every id that is named exists.</summary>
internal sealed class ReferencesResolve : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence)
    {
        var plan = evidence.Plan;
        return Unique("cases", evidence.Casework.Cases.Select(box => box.Id))
            .Concat(Unique("parts", evidence.Casework.Parts.Select(part => part.Id)))
            .Concat(Unique("pieces", plan.Pieces.Select(piece => piece.Id)))
            .Concat(Unique("splices", plan.Splices.Select(splice => splice.Id)))
            .Concat(Unique("sheets", plan.Sheets.Select(sheet => sheet.Id)))
            .Concat(Unique("boards", plan.Boards.Select(board => board.Id)))
            .Concat(Unique("materials", plan.Materials.Select(material => material.Material)))
            .Concat(evidence.Casework.Cases.SelectMany(box => Case(evidence, box)))
            .Concat(evidence.Casework.Parts.SelectMany(part => Part(evidence, part)))
            .Concat(plan.Pieces.SelectMany(piece => Piece(evidence, piece)))
            .Concat(plan.Splices.SelectMany(splice =>
                Known(evidence.Part(splice.Part) is not null, $"splices[{splice.Id}].part", "part", splice.Part)
                    .Concat(Known(splice.CoveredBy is null || evidence.Part(splice.CoveredBy) is not null, $"splices[{splice.Id}].coveredBy", "part", splice.CoveredBy))));
    }

    private static IEnumerable<Problem> Case(Evidence evidence, CaseBox box) =>
        Known(evidence.Run(box.Run) is not null, $"cases[{box.Id}].run", "run", box.Run)
            .Concat(Known(evidence.Job.Walls.Any(wall => wall.Id == box.Wall), $"cases[{box.Id}].wall", "wall", box.Wall));

    private static IEnumerable<Problem> Part(Evidence evidence, Part part)
    {
        var place = $"parts[{part.Id}]";
        return Known(evidence.Run(part.Run) is not null, $"{place}.run", "run", part.Run)
            .Concat(Known(evidence.Case(part.Case) is not null || evidence.Run(part.Case) is not null, $"{place}.case", "case or run", part.Case))
            .Concat(Known(evidence.Material(part.Material) is not null, $"{place}.material", "material", part.Material))
            .Concat(Known(evidence.Job.Walls.Any(wall => wall.Id == part.Place.Wall), $"{place}.place.wall", "wall", part.Place.Wall))
            .Concat(Known(part.Nosing is null || evidence.Part(part.Nosing) is not null, $"{place}.nosing", "part", part.Nosing));
    }

    private static IEnumerable<Problem> Piece(Evidence evidence, Piece piece)
    {
        var place = $"pieces[{piece.Id}]";
        foreach (var problem in Known(evidence.Part(piece.Part) is not null, $"{place}.part", "part", piece.Part))
            yield return problem;

        var material = piece.FromBoard
            ? evidence.Plan.Boards.FirstOrDefault(board => board.Id == piece.Stock)?.Material
            : evidence.Plan.Sheets.FirstOrDefault(sheet => sheet.Id == piece.Stock)?.Material;
        foreach (var problem in Known(material is not null, $"{place}.stock", piece.FromBoard ? "board layout" : "sheet layout", piece.Stock))
            yield return problem;

        var wanted = evidence.Part(piece.Part)?.Material;
        if (material is not null && wanted is not null && material != wanted)
            yield return new($"{place}.stock", "The piece is cut from another material than its part's.", material, wanted);
    }

    private static IEnumerable<Problem> Unique(string list, IEnumerable<string> ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return from id in ids
               where !seen.Add(id)
               select new Problem($"{list}[{id}]", "Two share one id.", id, "an id of its own for each");
    }

    private static IEnumerable<Problem> Known(bool known, string place, string what, string? id) =>
        known ? [] : [new Problem(place, $"There is no {what} of this id.", id ?? "nothing", $"the id of a {what} of the plan")];
}

using Casewright.Engine.Splicing;
using Casewright.Model.Collections;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>Tells of sawn pieces that no part wants any more.</summary>
internal static class SparePieces
{
    /// <summary>One finding a piece.</summary>
    public static ValueList<Finding> Findings(Job job, Casework casework, IEnumerable<SawnAt> spare)
    {
        var parts = casework.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        var words = Words.In(job.Units);
        return [.. spare.Select(s => Of(s, parts.GetValueOrDefault(s.Piece.Part), words))];
    }

    private static Finding Of(SawnAt spare, Part? part, Func<Model.Measure.Length, string> words)
    {
        var piece = spare.Piece;
        var why = part is null ? "its part is not built any more" : $"{part.Id} is now {words(part.Length)} × {words(part.Width)} and made anew";
        return new Finding
        {
            Check = "sawn-spare",
            Severity = Severity.Caution,
            Subject = $"{piece.Id} of {spare.Stock}",
            Message = $"Piece {piece.Id} of {spare.Stock}, {words(piece.Length)} × {words(piece.Width)}, is sawn and no longer wanted: {why}.",
            Formula = "a sawn piece that no way to make its part asks for",
            Source = "The record of what is sawn against the parts as they are now",
            Standing = Standing.Judgement,
            Advice = "Strike out its label and keep it as an offcut; the plan cuts from it where that saves stock.",
        };
    }
}

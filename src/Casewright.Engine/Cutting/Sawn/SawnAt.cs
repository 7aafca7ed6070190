using Casewright.Engine.Splicing.Options;
using Casewright.Model.Cutting;
using Casewright.Model.Parts;
using Casewright.Model.Stock;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>A sawn piece and the sheet or board that it lies on.</summary>
/// <param name="Stock">Id of the sheet or board.</param>
/// <param name="FromBoard">Whether that is a board.</param>
/// <param name="Piece">The piece.</param>
internal sealed record SawnAt(string Stock, bool FromBoard, SawnPiece Piece)
{
    /// <summary>Whether it is what an option of the part asks for, the grain running the right way.</summary>
    public bool Serves(Part part, PieceCut cut, Material material)
    {
        var grainMatters = !FromBoard && material.HasGrain && part.Grain != Grain.None;
        return !Piece.Lost
            && Piece.From == cut.From && Piece.To == cut.To && Piece.AllowanceStart == cut.AllowanceStart && Piece.AllowanceEnd == cut.AllowanceEnd
            && Piece.Width == cut.Width && Piece.Strip == cut.Strip
            && (!grainMatters || Piece.Rotated == (part.Grain == Grain.AlongWidth));
    }

    /// <summary>The same as a piece of the plan.</summary>
    public Piece InPlan => new()
    {
        Id = Piece.Id,
        Part = Piece.Part,
        Stock = Stock,
        FromBoard = FromBoard,
        Length = Piece.Length,
        Width = Piece.Width,
        X = Piece.X,
        Y = Piece.Y,
        Rotated = Piece.Rotated,
        From = Piece.From,
        To = Piece.To,
        AllowanceStart = Piece.AllowanceStart,
        AllowanceEnd = Piece.AllowanceEnd,
        Strip = Piece.Strip,
    };
}

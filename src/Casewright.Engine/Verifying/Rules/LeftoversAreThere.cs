using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// A sheet or board said to be left over is really a panel or length that a sawn one leaves: of that size, in that place, no piece, not
/// lost, named once, with clean edges and free of charge.
/// </summary>
internal sealed class LeftoversAreThere : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) =>
        evidence.Plan.Sheets.Where(sheet => sheet.LeftOver is not null).SelectMany(sheet => Sheet(evidence, sheet, sheet.LeftOver!))
            .Concat(evidence.Plan.Boards.Where(board => board.LeftOver is not null).SelectMany(board => Board(evidence, board, board.LeftOver!)));

    private static IEnumerable<Problem> Sheet(Evidence evidence, SheetLayout sheet, LeftoverPlace place)
    {
        var path = $"sheets[{sheet.Id}].leftOver";
        if (evidence.Plan.Sheets.FirstOrDefault(candidate => candidate.Id == place.Id) is not { Sawn: true } parent)
        {
            yield return new(path, "Nothing is sawn that could leave this over.", place.Id, "the id of a sheet that is sawn");
            yield break;
        }

        var area = new Rectangle(place.X, place.Y, place.X + sheet.Length, place.Y + sheet.Width);
        var taken = evidence.PiecesOn(parent).Select(Rectangle.Of).Concat(evidence.LostOn(parent)).Contains(area);
        var usable = Rectangle.Usable(parent);
        if (taken || !evidence.Simulation(parent).Panels.Any(panel => panel.Area.Within(usable) == area))
            yield return new(path, "The sawn sheet leaves no such panel.", $"{area} of {parent.Id}", "a panel that is no piece and not lost");
        if (evidence.Plan.Sheets.Count(other => other.LeftOver == place) > 1)
            yield return new(path, "Two sheets are cut from one panel.", $"{place.Id} at {place.X}, {place.Y}", "each panel once");
        if ((sheet.Stock, sheet.Material) != (parent.Stock, parent.Material))
            yield return new(path, "The panel is of another stock.", sheet.Stock, parent.Stock);
        var saw = evidence.Job.Shop.Saw;
        if (sheet.Cost != 0 || sheet.Bought)
            yield return new($"sheets[{sheet.Id}].cost", "What is left over costs nothing more.", $"{sheet.Cost}", "0, not bought");
        if (sheet.Trim != Length.Zero)
            yield return new($"sheets[{sheet.Id}].trim", "The edges of a panel left over are clean.", $"{sheet.Trim}", "no trim");
        if (!sheet.Sawn && sheet.Kerf != saw.Kerf)
            yield return new($"sheets[{sheet.Id}].kerf", "The kerf is not the saw's.", $"{sheet.Kerf}", $"{saw.Kerf}");
        if (!sheet.Sawn && !evidence.PiecesOn(sheet).Any())
            yield return new($"sheets[{sheet.Id}]", "Nothing is cut from this panel.", "no piece", "at least one");
    }

    private static IEnumerable<Problem> Board(Evidence evidence, BoardLayout board, LeftoverPlace place)
    {
        var path = $"boards[{board.Id}].leftOver";
        if (evidence.Plan.Boards.FirstOrDefault(candidate => candidate.Id == place.Id) is not { Sawn: true } parent)
        {
            yield return new(path, "Nothing is sawn that could leave this over.", place.Id, "the id of a board that is sawn");
            yield break;
        }

        var taken = evidence.PiecesOn(parent).Select(piece => piece.X).Concat(evidence.Lost(parent.Id, fromBoard: true).Select(lost => lost.X)).Contains(place.X);
        if (taken || !BoardsAreCut.Lengths(parent).Contains((place.X, place.X + board.Length)))
            yield return new(path, "The sawn board leaves no such length.", $"{board.Length} at {place.X} of {parent.Id}", "a length that is no piece and not lost");
        if (evidence.Plan.Boards.Count(other => other.LeftOver == place) > 1)
            yield return new(path, "Two boards are cut from one length.", $"{place.Id} at {place.X}", "each length once");
        if ((board.Stock, board.Material) != (parent.Stock, parent.Material))
            yield return new(path, "The length is of another stock.", board.Stock, parent.Stock);
        var saw = evidence.Job.Shop.Saw;
        if (board.Cost != 0 || board.Bought)
            yield return new($"boards[{board.Id}].cost", "What is left over costs nothing more.", $"{board.Cost}", "0, not bought");
        if (!board.Sawn && (board.Kerf, board.Trim) != (saw.Kerf, saw.BoardEndTrim))
            yield return new($"boards[{board.Id}].kerf", "Kerf and end trim are not the saw's.", $"{board.Kerf}, {board.Trim}", $"{saw.Kerf}, {saw.BoardEndTrim}");
        if (!board.Sawn && !evidence.PiecesOn(board).Any())
            yield return new($"boards[{board.Id}]", "Nothing is cut from this length.", "no piece", "at least one");
    }
}

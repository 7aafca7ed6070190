using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Verifying;

/// <summary>A plan laid out for proving: every record found by its id, every part with its pieces and joints.</summary>
/// <remarks>Built also for plans whose ids clash or point nowhere; the first of alike ids is taken.</remarks>
internal sealed class Evidence
{
    private readonly Dictionary<string, Part> _parts;
    private readonly Dictionary<string, Run> _runs;
    private readonly Dictionary<string, Material> _materials;
    private readonly Dictionary<string, CaseBox> _cases;
    private readonly ILookup<string, Piece> _piecesByPart;
    private readonly ILookup<string, Piece> _piecesByStock;
    private readonly ILookup<string, Splice> _splicesByPart;
    private readonly Dictionary<SheetLayout, SheetSimulation> _simulations = new(ReferenceEqualityComparer.Instance);

    public Evidence(Job job, Casework casework, CutPlan plan)
    {
        Job = job;
        Casework = casework;
        Plan = plan;
        _parts = First(casework.Parts, part => part.Id);
        _runs = First(job.Runs, run => run.Id);
        _materials = First(job.Stock.Materials, material => material.Id);
        _cases = First(casework.Cases, box => box.Id);
        _piecesByPart = plan.Pieces.ToLookup(piece => piece.Part, StringComparer.Ordinal);
        _piecesByStock = plan.Pieces.ToLookup(piece => Place(piece.Stock, piece.FromBoard), StringComparer.Ordinal);
        _splicesByPart = plan.Splices.ToLookup(splice => splice.Part, StringComparer.Ordinal);
    }

    public Job Job { get; }

    public Casework Casework { get; }

    public CutPlan Plan { get; }

    public Part? Part(string id) => _parts.GetValueOrDefault(id);

    public Run? Run(string id) => _runs.GetValueOrDefault(id);

    public CaseBox? Case(string id) => _cases.GetValueOrDefault(id);

    public Material? Material(string id) => _materials.GetValueOrDefault(id);

    /// <summary>Pieces of a part: strip by strip, from its reference end.</summary>
    public IReadOnlyList<Piece> PiecesOf(Part part) => [.. _piecesByPart[part.Id].OrderBy(piece => piece.Strip).ThenBy(piece => piece.From)];

    /// <summary>Joints of a part from its reference end.</summary>
    public IReadOnlyList<Splice> SplicesOf(Part part) => [.. _splicesByPart[part.Id].OrderBy(splice => splice.Position)];

    /// <summary>Pieces cut from a sheet, in the order of the plan.</summary>
    public IEnumerable<Piece> PiecesOn(SheetLayout sheet) => _piecesByStock[Place(sheet.Id, fromBoard: false)];

    /// <summary>Pieces cut from a board, in the order of the plan.</summary>
    public IEnumerable<Piece> PiecesOn(BoardLayout board) => _piecesByStock[Place(board.Id, fromBoard: true)];

    /// <summary>Pieces of a sawn sheet or board that are spoiled or gone.</summary>
    public IEnumerable<SawnPiece> Lost(string stock, bool fromBoard)
    {
        var pieces = fromBoard
            ? Job.Sawn?.Boards.FirstOrDefault(board => board.Id == stock)?.Pieces
            : Job.Sawn?.Sheets.FirstOrDefault(sheet => sheet.Id == stock)?.Pieces;
        return (pieces ?? []).Where(piece => piece.Lost);
    }

    /// <summary>Where the lost pieces of a sheet lay.</summary>
    public IEnumerable<Rectangle> LostOn(SheetLayout sheet) => Lost(sheet.Id, fromBoard: false).Select(lost => Rectangle.Of(lost.X, lost.Y, lost.Length, lost.Width, lost.Rotated));

    /// <summary>Every splice with its part.</summary>
    public IEnumerable<(Splice Splice, Part Part)> Joints() =>
        from splice in Plan.Splices
        let part = Part(splice.Part)
        where part is not null
        select (splice, part);

    /// <summary>The sheet after its cuts have been made in order.</summary>
    public SheetSimulation Simulation(SheetLayout sheet)
    {
        if (!_simulations.TryGetValue(sheet, out var simulation))
            _simulations.Add(sheet, simulation = SheetSimulation.Of(sheet));
        return simulation;
    }

    private static string Place(string id, bool fromBoard) => (fromBoard ? "board " : "sheet ") + id;

    private static Dictionary<string, T> First<T>(IEnumerable<T> items, Func<T, string> id)
    {
        var found = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var item in items)
            found.TryAdd(id(item), item);
        return found;
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Splices;
using Casewright.Model.Stock;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>A plan with its cross references looked up once, for the documents.</summary>
public sealed class PlanIndex
{
    private readonly Dictionary<string, Part> _parts;
    private readonly Dictionary<string, Material> _materials;
    private readonly ILookup<string, Piece> _piecesOfPart;
    private readonly ILookup<string, Piece> _piecesOfStock;
    private readonly ILookup<string, Splice> _splicesOfPart;
    private readonly Dictionary<string, CaseBox> _cases;

    /// <summary>Indexes a plan.</summary>
    public PlanIndex(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        Figures = new(plan.Job.Units);
        _parts = plan.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        _materials = plan.Job.Stock.Materials.ToDictionary(material => material.Id, StringComparer.Ordinal);
        _cases = plan.Cases.ToDictionary(box => box.Id, StringComparer.Ordinal);
        _piecesOfPart = plan.Cutting.Pieces.ToLookup(piece => piece.Part, StringComparer.Ordinal);
        _piecesOfStock = plan.Cutting.Pieces.ToLookup(piece => piece.Stock, StringComparer.Ordinal);
        _splicesOfPart = plan.Cutting.Splices.ToLookup(splice => splice.Part, StringComparer.Ordinal);
        Marked = plan.Findings.Where(finding => finding.Severity is Severity.Stop or Severity.Caution)
            .OrderByDescending(finding => finding.Severity).Select((finding, i) => new MarkedFinding(i + 1, finding)).ToValueList();
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Writes lengths in the job's units.</summary>
    public Figures Figures { get; }

    /// <summary>Stops, then cautions, with the numbers they have on every paper.</summary>
    public ValueList<MarkedFinding> Marked { get; }

    /// <summary>The part with this id.</summary>
    public Part Part(string id) => _parts[id];

    /// <summary>The part with this id, or null.</summary>
    public Part? FindPart(string id) => _parts.GetValueOrDefault(id);

    /// <summary>The case with this id, or null.</summary>
    public CaseBox? FindCase(string id) => _cases.GetValueOrDefault(id);

    /// <summary>The material with this id.</summary>
    public Material Material(string id) => _materials[id];

    /// <summary>Pieces of a part, from the reference end.</summary>
    public IReadOnlyList<Piece> PiecesOf(Part part) => [.. _piecesOfPart[part.Id].OrderBy(piece => piece.Strip).ThenBy(piece => piece.From)];

    /// <summary>Pieces cut from a sheet or board, in reading order of the layout.</summary>
    public IReadOnlyList<Piece> PiecesFrom(string layout) => [.. _piecesOfStock[layout].OrderBy(piece => piece.Y).ThenBy(piece => piece.X)];

    /// <summary>Splices of a part, from the reference end.</summary>
    public IReadOnlyList<Splice> SplicesOf(Part part) => [.. _splicesOfPart[part.Id].OrderBy(splice => splice.Position)];

    /// <summary>Size of the sheets of a stock as a shop says it: the longer side first.</summary>
    public string SheetName(SheetLayout layout) => $"{Material(layout.Material).Name}, {Figures.Size(layout.Length, layout.Width)}";

    /// <summary>Pair letter of the joint at the start or end of a piece; empty at an outer end.</summary>
    public string PairLetters(Piece piece) => string.Join(
        ' ', _splicesOfPart[piece.Part].Where(splice => splice.Position == piece.From || splice.Position == piece.To).OrderBy(splice => splice.Position)
            .Select(splice => splice.PairLetter).Where(letter => letter.Length > 0).Distinct(StringComparer.Ordinal));
}

/// <summary>A stop or caution with its number on the papers.</summary>
public sealed record MarkedFinding(int Number, Finding Finding);

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
            .GroupBy(finding => (finding.Severity, finding.Check)).OrderByDescending(group => group.Key.Severity)
            .Select((group, i) => new MarkedFinding(i + 1, group.ToValueList())).ToValueList();
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>Writes lengths in the job's units.</summary>
    public Figures Figures { get; }

    /// <summary>Stops, then cautions, those of one check together, with the numbers they have on every paper.</summary>
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

    /// <summary>The code that a piece goes by in the shop: its part's when the part is one piece.</summary>
    public string CodeOf(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return _piecesOfPart[piece.Part].Count() == 1 ? piece.Part : piece.Id;
    }

    /// <summary>Pair letter of the joint at the start or end of a piece; empty at an outer end.</summary>
    public string PairLetters(Piece piece) => string.Join(
        ' ', _splicesOfPart[piece.Part].Where(splice => splice.Position == piece.From || splice.Position == piece.To).OrderBy(splice => splice.Position)
            .Select(splice => splice.PairLetter).Where(letter => letter.Length > 0).Distinct(StringComparer.Ordinal));
}

/// <summary>Stops or cautions of one check with their number on the papers.</summary>
public sealed record MarkedFinding(int Number, ValueList<Finding> Findings)
{
    /// <summary>How grave they are.</summary>
    public Severity Severity => Findings[0].Severity;

    /// <summary>The one farthest beyond its limit; the first when none has a number.</summary>
    public Finding Worst => Findings.MaxBy(Excess)!;

    /// <summary>The subject of the worst, and how many others there are.</summary>
    public string Subjects => Findings.Count == 1 ? Worst.Subject : $"{Worst.Subject} and {Words.Count(Findings.Count - 1, "other", "others")}";

    private static double Excess(Finding finding) =>
        finding is { Value: { } value, Limit: { } limit } && value != 0 && limit != 0 ? Math.Abs(Math.Log(Math.Abs(value / limit))) : 0;
}

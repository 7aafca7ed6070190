using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Timeline.Gluing;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Stock;
using Casewright.Model.Timeline;

namespace Casewright.Engine.Timeline.Work;

/// <summary>What the tasks are derived from, with the look-ups that several stages of the work share.</summary>
internal sealed class WorkContext
{
    /// <summary>Cases that go through assembly, finishing and delivery together when floor does not say fewer (our judgement).</summary>
    private const int MostCasesInLot = 8;

    private readonly Dictionary<string, Material> _materials;
    private readonly Dictionary<string, int> _lotOfCase;
    private readonly Dictionary<string, int> _lastLotOfRun;

    public WorkContext(Job job, Casework casework, CutPlan cutting, DateOnly start, GlueTimes glue)
    {
        (Job, Casework, Cutting, Start, Glue) = (job, casework, cutting, start, glue);
        _materials = job.Stock.Materials.ToDictionary(m => m.Id, StringComparer.Ordinal);
        var size = Math.Max(1, Math.Min(job.Shop.FloorPlaces ?? MostCasesInLot, MostCasesInLot));
        Lots = [.. casework.Cases.Chunk(size).Select(c => new CaseLot(c))];
        _lotOfCase = Lots.SelectMany((lot, i) => lot.Cases.Select(c => (c.Id, Lot: i))).ToDictionary(x => x.Id, x => x.Lot, StringComparer.Ordinal);
        _lastLotOfRun = casework.Cases.GroupBy(c => c.Run, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Max(c => _lotOfCase[c.Id]), StringComparer.Ordinal);
        PartsByLot = casework.Parts.ToLookup(LotOf);
        var lots = casework.Parts.ToDictionary(p => p.Id, LotOf, StringComparer.Ordinal);
        Deliveries = new(job.Stock, cutting);
        Portions = new(cutting, id => lots.GetValueOrDefault(id), Deliveries.Of);
    }

    public Job Job { get; }

    public Casework Casework { get; }

    public CutPlan Cutting { get; }

    public DateOnly Start { get; }

    public GlueTimes Glue { get; }

    public StandardTimes Times => Job.Shop.Times;

    public IReadOnlyList<CaseLot> Lots { get; }

    public ILookup<int, Part> PartsByLot { get; }

    public Deliveries Deliveries { get; }

    public SawPortions Portions { get; }

    public Material Material(string id) => _materials[id];

    /// <summary>Lot that a part goes with: that of its case, or the last one of its run.</summary>
    public int LotOf(Part part) => _lotOfCase.TryGetValue(part.Case, out var lot) ? lot : _lastLotOfRun.GetValueOrDefault(part.Run);

    public int LotOf(CaseBox box) => _lotOfCase[box.Id];

    public IEnumerable<Part> PartsOf(CaseBox box) => Casework.Parts.Where(p => p.Case == box.Id);

    /// <summary>Saw tasks after which parts are there.</summary>
    public IEnumerable<string> Sawn(IEnumerable<Part> parts) => parts.SelectMany(Portions.Tasks).Distinct(StringComparer.Ordinal);

    /// <summary>Mass of a part in kg.</summary>
    public double Mass(Part part) => part.Length.Metres * part.Width.Metres * part.Thickness.Metres * MaterialTable.For(Material(part.Material)).Density;

    public double SheetMass(string material, Length length, Length width)
    {
        var stuff = Material(material);
        return length.Metres * width.Metres * stuff.Thickness.Metres * MaterialTable.For(stuff).Density;
    }

    /// <summary>Hands that a case takes when it is assembled, moved and set: loose shelves are carried apart.</summary>
    public int HandsFor(CaseBox box)
    {
        var mass = PartsOf(box).Where(p => p.Role is not PartRole.AdjustableShelf).Sum(Mass);
        var longest = Length.Max(Length.Max(box.Width, box.Height), box.Depth);
        return mass > Job.Shop.Checks.CaseForOne || longest > Job.Shop.Checks.PieceForOne ? 2 : 1;
    }

    /// <summary>A quantity of an operation at the shop's time.</summary>
    public WorkQuantity Work(Operation operation, decimal quantity, decimal factor = 1) => new(operation, quantity, Times.Minutes(operation) * factor);

    /// <summary>Metres as a decimal, exact.</summary>
    public static decimal Metres(Length length) => length.Nanometres / 1_000_000_000m;

    /// <summary>Square metres of one face of a part.</summary>
    public static decimal Area(Part part) => Metres(part.Length) * Metres(part.Width);
}

/// <summary>Cases that go through the shop together.</summary>
internal sealed record CaseLot(IReadOnlyList<CaseBox> Cases);

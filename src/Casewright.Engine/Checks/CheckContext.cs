using Casewright.Engine.Checks.Materials;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks;

/// <summary>A plan as the checks look at it, with the look-ups they share.</summary>
public sealed class CheckContext
{
    private readonly Dictionary<string, Part> _parts;
    private readonly Dictionary<string, CaseBox> _cases;
    private readonly Dictionary<string, Run> _runs;
    private readonly ILookup<string, Part> _partsOfCase;
    private readonly ILookup<string, Part> _partsOfRun;
    private readonly ILookup<string, Splice> _splicesOfPart;

    /// <summary>Looks at a plan; <paramref name="plan"/> is null before cutting.</summary>
    public CheckContext(Job job, Casework casework, CutPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        Job = job;
        Casework = casework;
        Plan = plan;
        _parts = casework.Parts.ToDictionary(p => p.Id, StringComparer.Ordinal);
        _cases = casework.Cases.ToDictionary(c => c.Id, StringComparer.Ordinal);
        _runs = job.Runs.ToDictionary(r => r.Id, StringComparer.Ordinal);
        _partsOfCase = casework.Parts.ToLookup(p => p.Case, StringComparer.Ordinal);
        _partsOfRun = casework.Parts.ToLookup(p => p.Run, StringComparer.Ordinal);
        _splicesOfPart = Splices.ToLookup(s => s.Part, StringComparer.Ordinal);
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>Cases and parts.</summary>
    public Casework Casework { get; }

    /// <summary>What is cut from what; null before cutting.</summary>
    public CutPlan? Plan { get; }

    /// <summary>The shop's limits.</summary>
    public CheckLimits Limits => Job.Shop.Checks;

    /// <summary>Every part, in the casework's order.</summary>
    public ValueList<Part> Parts => Casework.Parts;

    /// <summary>Every case, in the casework's order.</summary>
    public ValueList<CaseBox> Cases => Casework.Cases;

    /// <summary>Cases that are built and carried as one, in the casework's order; a knee space is fitted on site and has no uprights of its own.</summary>
    public IEnumerable<CaseBox> BuiltCases => Cases.Where(c => PartsOf(c).Any(p => p.Role is PartRole.Side or PartRole.Partition));

    /// <summary>Every splice, in the plan's order; none before cutting.</summary>
    public ValueList<Splice> Splices => Plan?.Splices ?? [];

    /// <summary>Parts with one of these roles.</summary>
    public IEnumerable<Part> PartsWith(params PartRole[] roles) => Parts.Where(p => roles.Contains(p.Role));

    /// <summary>Parts of a case.</summary>
    public IEnumerable<Part> PartsOf(CaseBox box) => _partsOfCase[box.Id];

    /// <summary>Parts of a run, those of its cases included.</summary>
    public IEnumerable<Part> PartsOfRun(string run) => _partsOfRun[run];

    /// <summary>Parts built into the same case, or into the same run for parts that span cases.</summary>
    public IEnumerable<Part> Together(Part part) => _partsOfCase[part.Case];

    /// <summary>The part with this id; null when there is none.</summary>
    public Part? Part(string? id) => id is not null && _parts.TryGetValue(id, out var part) ? part : null;

    /// <summary>The case with this id; null when there is none.</summary>
    public CaseBox? Case(string id) => _cases.GetValueOrDefault(id);

    /// <summary>The run with this id; null when there is none.</summary>
    public Run? Run(string id) => _runs.GetValueOrDefault(id);

    /// <summary>Splices of a part.</summary>
    public IEnumerable<Splice> SplicesOf(Part part) => _splicesOfPart[part.Id];

    /// <summary>Material of a part.</summary>
    public Material Material(Part part) => Job.Stock.Material(part.Material);

    /// <summary>Engineering figures of a part's material at the part's own thickness.</summary>
    public MaterialFigures Figures(Part part) => MaterialTable.For(Material(part) with { Measured = part.Thickness });

    /// <summary>Mass of a part in kg: volume × density; what a slope cuts off its blank not counted.</summary>
    public double Mass(Part part) => PartSolid.AreaOf(part) * part.Thickness.Metres * Figures(part).Density;

    /// <summary>Lengths and loads in the job's unit.</summary>
    public Say Say => new(Job.Units);
}

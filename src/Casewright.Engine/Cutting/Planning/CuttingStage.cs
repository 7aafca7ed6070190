using Casewright.Engine.Cutting.Sawn;
using Casewright.Engine.Splicing;
using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Jobs;
using Casewright.Model.Parts;
using Casewright.Model.Plans;
using Casewright.Model.Shop;

namespace Casewright.Engine.Cutting.Planning;

/// <summary>Cuts a job: decides where overlong parts are spliced together with how sheets and boards are cut, material by material.</summary>
public static class CuttingStage
{
    private const int QuickShare = 10;
    private const int ThoroughTimes = 10;

    /// <summary>Plans the cutting. The same job gives the same plan on every machine.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">What the layout derived from it.</param>
    /// <param name="progress">Is told how each material comes on; may be null.</param>
    /// <param name="effort">How long to search.</param>
    /// <param name="solver">What solves the problems; null for the cutting engine.</param>
    /// <param name="aim">What decides between layouts of one cost; null for what the job says.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The plan, or what keeps the job from being cut and would mend it.</returns>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static Outcome<CutPlan> Plan(
        Job job,
        Casework casework,
        IProgress<CutPlanProgress>? progress = null,
        PlanningEffort effort = PlanningEffort.Usual,
        ICutSolver? solver = null,
        LayoutAim? aim = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(casework);
        var options = SplicingOptions.For(job, casework);
        if (!options.Succeeded)
            return Outcome<CutPlan>.Failed(options.Problems);
        var problems = new List<Problem>();
        var cuts = new List<MaterialCut>();
        var materials = SawnRecord.WithSawn(job, options.Value.Materials);
        var numbers = new LayoutNumbers(job.Sawn);
        var spare = new List<SawnAt>();
        foreach (var (index, demands) in materials.Index())
        {
            cancellation.ThrowIfCancellationRequested();
            var report = progress is null ? null : new Forwarding(progress, demands.Material.Id, index + 1, materials.Count);
            var search = new Search(solver ?? new CutSolver(), Work(effort), aim ?? AimOf(job), report, cancellation);
            var sawn = new SawnMaterial(job, demands);
            var (cut, obstacles) = Cut(job, sawn, search, numbers);
            problems.AddRange(obstacles.Select(new ObstacleProblems(job, demands).Of));
            spare.AddRange(sawn.Spare);
            if (obstacles.Count == 0)
                cuts.Add(sawn.Joined(cut));
            numbers = numbers.After(cut);
        }

        return problems.Count == 0
            ? Outcome<CutPlan>.Of(Whole(job, casework, cuts, SparePieces.Findings(job, casework, spare)))
            : Outcome<CutPlan>.Failed(problems.Distinct());
    }

    /// <summary>Plans of one cost and one number of sheets, but of different character, that of the job first; one alone where there is no other.</summary>
    /// <param name="job">The job.</param>
    /// <param name="casework">What the layout derived from it.</param>
    /// <param name="effort">How long to search.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was cancelled.</exception>
    public static Outcome<ValueList<CutAlternative>> Alternatives(
        Job job, Casework casework, PlanningEffort effort = PlanningEffort.Usual, CancellationToken cancellation = default)
    {
        var plans = new List<CutAlternative>();
        foreach (var aim in new[] { LayoutAim.FewestSettings, LayoutAim.LargestOffcut }.OrderBy(a => a == AimOf(job) ? 0 : 1))
        {
            var outcome = Plan(job, casework, effort: effort, aim: aim, cancellation: cancellation);
            if (!outcome.Succeeded)
                return Outcome<ValueList<CutAlternative>>.Failed(outcome.Problems);
            var plan = outcome.Value;
            if (plans.TrueForAll(p => !p.Plan.Sheets.Equals(plan.Sheets) && p.Plan.Bounds.Cost == plan.Bounds.Cost && p.Plan.Bounds.Sheets == plan.Bounds.Sheets))
                plans.Add(new CutAlternative(aim, plan));
        }

        return Outcome<ValueList<CutAlternative>>.Of(plans.ToValueList());
    }

    private static LayoutAim AimOf(Job job) => job.Shop.Saw.Aim == SheetAim.LargestOffcut ? LayoutAim.LargestOffcut : LayoutAim.FewestSettings;

    private static (MaterialCut? Cut, ValueList<CuttingObstacle> Obstacles) Cut(Job job, SawnMaterial sawn, Search search, LayoutNumbers numbers)
    {
        var demands = sawn.Rest;
        if (demands.Demands.Count == 0)
            return (null, []);
        return demands.Material.IsBoard
            ? CutBoards(new BoardBridge(job, demands, sawn), search, numbers.Board)
            : CutSheets(new SheetBridge(job, demands, sawn), search, numbers.Sheet);
    }

    private static (MaterialCut? Cut, ValueList<CuttingObstacle> Obstacles) CutSheets(SheetBridge bridge, Search search, int number)
    {
        var outcome = search.Solver.Solve(bridge.Problem(search.Work) with { Aim = search.Aim }, search.Report, search.Cancellation);
        return (outcome.Solution is { } solution ? bridge.Read(solution, number) : null, outcome.Obstacles);
    }

    private static (MaterialCut? Cut, ValueList<CuttingObstacle> Obstacles) CutBoards(BoardBridge bridge, Search search, int number)
    {
        var outcome = search.Solver.Solve(bridge.Problem(search.Work), search.Report, search.Cancellation);
        return (outcome.Solution is { } solution ? bridge.Read(solution, number) : null, outcome.Obstacles);
    }

    private static long Work(PlanningEffort effort) => effort switch
    {
        PlanningEffort.Quick => CuttingProblem.UsualWork / QuickShare,
        PlanningEffort.Thorough => CuttingProblem.UsualWork * ThoroughTimes,
        _ => CuttingProblem.UsualWork,
    };

    private static CutPlan Whole(Job job, Casework casework, List<MaterialCut> cuts, ValueList<Finding> noticed)
    {
        var order = casework.Parts.Index().ToDictionary(p => p.Item.Id, p => p.Index, StringComparer.Ordinal);
        var splices = SpliceLayout.Of(job, casework, cuts.SelectMany(c => c.Parts).OrderBy(p => order[p.Part.Id]));
        return new CutPlan
        {
            Pieces = [.. cuts.SelectMany(c => c.Pieces).OrderBy(p => order[p.Part]).ThenBy(p => p.Strip).ThenBy(p => p.From)],
            Splices = splices.Splices,
            Sheets = [.. cuts.SelectMany(c => c.Sheets)],
            Boards = [.. cuts.SelectMany(c => c.Boards)],
            Bounds = Sum(cuts),
            Materials = [.. cuts.Select(c => c.Bounds)],
            Findings = [.. splices.Findings, .. noticed],
        };
    }

    /// <summary>Cost counts sheets, boards and joints; numbers count sheets alone.</summary>
    private static CutBounds Sum(List<MaterialCut> cuts)
    {
        var sheets = cuts.Where(c => c.Boards.Count == 0).Select(c => c.Bounds.Bounds).ToArray();
        var (cost, bound) = (cuts.Sum(c => c.Bounds.Bounds.Cost), cuts.Sum(c => c.Bounds.Bounds.LowerBound));
        return new CutBounds
        {
            Cost = cost,
            LowerBound = bound,
            Sheets = sheets.Sum(b => b.Sheets),
            SheetsLowerBound = sheets.Sum(b => b.SheetsLowerBound),
            Proven = cost == bound,
        };
    }

    private sealed record Search(ICutSolver Solver, long Work, LayoutAim Aim, ICuttingProgress? Report, CancellationToken Cancellation);

    private sealed class Forwarding(IProgress<CutPlanProgress> progress, string material, int number, int of) : ICuttingProgress
    {
        public void Report(CuttingProgress search) => progress.Report(new CutPlanProgress(material, number, of, search));
    }
}

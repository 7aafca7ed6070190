using System.Globalization;
using Casewright.App.Web.Sessions;
using Casewright.Model.Cutting;
using Casewright.Model.Findings;
using Casewright.Model.Plans;
using Casewright.Model.Pricing;
using Casewright.Model.Timeline;

namespace Casewright.App.Web;

/// <summary>A figure of the foot line, and where it comes from.</summary>
/// <param name="Key">Stays while the figure changes.</param>
/// <param name="Value">The figure.</param>
/// <param name="Name">What it counts.</param>
/// <param name="Note">What is proven of it, or what it holds.</param>
/// <param name="Formula">How it is worked out.</param>
/// <param name="Inputs">What went in.</param>
/// <param name="Source">Where formula and inputs stand.</param>
/// <param name="Step">The step that tells more.</param>
public sealed record FootFigure(string Key, string Value, string Name, string Note, string Formula, IReadOnlyList<(string Name, string Value)> Inputs, string Source, string Step);

/// <summary>What the job comes to: the figures of the foot line.</summary>
public static class FootFigures
{
    /// <summary>The figures of a plan; none for a stage that the plan lacks.</summary>
    public static IEnumerable<FootFigure> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var tally = Tally.Of(plan);
        yield return Sheets(plan, tally);
        yield return Splices(plan, tally);
        if (plan.Schedule is { } schedule)
        {
            yield return Work(plan, schedule);
            yield return Ready(schedule);
        }

        if (plan.Estimate is { } estimate)
            yield return Price(estimate);
        else
            yield return Stock(plan, tally);
        yield return Findings(plan, tally);
    }

    private static FootFigure Sheets(Plan plan, Tally tally) => new(
        "sheets", Number(tally.Sheets), tally.Sheets == 1 ? "sheet" : "sheets", tally.SheetWords,
        "sheets of all materials; the bound holds for every layout of this stock under these saw and splice rules",
        [.. plan.Cutting.Materials.Where(m => !plan.Job.Stock.Materials.Any(s => s.Id == m.Material && s.IsBoard)).Select(m => (MaterialName(plan, m.Material), Bound(m.Bounds)))],
        "column generation over layouts and splice options together; the plan is proven anew by code that knows nothing of it", "cut");

    private static FootFigure Splices(Plan plan, Tally tally) => new(
        "splices", Number(tally.Splices), tally.Splices == 1 ? "splice" : "splices", tally.Splices == 0 ? "every part is whole" : tally.SightLines switch { 0 => "no sight line", 1 => "one sight line", var lines => $"{lines} sight lines" },
        "joints inside parts that outrun the stock",
        [.. plan.Cutting.Splices.GroupBy(s => s.Method).OrderBy(g => g.Key).Select(g => (SpliceWords.Method(g.Key), Number(g.Count())))],
        "chosen together with the sheets: what a joint costs in work against what it saves in sheets", "cut");

    private static FootFigure Work(Plan plan, Schedule schedule) => new(
        "work", Shown.Hours(schedule.WorkMinutes), "work", plan.Job.Shop.People.Count == 1 ? "one person" : $"{plan.Job.Shop.People.Count} people",
        "sum over tasks of quantity × standard time, every pair of hands counted",
        [.. schedule.Tasks.GroupBy(t => t.Phase).OrderBy(g => g.Key).Select(g => (Phase(g.Key), Shown.Hours((int)g.Sum(t => t.Work.Sum(w => w.Quantity * w.Minutes)))))],
        "standard times of the shop, shop.times in the job file", "timetable");

    private static FootFigure Ready(Schedule schedule) => new(
        "ready", schedule.Finish.ToString("d MMM", CultureInfo.InvariantCulture), "ready", schedule.Proven ? "none sooner" : "cure nights counted",
        "end of the last task, with people, stations, clamps, open and cure times kept",
        [
            ("begins", Moment(schedule.Start)), ("ends", Moment(schedule.Finish)), ("no order of the work can end before", Moment(schedule.LowerBound)),
            ("working days", Number(schedule.WorkingDays)), ("station days", schedule.StationDays.ToString("0.#", CultureInfo.InvariantCulture)),
        ],
        "constraint solver; working hours and people of the shop", "timetable");

    private static FootFigure Price(Estimate estimate) => new(
        "price", Shown.Money(estimate.Gross, estimate.Currency), "price", string.Create(CultureInfo.InvariantCulture, $"{estimate.MarginShare * 100:0} % margin"),
        "price = cost + mark-up + contingency + rounding + tax",
        [
            .. Enum.GetValues<CostGroup>().Where(g => estimate.Of(g) != 0).Select(g => (g.ToString().ToLowerInvariant(), Shown.Money(estimate.Of(g), estimate.Currency))),
            ("overhead", Shown.Money(estimate.Overhead, estimate.Currency)), ("mark-up", Shown.Money(estimate.MarkUp, estimate.Currency)),
            ("contingency", Shown.Money(estimate.Contingency, estimate.Currency)), ("tax", Shown.Money(estimate.Tax, estimate.Currency)),
        ],
        "prices of the stock and rates of the shop, shop.prices in the job file", "money");

    private static FootFigure Stock(Plan plan, Tally tally) => new(
        "stock", Shown.Money(tally.Material, plan.Job.Currency), "stock", $"{tally.Boards} boards", "price × number bought, sheets and boards on hand cost nothing",
        [.. plan.Cutting.Sheets.Where(s => s is { Bought: true, Sawn: false }).GroupBy(s => s.Stock, StringComparer.Ordinal).Select(g => ($"{g.Count()} × {g.Key}", Shown.Money(g.Sum(s => s.Cost), plan.Job.Currency)))],
        "prices of the stock in the job file", "money");

    private static FootFigure Findings(Plan plan, Tally tally) => new(
        "findings", Number(tally.Stops > 0 ? tally.Stops : tally.Cautions), tally.Stops > 0 ? (tally.Stops == 1 ? "stop" : "stops") : (tally.Cautions == 1 ? "caution" : "cautions"),
        tally.Stops > 0 ? $"{tally.Cautions} cautions" : "no stop", "checks that found a value past its limit, place by place",
        [.. plan.Findings.Where(f => f.Severity is Severity.Stop or Severity.Caution).GroupBy(f => (f.Severity, f.Check)).Take(12).Select(g => (g.Key.Check.Replace('-', ' '), $"{g.Count()} {(g.Key.Severity == Severity.Stop ? "stop" : "caution")}"))],
        "each check names its formula, inputs and source", "checks");

    private static string Bound(CutBounds bounds) => bounds.Sheets == bounds.SheetsLowerBound
        ? $"{bounds.Sheets}, none fewer possible"
        : $"{bounds.Sheets}, at least {bounds.SheetsLowerBound}{(bounds.Proven ? "; cheapest possible" : "")}";

    private static string MaterialName(Plan plan, string id) => plan.Job.Stock.Materials.FirstOrDefault(m => m.Id == id)?.Name ?? id;

    private static string Phase(WorkPhase phase) => phase switch
    {
        WorkPhase.Breakdown => "sawing",
        WorkPhase.Finishing => "finishing",
        _ => phase.ToString().ToLowerInvariant(),
    };

    private static string Moment(DateTime time) => time.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}

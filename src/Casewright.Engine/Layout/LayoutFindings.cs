using System.Globalization;
using Casewright.Model.Design;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>What the layout alone can notice.</summary>
internal static class LayoutFindings
{
    private const string Practice = "Common practice, no source";

    /// <summary>Findings of a run.</summary>
    public static IReadOnlyList<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases, IReadOnlyList<Part> parts)
    {
        _ = parts;
        return [.. Fillers(run), .. Nailer(run, cases)];
    }

    private static IEnumerable<Finding> Fillers(RunFigures run)
    {
        foreach (var (end, side) in new[] { (run.Left, "left"), (run.Right, "right") })
        {
            if (end.Kind != EndKind.Wall)
                continue;
            var missing = end.Filler == Length.Zero;
            yield return new()
            {
                Check = "filler-at-wall",
                Severity = missing ? Severity.Caution : Severity.Pass,
                Subject = run.Run.Id,
                Message = missing
                    ? $"Run {run.Run.Name} meets the wall on its {side} without a filler."
                    : $"Run {run.Run.Name} meets the wall on its {side} with a filler.",
                Value = (double)end.Filler.Millimetres,
                Unit = "mm",
                Source = Practice,
                Standing = Standing.CommonPractice,
                Advice = missing ? "Give the end a filler of 20 to 40 mm (3/4 to 1 1/2 in), scribed to the wall." : "",
            };
        }
    }

    private static IEnumerable<Finding> Nailer(RunFigures run, IReadOnlyList<CaseFigures> cases)
    {
        var tallest = cases.Max(c => c.YEnd);
        if (run.Run.Nailers is not null || tallest < Nailers.SecondFrom)
            yield break;
        yield return new()
        {
            Check = "nailers",
            Severity = Severity.Caution,
            Subject = run.Run.Id,
            Message = string.Create(CultureInfo.InvariantCulture, $"Run {run.Run.Name} is {tallest.Millimetres:0.#} mm high and has no nailers to fix it to the studs."),
            Source = Practice,
            Standing = Standing.CommonPractice,
            Advice = "Add nailers 75 to 100 mm (3 to 4 in) high, or name another fixing into the structure: an unfixed tall case can tip over.",
        };
    }
}

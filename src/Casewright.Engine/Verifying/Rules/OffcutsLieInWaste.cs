using Casewright.Model.Cutting;
using Casewright.Model.Plans;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>
/// The offcuts kept are exactly the panels that are no piece and are large enough, without edge trim: none invented, none forgotten.
/// Lost pieces are no offcuts, nor are panels from which another sheet of the plan is cut.
/// </summary>
internal sealed class OffcutsLieInWaste : IPlanRule
{
    public IEnumerable<Problem> Check(Evidence evidence) => evidence.Plan.Sheets.SelectMany(sheet => Sheet(evidence, sheet));

    private static IEnumerable<Problem> Sheet(Evidence evidence, SheetLayout sheet)
    {
        var saw = evidence.Job.Shop.Saw;
        var unnamed = Leftovers(evidence, sheet);
        for (var i = 0; i < sheet.Offcuts.Count; i++)
        {
            var place = $"sheets[{sheet.Id}].offcuts[{i + 1}]";
            var kept = Rectangle.Of(sheet.Offcuts[i]);
            if (!unnamed.Remove(kept))
                yield return new(place, "The offcut is not one of the panels left over.", kept.ToString(), "a whole leftover panel, without edge trim, named once");
            if (kept.SizeX < saw.KeepLength || kept.SizeY < saw.KeepWidth)
                yield return new(place, "The offcut is too small to keep.", $"{kept.SizeX} × {kept.SizeY}", $"at least {saw.KeepLength} along the grain × {saw.KeepWidth}");
        }

        foreach (var area in unnamed.Where(area => area.SizeX >= saw.KeepLength && area.SizeY >= saw.KeepWidth))
            yield return new($"sheets[{sheet.Id}].offcuts", "A leftover worth keeping is not listed.", area.ToString(), "an offcut there");
    }

    /// <summary>What lies on the table at the end and is no piece, within the usable area.</summary>
    private static List<Rectangle> Leftovers(Evidence evidence, SheetLayout sheet)
    {
        var usable = Rectangle.Usable(sheet);
        var pieces = evidence.PiecesOn(sheet).Select(Rectangle.Of).Concat(evidence.LostOn(sheet)).ToHashSet();
        var cutUp = evidence.Plan.Sheets.Where(other => other.LeftOver?.Id == sheet.Id).Select(other => (other.LeftOver!.X, other.LeftOver.Y)).ToHashSet();
        return
        [
            .. evidence.Simulation(sheet).Panels
                .Where(panel => !pieces.Contains(panel.Area) && !cutUp.Contains((panel.Area.X0, panel.Area.Y0)))
                .Select(panel => panel.Area.Within(usable))
                .Where(area => !area.IsEmpty),
        ];
    }
}

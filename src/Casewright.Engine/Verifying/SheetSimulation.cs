using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Verifying;

/// <summary>A panel on the saw table.</summary>
/// <param name="Area">Where it lies on the raw sheet.</param>
/// <param name="Stage">Stage of the cut that made it; 0 for the raw sheet and after edge trims.</param>
internal sealed record Panel(Rectangle Area, int Stage);

/// <summary>What one cut does when it is made in its turn.</summary>
/// <param name="Place">Where the cut stands in the plan.</param>
/// <param name="Cut">The cut.</param>
/// <param name="Panel">The panel it divides; null when no panel lies so that the cut runs through it from edge to edge.</param>
/// <param name="Low">What is left on the side of the sheet's origin; empty when the blade takes it all.</param>
/// <param name="High">What is left on the other side; empty when the blade takes it all.</param>
internal sealed record MadeCut(string Place, Cut Cut, Panel? Panel, Rectangle Low, Rectangle High);

/// <summary>The cuts of one sheet made one after another, as a person at the saw would.</summary>
/// <param name="Cuts">What each cut does.</param>
/// <param name="Panels">What lies on the table at the end, in the order it came off.</param>
internal sealed record SheetSimulation(ValueList<MadeCut> Cuts, ValueList<Panel> Panels)
{
    /// <summary>Makes the cuts of a sheet. A cut that finds no panel changes nothing.</summary>
    public static SheetSimulation Of(SheetLayout sheet)
    {
        var table = new List<Panel> { new(Rectangle.Of(sheet), Stage: 0) };
        var made = new List<MadeCut>();
        for (var i = 0; i < sheet.Cuts.Count; i++)
            made.Add(Make($"sheets[{sheet.Id}].cuts[{i + 1}]", sheet.Cuts[i], sheet.Kerf, table));
        return new(made.ToValueList(), table.ToValueList());
    }

    private static MadeCut Make(string place, Cut cut, Length kerf, List<Panel> table)
    {
        var panel = table.Find(candidate => RunsThrough(cut, kerf, candidate.Area));
        if (panel is null)
            return new(place, cut, null, default, default);

        var (low, high) = Divide(panel.Area, cut, kerf);
        table.Remove(panel);
        foreach (var rest in new[] { low, high })
        {
            if (!rest.IsEmpty)
                table.Add(new(rest, cut.Stage));
        }

        return new(place, cut, panel, low, high);
    }

    private static bool RunsThrough(Cut cut, Length kerf, Rectangle panel) => cut.Kind == CutKind.Rip
        ? cut.Y0 == cut.Y1 && cut.X0 == panel.X0 && cut.X1 == panel.X1 && Bites(cut.Y0, kerf, panel.Y0, panel.Y1)
        : cut.X0 == cut.X1 && cut.Y0 == panel.Y0 && cut.Y1 == panel.Y1 && Bites(cut.X0, kerf, panel.X0, panel.X1);

    /// <summary>Whether a blade whose low side runs at <paramref name="line"/> takes wood between two edges.</summary>
    private static bool Bites(Length line, Length kerf, Length low, Length high) => kerf == Length.Zero
        ? low < line && line < high
        : line < high && low < line + kerf;

    private static (Rectangle Low, Rectangle High) Divide(Rectangle panel, Cut cut, Length kerf) => cut.Kind == CutKind.Rip
        ? (panel with { Y1 = cut.Y0 }, panel with { Y0 = cut.Y0 + kerf })
        : (panel with { X1 = cut.X0 }, panel with { X0 = cut.X0 + kerf });
}

using System.Globalization;
using Casewright.Engine.Cutting.Planning;
using Casewright.Model.Cutting;

namespace Casewright.Engine.Cutting.Sawn;

/// <summary>Numbers of the next sheet and board: no sheet gets the id of one that is sawn, since it is written on the pieces.</summary>
internal sealed record LayoutNumbers(int Sheet, int Board)
{
    public LayoutNumbers(SawnWork? sawn)
        : this(Next(sawn?.Sheets.Select(s => s.Id)), Next(sawn?.Boards.Select(b => b.Id)))
    {
    }

    /// <summary>The numbers after those of a material.</summary>
    public LayoutNumbers After(MaterialCut? cut) => new(Sheet + (cut?.Sheets.Count ?? 0), Board + (cut?.Boards.Count ?? 0));

    private static int Next(IEnumerable<string>? ids) =>
        1 + (ids ?? []).Select(id => int.TryParse(id.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).DefaultIfEmpty(0).Max();
}

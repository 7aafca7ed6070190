using Casewright.Model.Cutting;
using Casewright.Model.Parts;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// The sheets of each material in the order in which they are crosscut: delivery by delivery, of each those that the first cases need come
/// first, and so many at a time that the work after the saw need not wait for the last sheet.
/// </summary>
internal sealed class SawPortions
{
    private const int SheetsAtATime = 8;
    private readonly Dictionary<string, IReadOnlyList<IReadOnlyList<SheetLayout>>> _portions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _taskOfLayout = new(StringComparer.Ordinal);
    private readonly ILookup<string, Piece> _pieces;

    /// <summary>Portions of a cut plan.</summary>
    /// <param name="cutting">The plan.</param>
    /// <param name="lotOfPart">Which lot of cases a part goes with, by its id.</param>
    /// <param name="deliveryOf">With which delivery of its material a sheet comes, from 0.</param>
    public SawPortions(CutPlan cutting, Func<string, int> lotOfPart, Func<SheetLayout, int> deliveryOf)
    {
        _pieces = cutting.Pieces.ToLookup(p => p.Part, StringComparer.Ordinal);
        var firstLot = cutting.Pieces.Where(p => !p.FromBoard).GroupBy(p => p.Stock, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Min(p => lotOfPart(p.Part)), StringComparer.Ordinal);
        foreach (var material in cutting.Sheets.GroupBy(s => s.Material, StringComparer.Ordinal))
        {
            var portions = material.GroupBy(deliveryOf).OrderBy(d => d.Key)
                .SelectMany(d => d.OrderBy(s => firstLot.GetValueOrDefault(s.Id)).Chunk(SheetsAtATime))
                .ToList();
            _portions[material.Key] = portions;
            for (var i = 0; i < portions.Count; i++)
            {
                foreach (var sheet in portions[i])
                    _taskOfLayout[sheet.Id] = TaskIds.Crosscut(material.Key, i);
            }
        }

        foreach (var board in cutting.Boards)
            _taskOfLayout[board.Id] = TaskIds.Crosscut(board.Material, 0);
    }

    /// <summary>Portions of a material; none for boards.</summary>
    public IReadOnlyList<IReadOnlyList<SheetLayout>> Of(string material) => _portions.GetValueOrDefault(material, []);

    /// <summary>Ids of the saw tasks after which all pieces of a part are there.</summary>
    public IEnumerable<string> Tasks(Part part) =>
        _pieces[part.Id].Select(p => _taskOfLayout.GetValueOrDefault(p.Stock)).OfType<string>().Distinct(StringComparer.Ordinal);
}

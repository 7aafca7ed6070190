using Casewright.Model.Cutting;
using Casewright.Model.Stock;

namespace Casewright.Engine.Timeline.Work;

/// <summary>
/// Deliveries of each material's sheets: what is bought with one lead time comes together, and is sawn without waiting for what comes later.
/// What is in the rack is sawn with the first delivery, since a setting of the fence for it alone is not worth the time.
/// </summary>
internal sealed class Deliveries
{
    private readonly Dictionary<string, int> _ofStock = new(StringComparer.Ordinal);

    public Deliveries(StockRoom stock, CutPlan cutting)
    {
        var leads = stock.Sheets.ToDictionary(s => s.Id, s => s.LeadDays, StringComparer.Ordinal);
        foreach (var material in cutting.Sheets.GroupBy(s => s.Material, StringComparer.Ordinal))
        {
            var bought = material.Where(s => s.Bought).Select(s => s.Stock).Distinct(StringComparer.Ordinal).ToDictionary(s => s, s => leads.GetValueOrDefault(s), StringComparer.Ordinal);
            var days = bought.Values.Distinct().Order().ToList();
            foreach (var id in material.Select(s => s.Stock).Distinct(StringComparer.Ordinal))
                _ofStock[id] = bought.TryGetValue(id, out var lead) ? days.IndexOf(lead) : 0;
        }
    }

    /// <summary>With which delivery of its material a sheet comes, from 0.</summary>
    public int Of(SheetLayout sheet) => _ofStock[sheet.Stock];
}

using Casewright.Model.Shop;

namespace Casewright.Model.Cutting;

/// <summary>What one of several sets of layouts of equal cost asks of the saw and leaves for the rack.</summary>
/// <param name="Aim">What it is best at.</param>
/// <param name="Settings">Fence and stop settings over all sheets still to be cut: each direction and size once for a material.</param>
/// <param name="Cuts">Cuts over all these sheets, edge trims not counted.</param>
/// <param name="Largest">The largest offcut kept; null when none is worth keeping.</param>
/// <param name="Kept">How many offcuts are kept.</param>
/// <param name="KeptArea">Their area together, in m².</param>
/// <param name="Chosen">Whether it is the one that the plan follows.</param>
public sealed record LayoutChoice(SheetAim Aim, int Settings, int Cuts, KeptOffcut? Largest, int Kept, decimal KeptArea, bool Chosen)
{
    /// <summary>The figures of a plan.</summary>
    public static LayoutChoice Of(CutPlan plan, SheetAim aim, bool chosen)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var sheets = plan.Sheets.Where(s => !s.Sawn).ToList();
        var cuts = sheets.SelectMany(s => s.Cuts.Where(c => c.Stage > 0).Select(c => (s.Material, c.Kind, c.Setting))).ToList();
        var offcuts = sheets.SelectMany(s => s.Offcuts).ToList();
        return new(aim, cuts.Distinct().Count(), cuts.Count, offcuts.OrderByDescending(Area).FirstOrDefault(), offcuts.Count, offcuts.Sum(Area), chosen);
    }

    /// <summary>Whether it is better than another at what it aims at: fewer settings, then fewer cuts; or a larger offcut, then more kept in all.</summary>
    public bool BeatsAtItsAim(LayoutChoice other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Aim == SheetAim.FewestSettings
            ? (Settings, Cuts).CompareTo((other.Settings, other.Cuts)) < 0
            : (Area(Largest), KeptArea).CompareTo((Area(other.Largest), other.KeptArea)) > 0;
    }

    private static decimal Area(KeptOffcut? offcut) => offcut is null ? 0 : offcut.Length.Millimetres * offcut.Width.Millimetres / 1_000_000;
}

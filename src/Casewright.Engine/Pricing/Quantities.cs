using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Cutting;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Pricing;

namespace Casewright.Engine.Pricing;

/// <summary>What is counted and measured from a plan for its price.</summary>
internal static class Quantities
{
    private const int PinsPerShelf = 4;

    /// <summary>Screws at each place where cases stand side by side: above and below, front and back (common practice, no source).</summary>
    private const int ScrewsPerNeighbour = 4;

    // Millilitres of glue (common practice, no source).
    private const decimal GluePerSplice = 20;
    private const decimal GluePerPanelEnd = 10;
    private const decimal GluePerNosingMetre = 15;

    /// <summary>Hardware of a kind, with how it was counted.</summary>
    public static (int Count, string Why) Hardware(HardwareKind kind, Job job, Casework casework, CutPlan cutting) => kind switch
    {
        HardwareKind.ShelfPin => Times(casework.Parts.Count(p => p.Role == PartRole.AdjustableShelf), PinsPerShelf, "loose shelves"),
        HardwareKind.LooseTenon => (cutting.Splices.Sum(s => s.Tenons.Count), $"tenons of {cutting.Splices.Count} splices"),
        HardwareKind.DrawConnector => (cutting.Splices.Sum(s => s.Connectors.Count), $"connectors of {cutting.Splices.Count} splices"),
        HardwareKind.WallFixing => Times(casework.Cases.Count, job.Shop.Checks.FixingsPerCase, "cases"),
        HardwareKind.JoiningScrew => Times(Neighbours(casework), ScrewsPerNeighbour, "places where cases stand side by side"),
        HardwareKind.Hinge => Count(Bores(casework, Hinges.For), casework.Parts.Count(p => p.Role == PartRole.Door), "doors, by their height"),
        HardwareKind.SlidePair => Times(casework.Parts.Count(p => p.Role == PartRole.DrawerFront), 1, "drawers"),
        HardwareKind.Pull => Count(Bores(casework, Pulls.For), casework.Parts.Count(p => p.Role is PartRole.Door or PartRole.DrawerFront), "doors and drawers"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Litres of glue.</summary>
    public static decimal GlueLitres(Casework casework, CutPlan cutting)
    {
        var splices = cutting.Splices.Count * GluePerSplice;
        var ends = 2 * casework.Parts.Count(IsHoused) * GluePerPanelEnd;
        var nosings = casework.Parts.Where(p => p.Role == PartRole.Nosing).Sum(p => Metres(p.Length)) * GluePerNosingMetre;
        return (splices + ends + nosings) / 1000;
    }

    /// <summary>Square metres of all faces that show.</summary>
    public static decimal FinishArea(Casework casework) => casework.Parts.Sum(p =>
        ((p.ReferenceFace == Exposure.Shows ? 1 : 0) + (p.OppositeFace == Exposure.Shows ? 1 : 0)) * Metres(p.Length) * Metres(p.Width));

    private static bool IsHoused(Part part) => part.Role is PartRole.Top or PartRole.Bottom or PartRole.FixedShelf or PartRole.Partition;

    private static int Bores(Casework casework, string what) => casework.Parts.Sum(p => p.Machining.OfType<Bore>().Count(b => b.For == what));

    private static (int Count, string Why) Count(int pieces, int things, string what) => (pieces, $"on {things} {what}");

    private static int Neighbours(Casework casework) =>
        casework.Cases.GroupBy(c => (c.Run, c.Tier)).Sum(g => g.Count() - 1);

    private static (int Count, string Why) Times(int things, int each, string what) => (things * each, $"{each} for each of {things} {what}");

    private static decimal Metres(Length length) => length.Nanometres / 1_000_000_000m;
}

using Casewright.Engine.Checks.Materials;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Engine.Checks.Shelves;

/// <summary>A shelf reduced to what bends it. SI units: m, N/m.</summary>
public sealed record Shelf
{
    /// <summary>Standard gravity in m/s².</summary>
    public const double Gravity = 9.80665;

    /// <summary>Clear spans between supports, from left to right, in m; at least one.</summary>
    public required IReadOnlyList<double> Spans { get; init; }

    /// <summary>Front to back, nosing not counted, in m.</summary>
    public required double Depth { get; init; }

    /// <summary>Thickness of the panel.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Material of the panel.</summary>
    public required Material Material { get; init; }

    /// <summary>Whether the face grain runs along the span.</summary>
    public required bool AlongGrain { get; init; }

    /// <summary>Solid nosing along the front; null for none.</summary>
    public ShelfNosing? Nosing { get; init; }

    /// <summary>Whether the back edge lies on a continuous cleat or nailer.</summary>
    public bool BackCarried { get; init; }

    /// <summary>Whether it lies loose on pins, so that no cleat can carry its back edge.</summary>
    public bool Loose { get; init; }

    /// <summary>What stands on it, in kg/m.</summary>
    public required double LoadPerMetre { get; init; }

    /// <summary>Engineering figures at this thickness.</summary>
    public MaterialFigures Figures => MaterialTable.For(Material with { Measured = Thickness });

    /// <summary>Longest clear span in m.</summary>
    public double LongestSpan => Spans.Max();

    /// <summary>Cross-section of the panel.</summary>
    public RectangularSection Section => new(Depth, Thickness.Metres);

    /// <summary>Weight of panel and nosing in N/m.</summary>
    public double OwnWeight => ((Section.Area * Figures.Density) + (Nosing?.MassPerMetre ?? 0)) * Gravity;

    /// <summary>Load and own weight in N/m.</summary>
    public double TotalLoad => (LoadPerMetre * Gravity) + OwnWeight;

    /// <summary>Sag in m at the worst place of the worst span, elastic, under a uniform load in N/m.</summary>
    public double SagUnder(double load)
    {
        var figures = Figures;
        var span = LongestSpan;
        if (Nosing is null && !BackCarried)
            return PlainSag(load, figures);
        var panel = new ShelfPanel(span, Depth, Thickness.Metres, figures.Elasticity(AlongGrain), figures.PanelShearModulus);
        var strip = Nosing?.Strip(Thickness.Metres);
        if (BackCarried)
            return NosedShelf.ModelAllowance * NosedShelf.BackOnCleat(panel, strip, load / Depth);
        var (front, back) = NosedShelf.BackFree(panel, strip, load / Depth);
        return NosedShelf.ModelAllowance * Math.Max(front, back);
    }

    /// <summary>Elastic sag in m under load and own weight.</summary>
    public double Sag => SagUnder(TotalLoad);

    /// <summary>Largest bending moment in N·m for each unit of load, nosing not counted on.</summary>
    public double LargestMoment(double load) =>
        Spans.Count == 1 ? load * LongestSpan * LongestSpan / 8 : new ContinuousBeam(Spans, load, 1).LargestMoment();

    private double PlainSag(double load, MaterialFigures figures)
    {
        var stiffness = figures.Elasticity(AlongGrain) * Section.SecondMoment;
        var shear = Beams.SimpleShearSag(load, LongestSpan, figures.PlanarShearModulus * Section.ShearArea);
        if (Spans.Count == 1)
            return Beams.SimpleSag(load, LongestSpan, stiffness) + shear;
        var beam = new ContinuousBeam(Spans, load, stiffness);
        return Enumerable.Range(0, beam.Count).Max(beam.LargestSag) + shear;
    }
}

/// <summary>A solid nosing on the front of a shelf.</summary>
/// <param name="Material">Its board material.</param>
/// <param name="Width">Its size in the shelf's depth, in m.</param>
/// <param name="Height">Its height, in m.</param>
/// <param name="Offset">Between the mid-planes of panel and nosing, in m; null when its top is flush with the shelf.</param>
public sealed record ShelfNosing(Material Material, double Width, double Height, double? Offset)
{
    /// <summary>Mass in kg/m.</summary>
    public double MassPerMetre => Width * Height * MaterialTable.For(Material).Density;

    /// <summary>The strip as the strip model sees it; its shear modulus is a sixteenth of its modulus of elasticity (EN 338's rule for timber, from memory).</summary>
    public EdgeStrip Strip(double panelThickness)
    {
        var elasticity = MaterialTable.For(Material).ElasticityAlong;
        return new(Width, Height, elasticity, elasticity / 16, Offset ?? ((Height - panelThickness) / 2));
    }
}

using Casewright.Model.Measure;

namespace Casewright.Model.Stock;

/// <summary>A material that parts are made of: a panel of one thickness, or a board of one section.</summary>
public sealed record Material
{
    /// <summary>Id, unique among the job's materials.</summary>
    public required string Id { get; init; }

    /// <summary>Name as the shop says it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is made of.</summary>
    public required MaterialKind Kind { get; init; }

    /// <summary>Thickness as sold; positive.</summary>
    public required Length Nominal { get; init; }

    /// <summary>Thickness as measured on the stock; null while nobody has measured it. All joinery uses it once it is there.</summary>
    public Length? Measured { get; init; }

    /// <summary>Section width when the material comes as boards (nosing, face frame, crown); null for sheets.</summary>
    public Length? BoardWidth { get; init; }

    /// <summary>Whether the face has a grain direction that parts must follow.</summary>
    public bool HasGrain { get; init; }

    /// <summary>Mean density in kg/m³; null takes the planning figure of its kind.</summary>
    public double? Density { get; init; }

    /// <summary>Bending modulus of elasticity along the grain in N/mm²; null takes the planning figure of its kind.</summary>
    public double? Elasticity { get; init; }

    /// <summary>The thickness that everything is computed with: measured where known, else nominal.</summary>
    public Length Thickness => Measured ?? Nominal;

    /// <summary>Whether the material comes as boards of one section rather than as sheets.</summary>
    public bool IsBoard => BoardWidth is not null;
}

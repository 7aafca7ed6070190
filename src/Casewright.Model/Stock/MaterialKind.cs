namespace Casewright.Model.Stock;

/// <summary>What a material is made of; decides stiffness, creep, weight and which joints it takes.</summary>
public enum MaterialKind
{
    /// <summary>Birch plywood, birch throughout.</summary>
    BirchPlywood,

    /// <summary>Hardwood-faced plywood on a softwood veneer core.</summary>
    HardwoodPlywood,

    /// <summary>Softwood plywood.</summary>
    SoftwoodPlywood,

    /// <summary>Medium-density fibreboard.</summary>
    Mdf,

    /// <summary>Particleboard (chipboard).</summary>
    Particleboard,

    /// <summary>Oriented strandboard.</summary>
    Osb,

    /// <summary>Hardboard.</summary>
    Hardboard,

    /// <summary>Solid hardwood.</summary>
    Hardwood,

    /// <summary>Solid softwood.</summary>
    Softwood,
}

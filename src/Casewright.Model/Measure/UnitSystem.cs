namespace Casewright.Model.Measure;

/// <summary>The unit that bare numbers of a job are read in and that its papers are printed in.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches, printed as feet, inches and binary fractions.</summary>
    Inches,
}

namespace Casewright.Model.Measure;

/// <summary>The finest fraction of an inch that is printed.</summary>
public enum FractionStep
{
    /// <summary>1/16 in: assembly and site work.</summary>
    Sixteenth = 16,

    /// <summary>1/32 in: sawing.</summary>
    ThirtySecond = 32,

    /// <summary>1/64 in: joinery.</summary>
    SixtyFourth = 64,
}

namespace Casewright.Engine.Splicing.Methods;

/// <summary>How strong a splice is beside the panel it joins (common practice, no source).</summary>
public enum StrengthClass
{
    /// <summary>As good as the panel.</summary>
    AsPanel,

    /// <summary>Sound in a braced part.</summary>
    Braced,

    /// <summary>Only places the pieces: needs backing.</summary>
    PlacesOnly,
}

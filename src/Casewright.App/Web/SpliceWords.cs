using Casewright.Model.Splices;

namespace Casewright.App.Web;

/// <summary>Splices in words.</summary>
public static class SpliceWords
{
    /// <summary>The method.</summary>
    public static string Method(SpliceMethod method) => method switch
    {
        SpliceMethod.LooseTenons => "loose tenons",
        SpliceMethod.TenonsAndConnectors => "tenons with draw connectors",
        SpliceMethod.Spline => "spline",
        SpliceMethod.HalfLap => "half-lap",
        SpliceMethod.Scarf => "scarf",
        SpliceMethod.BackedButt => "butt with a backing plate",
        _ => "covered butt joint",
    };

    /// <summary>How it is held while the glue cures.</summary>
    public static string Holding(HoldingMethod holding) => holding switch
    {
        HoldingMethod.DrawConnectors => "held by its connectors",
        HoldingMethod.EndClamps => "end clamps, one above, one below",
        HoldingMethod.SpreaderAgainstStop => "against a stop, reversed spreader behind",
        HoldingMethod.PinchDogs => "pinch dogs in the hidden face",
        HoldingMethod.FaceClamps => "clamps across the faces",
        _ => "carried by the part it lies on",
    };
}

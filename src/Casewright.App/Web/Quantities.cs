using Casewright.Model.Measure;

namespace Casewright.App.Web;

/// <summary>Figures of the checks, which are kept in SI units, as the shop of a job reads them: a job in inches reads pounds.</summary>
public static class Quantities
{
    // A pound is 0.453 592 37 kg and an inch 25.4 mm, both exact by definition; a pound-force is the weight of a pound under 9.806 65 m/s².
    private const double Pound = 0.45359237;
    private const double PoundForce = Pound * 9.80665;
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;

    /// <summary>The figure in the unit that <see cref="Unit"/> names.</summary>
    /// <param name="value">The figure in its own unit.</param>
    /// <param name="unit">Its unit as the check names it, such as kg.</param>
    /// <param name="units">Units of the job.</param>
    public static double Value(double value, string unit, UnitSystem units) => units == UnitSystem.Inches && Of(unit) is { } other ? value / other.Size : value;

    /// <summary>The unit that a figure is told in.</summary>
    public static string Unit(string unit, UnitSystem units) => units == UnitSystem.Inches && Of(unit) is { } other ? other.Name : unit;

    private static (string Name, double Size)? Of(string unit) => unit switch
    {
        "mm" => ("in", Inch * 1000),
        "m" => ("ft", Foot),
        "m²" => ("sq ft", Foot * Foot),
        "kg" => ("lb", Pound),
        "kg/m" => ("lb/ft", Pound / Foot),
        "N" => ("lbf", PoundForce),
        "kN" => ("lbf", PoundForce / 1000),
        "N·m" => ("lbf·ft", PoundForce * Foot),
        "N/mm²" => ("psi", PoundForce / (Inch * Inch) / 1e6),
        "kN/m²" => ("psf", PoundForce / (Foot * Foot) / 1000),
        _ => null,
    };
}

namespace Casewright.Engine.Tests.Checks.Values;

/// <summary>An outside figure and what our own code makes of the same inputs.</summary>
/// <param name="Id">Id of the figure.</param>
/// <param name="Ours">Our result, in the unit of the figure.</param>
public sealed record CheckValue(string Id, Func<double> Ours);

/// <summary>Units of the figures.</summary>
internal static class Unit
{
    public const double Inch = 0.0254;
    public const double Millimetre = 1e-3;
    public const double Psi = 6894.757293168;
    public const double Psf = 47.88025898;
    public const double Pound = 0.45359237;
    public const double PoundForce = 4.4482216152605;
    public const double MegaPascal = 1e6;
    public const double PoundForceInch = PoundForce * Inch;
    public const double Gravity = 9.80665;
}

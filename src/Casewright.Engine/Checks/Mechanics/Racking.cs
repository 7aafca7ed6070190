namespace Casewright.Engine.Checks.Mechanics;

/// <summary>Sideways stiffness of a case. SI units: m, Pa, N.</summary>
public static class Racking
{
    /// <summary>Sideways drift of the top under a push there when a back of one thickness takes it in shear: P h/(G t w).</summary>
    public static double BackDrift(double push, double height, double width, double shearModulus, double thickness) =>
        push * height / (shearModulus * thickness * width);

    /// <summary>
    /// Sideways drift of the top of two uprights fixed to stiff level rails at top and foot, without a back: P h³/(12 ΣEI), the sway of a
    /// portal with stiff rails and uprights that bend flatwise.
    /// </summary>
    public static double FrameDrift(double push, double height, double uprightsStiffness) =>
        push * Math.Pow(height, 3) / (12 * uprightsStiffness);
}

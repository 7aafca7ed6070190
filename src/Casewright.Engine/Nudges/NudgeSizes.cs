using Casewright.Model.Measure;

namespace Casewright.Engine.Nudges;

/// <summary>How large a change may be that is still a small one, in the round figures of the job's unit (our judgement).</summary>
/// <param name="Step">What changes are rounded to.</param>
/// <param name="Small">One step of a dimension that is tried without a reason.</param>
/// <param name="MostHeight">Most that a base or crown grows or a head comes down.</param>
/// <param name="MostDepth">Most that is taken off the depth.</param>
/// <param name="MostBay">Most that a bay gives up.</param>
/// <param name="MostFiller">Most that a filler grows.</param>
/// <param name="LineStep">How far a line of joints is moved, once and twice, up and down.</param>
/// <param name="LeastLap">Least that a crown laps the cases, or it would show their upper edges.</param>
internal sealed record NudgeSizes(
    Length Step, Length Small, Length MostHeight, Length MostDepth, Length MostBay, Length MostFiller, Length LineStep, Length LeastLap)
{
    private static readonly NudgeSizes Metric = new(Mm(1), Mm(10), Mm(80), Mm(30), Mm(40), Mm(60), Mm(50), Mm(6));

    private static readonly NudgeSizes Imperial = new(
        Inches(0, 1, 16), Inches(0, 3, 8), Inches(3), Inches(1, 1, 4), Inches(1, 1, 2), Inches(2, 1, 2), Inches(2), Inches(0, 1, 4));

    /// <summary>The sizes of a unit system.</summary>
    public static NudgeSizes For(UnitSystem units) => units == UnitSystem.Inches ? Imperial : Metric;

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);

    private static Length Inches(int whole, int numerator = 0, int denominator = 1) => Length.FromInches(whole, numerator, denominator);
}

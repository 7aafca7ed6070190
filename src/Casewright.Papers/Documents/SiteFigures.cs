using Casewright.Model.Measure;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents;

/// <summary>Figures for work on site: to the nearest half millimetre or 1/32 in, finer than anybody packs or planes.</summary>
internal sealed class SiteFigures(Figures figures)
{
    /// <summary>The step of rounding.</summary>
    public Length Step => figures.Units == UnitSystem.Inches ? Length.FromInches(0, 1, 32) : Length.FromMillimetres(0.5m);

    /// <summary>How the figures are rounded, for a heading.</summary>
    public string Rounding => figures.Units == UnitSystem.Inches ? "to the nearest 1\u204432 in" : "to the nearest 0.5 mm";

    /// <summary>A length in the job's unit, without the unit's name.</summary>
    public string Main(Length length) => figures.Main(length.RoundTo(Step));

    /// <summary>A length in both units.</summary>
    public string Both(Length length) => figures.Both(length.RoundTo(Step));

    /// <summary>A length in metres, in the job's unit.</summary>
    public string Metres(double metres) => Main(Length.FromNanometres((long)Math.Round(metres * 1e6) * 1000));
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Model.Findings;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Notices;

/// <summary>What the layout alone can notice about a run; everything that needs more is left to the checks.</summary>
internal static class LayoutNotices
{
    /// <summary>Stands behind figures that have no published source.</summary>
    public const string Practice = "Common practice, no source";

    /// <summary>The findings of a run in a fixed order.</summary>
    public static IReadOnlyList<Finding> Of(RunFigures run, IReadOnlyList<CaseFigures> cases, IReadOnlyList<Part> parts)
    {
        CaseFigures[] built = [.. cases.Where(c => !c.IsKnee)];
        return
        [
            .. FillerNotice.Of(run),
            .. built.Length == 0 ? [] : NailerNotice.Of(run, built),
            .. BackBearingNotice.Of(run, built),
            .. RoundingNotice.Of(run, built, parts),
            .. CeilingNotice.Of(run),
            .. SkirtingNotice.Of(run, built),
            .. CorniceNotice.Of(run),
            .. TrimBandNotice.Of(run, built),
            .. CornerNotice.Of(run, built),
            .. CounterNotice.Of(run, cases),
            .. SlopeNotice.Of(run, built),
        ];
    }

    /// <summary>A length as an input of a finding.</summary>
    public static FindingInput Input(string name, Length value) =>
        new(name, value.Millimetres.ToString("0.###", CultureInfo.InvariantCulture), "mm");
}

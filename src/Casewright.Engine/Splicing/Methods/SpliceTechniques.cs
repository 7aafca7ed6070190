using Casewright.Model.Collections;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>The catalogue of splice methods, one type each.</summary>
public static class SpliceTechniques
{
    /// <summary>All methods.</summary>
    public static ValueList<SpliceTechnique> All { get; } =
    [
        new LooseTenonSplice(),
        new DrawConnectorSplice(),
        new SplineSplice(),
        new HalfLapSplice(),
        new ScarfSplice(),
        new BackedButtSplice(),
        new CoveredButtSplice(),
    ];

    /// <summary>The technique of a method.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is no method.</exception>
    public static SpliceTechnique Of(SpliceMethod method) =>
        All.FirstOrDefault(technique => technique.Method == method)
        ?? throw new ArgumentOutOfRangeException(nameof(method), method, "There is no such splice method.");
}

using System.Globalization;
using Casewright.Engine.Layout.Figures;
using Casewright.Engine.Layout.Rules;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Runs;

/// <summary>A stretch of height over which one filler or end panel runs: the whole run, or one tier.</summary>
/// <param name="Run">The run with the depth that holds there.</param>
/// <param name="Tier">The tier; null for the whole run.</param>
/// <param name="Suffix">Told behind the ids; empty for the whole run.</param>
internal sealed record EndStretch(RunFigures Run, TierSpan? Tier, string Suffix)
{
    /// <summary>The stretches of a run from the floor up.</summary>
    public static IEnumerable<EndStretch> Of(RunFigures run, IReadOnlyList<TierSpan> tiers)
    {
        if (tiers.Count == 1 || (tiers.All(t => t.Counter is null) && tiers.Select(t => run.In(t).Run.Depth).Distinct().Count() == 1))
            return [new(run.In(tiers[0]), tiers[0].Counter is null && tiers.Count > 1 ? null : tiers[0], "")];
        return tiers.Select(t => new EndStretch(run.In(t), t, string.Create(CultureInfo.InvariantCulture, $"{t.Index + 1}")));
    }

    private bool FromFloor => Run.SidesToFloor && (Tier is null || Tier.Index == 0);

    /// <summary>Height of a filler: from the base, or the floor where the sides stand on it, to the top.</summary>
    public Rule FillerHeight => Tier is { Index: > 0 } ? OfTier : FromFloor ? Rule.Of(Top) : Rule.Of(Top).Minus(Symbols.Base(Run));

    /// <summary>Lower end of a filler.</summary>
    public Length FillerFoot => Tier is { Index: > 0 } upper ? upper.Y : FromFloor ? Length.Zero : Run.BaseHeight;

    /// <summary>Height of an end panel: from the floor to the top. One of a hung run or an upper tier begins where that does.</summary>
    public Rule PanelHeight => Tier is { Index: > 0 } ? OfTier : Run.Run.Base.Kind == BaseKind.Hung ? Rule.Of(Top).Minus(Symbols.Base(Run)) : Rule.Of(Top);

    /// <summary>Lower end of an end panel.</summary>
    public Length PanelFoot => Tier is { Index: > 0 } upper ? upper.Y : Run.Run.Base.Kind == BaseKind.Hung ? Run.BaseHeight : Length.Zero;

    private Rule OfTier => Rule.Of(new DerivationInput("H", $"height of the cases of the tier ({Tier!.Path})", Tier.Height));

    private DerivationInput Top => Tier is { } tier && tier.YEnd != Run.Top
        ? new("Y", $"top of the cases of the tier ({tier.Path})", tier.YEnd)
        : Run.Run.Head.Height is { } height
            ? new("Y", $"top of the cases ({Run.Path}.head.height)", height)
            : new("Y", $"ceiling less the gap ({Run.Path}.head.gap)", Run.Top);
}

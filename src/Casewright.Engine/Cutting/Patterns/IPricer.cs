namespace Casewright.Engine.Cutting.Patterns;

/// <summary>Finds the layout of one sheet that is worth most.</summary>
internal interface IPricer
{
    /// <summary>Whether no size was rounded, so that the value is exact and the layout real.</summary>
    bool IsExact { get; }

    /// <summary>Rough work of one pricing, in work units.</summary>
    long Work { get; }

    /// <summary>Prices at the value of every kind of piece.</summary>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    PricedLayout Price(long[] values, bool wantLayout, CancellationToken cancellation);
}

using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Zones;

/// <summary>A stretch of a part, both ends included.</summary>
/// <param name="From">Low end.</param>
/// <param name="To">High end, not below <paramref name="From"/>.</param>
public readonly record struct Stretch(Length From, Length To)
{
    /// <summary>Whether a place lies in it, ends included.</summary>
    public bool Contains(Length place) => From <= place && place <= To;

    /// <inheritdoc/>
    public override string ToString() => $"{From} to {To}";
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Model.Parts;

/// <summary>A figure that went into a derived dimension.</summary>
/// <param name="Symbol">Symbol in the formula.</param>
/// <param name="Meaning">What it is, in words, with where it was stated.</param>
/// <param name="Value">Its value.</param>
public sealed record DerivationInput(string Symbol, string Meaning, Length Value);

/// <summary>Where a dimension came from.</summary>
/// <param name="Dimension">Which dimension: length, width, thickness, x, y, z or another named one.</param>
/// <param name="Formula">The rule with symbols, such as "W − 2t + 2a".</param>
/// <param name="Inputs">The figures behind the symbols.</param>
/// <param name="Exact">The value before rounding.</param>
/// <param name="Result">The value used.</param>
public sealed record Derivation(string Dimension, string Formula, ValueList<DerivationInput> Inputs, Length Exact, Length Result);

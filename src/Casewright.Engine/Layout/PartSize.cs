using Casewright.Model.Parts;

namespace Casewright.Engine.Layout;

/// <summary>The three dimensions of a finished part with where they came from.</summary>
/// <param name="Length">Along the part.</param>
/// <param name="Width">Across it.</param>
/// <param name="Thickness">Through it.</param>
internal readonly record struct PartSize(Derivation Length, Derivation Width, Derivation Thickness);

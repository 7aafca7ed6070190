using Casewright.Papers.Drawing;

namespace Casewright.Papers.Kit;

/// <summary>A finished page.</summary>
/// <param name="Document">Which document it belongs to.</param>
/// <param name="Key">What it is about inside the document; may be empty.</param>
/// <param name="Number">Its number in the packet, from 1.</param>
/// <param name="Scene">What is printed.</param>
public sealed record Page(DocumentKind Document, string Key, int Number, Scene Scene);

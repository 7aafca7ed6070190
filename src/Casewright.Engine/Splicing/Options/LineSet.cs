using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Engine.Splicing.Options;

/// <summary>Joint lines that parts keep between them.</summary>
/// <param name="Lines">Places in the room, ascending; at least one.</param>
/// <param name="All">Whether every part is joined at all of them; else parts that can do with fewer are.</param>
internal sealed record LineSet(ValueList<Length> Lines, bool All);

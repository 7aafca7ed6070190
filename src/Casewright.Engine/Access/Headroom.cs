using Casewright.Model.Collections;
using Casewright.Model.Parts;
using Casewright.Model.Site;

namespace Casewright.Engine.Access;

/// <summary>
/// How high a case and the ceiling over it are at one of its ends. Under a ceiling that slopes along the wall a case turns up or is lifted
/// end by end of its width: what it needs there is convex along the wall and the ceiling is concave, so that the ends decide.
/// </summary>
/// <param name="Height">Height of the case there, in metres.</param>
/// <param name="Ceiling">Ceiling there, in metres above the highest floor point.</param>
/// <param name="Where">Words for the place, such as " at its left end"; empty where case and ceiling are level.</param>
public readonly record struct Headroom(double Height, double Ceiling, string Where)
{
    /// <summary>Both ends of a case; one entry where nothing differs between them.</summary>
    public static ValueList<Headroom> Of(CaseBox box, Wall wall)
    {
        ArgumentNullException.ThrowIfNull(box);
        ArgumentNullException.ThrowIfNull(wall);
        var left = new Headroom(box.HeightAt(box.X).Metres, wall.CeilingAt(box.X).Metres, "");
        var right = new Headroom(box.HeightAt(box.X + box.Width).Metres, wall.CeilingAt(box.X + box.Width).Metres, "");
        return left == right ? [left] : [left with { Where = " at its left end" }, right with { Where = " at its right end" }];
    }
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The holes that one end of a spliced piece shows: where its mortises are across the width and into the thickness.</summary>
/// <param name="Width">Width of the piece.</param>
/// <param name="Thickness">Thickness of the piece.</param>
/// <param name="Tenons">Its tenons, from the reference edge and face.</param>
internal sealed record JointPattern(Length Width, Length Thickness, ValueList<Tenon> Tenons)
{
    public static JointPattern Of(Splice splice, Part part) => new(part.Width, part.Thickness, splice.Tenons);

    /// <summary>The same end seen with its edges exchanged.</summary>
    public JointPattern EdgesExchanged() => this with { Tenons = Tenons.Select(tenon => tenon with { Offset = Width - tenon.Offset }).ToValueList() };

    /// <summary>The same end seen with its faces exchanged.</summary>
    public JointPattern FacesExchanged() => this with { Tenons = Tenons.Select(tenon => tenon with { Depth = Thickness - tenon.Depth }).ToValueList() };

    /// <summary>Whether an end so held closes on this one without a step or gap that hands would notice.</summary>
    public bool ClosesOn(JointPattern other)
    {
        if (!Alike(Width, other.Width, Length.Zero) || !Alike(Thickness, other.Thickness, Length.Zero))
            return false;

        var (few, many) = Tenons.Count <= other.Tenons.Count ? (Tenons, other.Tenons) : (other.Tenons, Tenons);
        return few.Count > 0 && few.All(tenon => many.Any(mortise => Takes(mortise, tenon)));
    }

    private static bool Takes(Tenon mortise, Tenon tenon) =>
        Alike(mortise.Offset, tenon.Offset, (mortise.Play + tenon.Play) / 2)
        && Alike(mortise.Depth, tenon.Depth, Length.Zero)
        && Alike(mortise.Thickness, tenon.Thickness, Length.Zero);

    private static bool Alike(Length left, Length right, Length play) => (left - right).Abs() <= play + Practice.Unnoticed;
}

using Casewright.Model.Collections;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;

namespace Casewright.Engine.Verifying.Rules;

/// <summary>The holes that one end of a spliced piece shows: where its mortises are across the width and into the thickness.</summary>
/// <param name="Width">Width of the piece.</param>
/// <param name="Thickness">Thickness of the piece.</param>
/// <param name="Tenons">Its tenons, by offset from the reference edge.</param>
internal sealed record JointPattern(Length Width, Length Thickness, ValueList<Tenon> Tenons)
{
    public static JointPattern Of(Splice splice, Part part) =>
        new(part.Width, part.Thickness, splice.Tenons.OrderBy(tenon => tenon.Offset).ToValueList());

    /// <summary>
    /// The same end as it meets another when its piece is held wrongly: turned over, with its faces exchanged (a piece of the other
    /// hand laid front to front, or one turned end for end), or with its edges exchanged (a piece of the other hand laid inside to
    /// inside, or one turned end for end flat on the bench).
    /// </summary>
    public IEnumerable<JointPattern> WrongHolds() => [EdgesExchanged().FacesExchanged(), FacesExchanged(), EdgesExchanged()];

    /// <summary>The same end when its piece is turned over.</summary>
    public JointPattern TurnedOver() => EdgesExchanged().FacesExchanged();

    /// <summary>Whether an end so held closes on this one without a step or gap that hands would notice.</summary>
    public bool ClosesOn(JointPattern other) =>
        SameSection(other) && IsComparable(other) && Tenons.Zip(other.Tenons).All(pair => Takes(pair.First, pair.Second));

    /// <summary>Whether the two are of one width and thickness, so that hands could mistake their pieces for each other.</summary>
    public bool SameSection(JointPattern other) =>
        Alike(Width, other.Width, Length.Zero) && Alike(Thickness, other.Thickness, Length.Zero);

    /// <summary>Whether both have as many mortises; a tenon without its mortise keeps every joint open.</summary>
    public bool IsComparable(JointPattern other) => Tenons.Count == other.Tenons.Count;

    /// <summary>How far the worst mortise is off its counterpart when a comparable end meets this one so held.</summary>
    public Length Mismatch(JointPattern other) => Tenons.Zip(other.Tenons)
        .Max(pair => Length.Max((pair.First.Offset - pair.Second.Offset).Abs(), (pair.First.Depth - pair.Second.Depth).Abs()));

    private static bool Takes(Tenon mortise, Tenon tenon) =>
        Alike(mortise.Offset, tenon.Offset, (mortise.Play + tenon.Play) / 2)
        && Alike(mortise.Depth, tenon.Depth, Length.Zero)
        && Alike(mortise.Thickness, tenon.Thickness, Length.Zero);

    private static bool Alike(Length left, Length right, Length play) => (left - right).Abs() <= play + Practice.Unnoticed;

    private JointPattern EdgesExchanged() => this with { Tenons = Tenons.Select(tenon => tenon with { Offset = Width - tenon.Offset }).Reverse().ToValueList() };

    private JointPattern FacesExchanged() => this with { Tenons = Tenons.Select(tenon => tenon with { Depth = Thickness - tenon.Depth }).ToValueList() };
}

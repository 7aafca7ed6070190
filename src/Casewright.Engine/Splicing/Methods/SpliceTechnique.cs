using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Shop;
using Casewright.Model.Splices;

namespace Casewright.Engine.Splicing.Methods;

/// <summary>
/// What a splice method needs, uses up and leaves behind. The figures are common practice, no source; order and minutes of the
/// methods that a shop is set up for are in its rules.
/// </summary>
public abstract class SpliceTechnique
{
    /// <summary>Width of part that the usual minutes are stated for.</summary>
    public static Length MinutesWidth { get; } = Length.FromMillimetres(300);

    /// <summary>The method.</summary>
    public abstract SpliceMethod Method { get; }

    /// <summary>Name in words, in the plural: "loose tenons".</summary>
    public abstract string Name { get; }

    /// <summary>How strong it is.</summary>
    public abstract StrengthClass Strength { get; }

    /// <summary>Hands-on minutes of one joint in a part 300 mm wide, where the shop states none; not negative.</summary>
    public abstract double UsualMinutes { get; }

    /// <summary>Minutes to set up the jig once for a batch; not negative.</summary>
    public abstract double JigMinutes { get; }

    /// <summary>Long clamps that one joint keeps busy while it cures; not negative.</summary>
    public abstract int LongClamps { get; }

    /// <summary>Clamps across the faces, battens held by them included; not negative.</summary>
    public abstract int FaceClamps { get; }

    /// <summary>What it leaves to be seen, in words.</summary>
    public abstract string Marks { get; }

    /// <summary>How it goes wrong, in words.</summary>
    public abstract string TypicalFailure { get; }

    /// <summary>Thinnest part it is made in.</summary>
    public abstract Length Thinnest { get; }

    /// <summary>Thickest part it is made in.</summary>
    public abstract Length Thickest { get; }

    /// <summary>Whether it takes holes or a plate on a face that nobody may see.</summary>
    public virtual bool NeedsHiddenFace => false;

    /// <summary>Length by which the two pieces overlap; zero for joints that meet end to end.</summary>
    /// <param name="thickness">Thickness of the part; positive.</param>
    public virtual Length Overlap(Length thickness) => Length.Zero;

    /// <summary>How far the joint reaches inside the wood on each side of its line (of its middle, for an overlap).</summary>
    /// <param name="thickness">Thickness of the part; positive.</param>
    /// <param name="rules">The shop's rules.</param>
    public virtual Length Reach(Length thickness, SpliceRules rules) => Overlap(thickness) / 2;

    /// <summary>
    /// How far from the joint line its outermost line on a face lies: nothing for joints that meet end to end, half the overlap and
    /// the squaring beyond it for laps and scarfs. Clearances are kept from there.
    /// </summary>
    /// <param name="thickness">Thickness of the part; positive.</param>
    /// <param name="rules">The shop's rules.</param>
    public Length Spread(Length thickness, SpliceRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return Overlap(thickness) == Length.Zero ? Length.Zero : (Overlap(thickness) / 2) + rules.SquaringAllowance;
    }

    /// <summary>How far it reaches on the face that takes holes or plate, on each side of its line.</summary>
    /// <param name="thickness">Thickness of the part; positive.</param>
    /// <param name="rules">The shop's rules.</param>
    public virtual Length ReachOnFace(Length thickness, SpliceRules rules) => Reach(thickness, rules);

    /// <summary>How a joint of the part is held while the glue cures.</summary>
    public abstract HoldingMethod Holding(Part part);

    /// <summary>The face that takes holes or plate: hidden, the opposite one if both are. Null when the method touches none or none is hidden.</summary>
    public Face? AccessFace(Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!NeedsHiddenFace)
            return null;
        if (part.OppositeFace == Exposure.Hidden)
            return Face.Opposite;
        return part.ReferenceFace == Exposure.Hidden ? Face.Reference : null;
    }

    /// <summary>Why the method cannot be used in the part at all, in words; null when it can.</summary>
    /// <param name="part">The part.</param>
    /// <param name="nominal">Nominal thickness of its material, by which tools and fittings are chosen; positive.</param>
    /// <param name="words">Prints lengths in the unit of the job.</param>
    public string? WhyNot(Part part, Length nominal, Func<Length, string> words)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(words);
        if (Length.Max(nominal, part.Thickness) < Thinnest)
            return $"{Name} need a thickness of {words(Thinnest)} or more, and it is {words(part.Thickness)}";
        if (Length.Min(nominal, part.Thickness) > Thickest)
            return $"{Name} are made up to {words(Thickest)} thick, and it is {words(part.Thickness)}";
        if (NeedsHiddenFace && AccessFace(part) is null)
            return $"{Name} need a face that nobody sees, and both faces show";
        return null;
    }

    /// <summary>Hands-on minutes of one joint: the shop's figure, or the usual one, in proportion to the part's width.</summary>
    /// <param name="rules">The shop's rules.</param>
    /// <param name="width">Width of the part; positive.</param>
    public decimal Minutes(SpliceRules rules, Length width)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var stated = rules.Methods.FirstOrDefault(m => m.Method == Method)?.Minutes ?? UsualMinutes;
        return (decimal)stated * width.Nanometres / MinutesWidth.Nanometres;
    }
}

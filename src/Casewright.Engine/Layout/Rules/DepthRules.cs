using Casewright.Engine.Layout.Figures;
using Casewright.Model.Design;
using Casewright.Model.Measure;
using Casewright.Model.Parts;

namespace Casewright.Engine.Layout.Rules;

/// <summary>Depths of the panels of a case: D less frame, nosing and what the back takes.</summary>
internal static class DepthRules
{
    /// <summary>Sides: D − tf − e, and − tb in front of an overlaid back.</summary>
    public static Derivation Side(RunFigures run) => (run.SideRear == Length.Zero ? Upright(run) : Upright(run).MinusAny(Symbols.Back(run))).Nearest(Dimensions.Width, run.Step);

    /// <summary>A side with lipped edges: less the lippings, and, where the rear one is planed to the wall, with what is left on for that.</summary>
    public static Derivation Side(RunFigures run, Lippings lips)
    {
        if (lips.None)
            return Side(run);
        var rule = Front(run).MinusAny(Symbols.Nosing(run.UprightNosing)).MinusAny(Symbols.Nosing(lips.Front));
        if (lips.Rear is { } rear)
            rule = rule.Minus(Symbols.Thickness("er", rear)).PlusAny(Symbols.Behind(lips.End)).Plus(Symbols.Scribe(run));
        else if (run.SideRear != Length.Zero)
            rule = rule.MinusAny(Symbols.Back(run));
        return rule.Nearest(Dimensions.Width, run.Step);
    }

    /// <summary>Tops and bottoms: to the wall with a captured back, else to the back's face.</summary>
    public static Derivation Level(RunFigures run) =>
        (run.Run.Back.Kind == BackKind.Captured ? Upright(run) : Upright(run).MinusAny(Symbols.Back(run))).Nearest(Dimensions.Width, run.Step);

    /// <summary>Partitions: to the back's face.</summary>
    public static Derivation Partition(RunFigures run) =>
        Upright(run).MinusAny(Symbols.Inset(run)).MinusAny(Symbols.Back(run)).Nearest(Dimensions.Width, run.Step);

    /// <summary>Fixed shelves: to the back's face, less their own nosing, and less an inset door that passes in front of them.</summary>
    public static Derivation FixedShelf(RunFigures run, Length setback) =>
        Front(run).MinusAny(Symbols.InsetFront(setback)).MinusAny(Symbols.Nosing(run.ShelfNosing)).MinusAny(Symbols.Inset(run)).MinusAny(Symbols.Back(run)).Nearest(Dimensions.Width, run.Step);

    /// <summary>From the wall to the front of the case behind a face frame.</summary>
    public static Rule Front(RunFigures run) => Rule.Of(Symbols.Depth(run)).MinusAny(Symbols.Frame(run));

    private static Rule Upright(RunFigures run) => Front(run).MinusAny(Symbols.Nosing(run.UprightNosing));
}

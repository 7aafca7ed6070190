using Casewright.Model.Design;
using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Doors and drawers in a job file.</summary>
internal static class FrontShapes
{
    private const int MostDrawers = 20;

    public static RecordShape<FrontDesign> Front { get; } = new(
        "front",
        "Doors or drawers in front of openings of every bay. An opening lies between two of the bottom, the fixed shelves and the top.",
        f => new()
        {
            Kind = f.Required("kind", d => d.Kind, Choices.FrontKind, "Doors or drawers."),
            Fit = f.Required("fit", d => d.Fit, Choices.FrontFit, "How they sit."),
            Material = f.Required("material", d => d.Material, Ids.Sheet, "Sheet material of doors and drawer fronts."),
            Opening = f.Default("opening", d => d.Opening, new CountShape(1, 101), 1, "The lowest opening that they close, from 1 at the bottom."),
            Openings = f.Default("openings", d => d.Openings, new CountShape(1, 101), 1, "Number of openings that they close; drawers close one."),
            Leaves = f.Default("leaves", d => d.Leaves, new CountShape(1, 2), 1, "Leaves of a door: 1, or 2 for a pair."),
            Hinged = f.Default("hinged", d => d.Hinged, Choices.HingeSide, HingeSide.Left, "Edge with the hinges of a single door, seen from the front."),
            Drawers = f.Default("drawers", d => d.Drawers, new CountShape(1, MostDrawers), 1, "Number of drawers above one another."),
            Heights = f.Items(
                "heights",
                d => d.Heights,
                LengthShape.Between(30, 2000),
                0,
                MostDrawers,
                "Heights of drawer fronts from the bottom up; those not given share what is left equally."),
            BoxMaterial = f.Optional("boxMaterial", d => d.BoxMaterial, Ids.Sheet, "Sheet material of drawer boxes."),
            BottomMaterial = f.Optional("bottomMaterial", d => d.BottomMaterial, Ids.Sheet, "Sheet material of drawer bottoms."),
        })
    {
        Rules =
        [
            PresenceRule.Needs("boxMaterial", "kind", "drawers"),
            PresenceRule.Needs("bottomMaterial", "kind", "drawers"),
            PresenceRule.Excludes("boxMaterial", "kind", "doors"),
            PresenceRule.Excludes("bottomMaterial", "kind", "doors"),
            PresenceRule.Excludes("drawers", "kind", "doors"),
            PresenceRule.Excludes("heights", "kind", "doors"),
            PresenceRule.Excludes("leaves", "kind", "drawers"),
            PresenceRule.Excludes("hinged", "kind", "drawers"),
            PresenceRule.Excludes("openings", "kind", "drawers"),
        ],
    };

    public static RecordShape<FrontGaps> Gaps { get; } = new(
        "frontGaps",
        "Working gaps of doors and drawers. What is left out has the usual figure of the unit system (common practice, no source).",
        f => new()
        {
            Edge = Usual(f, "edge", g => g.Edge, "From an overlaid front to the outline of its case: half of what shows between two cases."),
            Between = Usual(f, "between", g => g.Between, "Between two overlaid fronts, and between the leaves of a pair."),
            Inset = Usual(f, "inset", g => g.Inset, "Round an inset front, and between the leaves of an inset pair."),
            FrameLap = Usual(f, "frameLap", g => g.FrameLap, "How far an overlaid front laps over a face frame, each side."),
            Buffer = Usual(f, "buffer", g => g.Buffer, "Between the case and the rear face of an overlaid front."),
            Slides = Usual(f, "slides", g => g.Slides, "What a pair of side slides takes of the opening's width."),
            Headroom = Usual(f, "headroom", g => g.Headroom, "What a drawer box is lower than its opening."),
            BehindBox = Usual(f, "behindBox", g => g.BehindBox, "Left free behind a drawer box."),
            PullInset = Usual(f, "pullInset", g => g.PullInset, "From the free edge of a door to its pull."),
            PullSpacing = Usual(f, "pullSpacing", g => g.PullSpacing, "From hole to hole of a pull; 0 for a knob."),
        });

    private static Length Usual(IFields<FrontGaps> fields, string name, Func<FrontGaps, Length> get, string description) =>
        fields.Usual(name, get, LengthShape.ZeroOrMore(500), u => get(FrontGaps.For(u)), description);
}

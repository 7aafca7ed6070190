using Casewright.Model.Collections;

namespace Casewright.Engine.Checks;

/// <summary>Work in which people get hurt.</summary>
public enum Work
{
    /// <summary>Breaking down sheets.</summary>
    Sawing,

    /// <summary>Mortising, drilling, routing.</summary>
    Joinery,

    /// <summary>Gluing and clamping.</summary>
    Gluing,

    /// <summary>Sanding.</summary>
    Sanding,

    /// <summary>Finishing.</summary>
    Finishing,

    /// <summary>Lifting and carrying.</summary>
    Lifting,

    /// <summary>Setting and fixing on site.</summary>
    Installing,
}

/// <summary>A caution to be printed where the work is done. Local codes, the makers' instructions and licensed practice come first.</summary>
/// <param name="Work">The work.</param>
/// <param name="Text">One or two short sentences.</param>
/// <param name="Source">What stands behind it.</param>
public sealed record WorkCaution(Work Work, string Text, string Source)
{
    /// <summary>The same in a few words, for a card or the foot of a drawing; empty when only the whole text will do.</summary>
    public string Brief { get; init; } = "";

    private const string Practice = "common practice, no source";

    /// <summary>The usual cautions, in the order of the work.</summary>
    public static ValueList<WorkCaution> Usual { get; } =
    [
        new(Work.Sawing, "Guard and riving knife on, push stick at hand, stand out of the line of the cut. Never crosscut a strip against the rip fence without a stand-off block.", Practice)
        {
            Brief = "Guard and riving knife on, push stick at hand, out of the line of the cut.",
        },
        new(Work.Sawing, "Two people for large sheets; break them down where they lie before they go to the saw.", Practice),
        new(Work.Joinery, "Clamp the work, not the hand. Unplug before changing a cutter.", Practice),
        new(Work.Gluing, "Read the glue's label for open time, least temperature and skin contact. A part under clamps is loaded: stand clear of the line of a spreader.", Practice)
        {
            Brief = "Read the glue's label first; stand clear of the line of a spreader.",
        },
        new(Work.Sanding, "Wood dust harms the lungs; oak and beech dust cause cancer. Extract at the source and wear a fitted mask. Limits at work are set by law: 5 mg/m³ respirable as nuisance dust in the United States, 2 mg/m³ for hardwood in the European Union.", "OSHA evaluation of wood dust; EU limit from memory")
        {
            Brief = "Extract the dust and wear a mask.",
        },
        new(Work.Finishing, "Ventilate, keep flames and sparks away, and let oily rags dry flat outdoors: heaped, they catch fire by themselves.", Practice),
        new(Work.Lifting, "Lift together and close to the body; clear the way first. Carry spliced panels on edge, never flat by the ends.", Practice),
        new(Work.Installing, "Find wires and pipes before every screw; they run straight up, down and across from outlets and taps. Leave wiring and gas to licensed people.", Practice),
        new(Work.Installing, "A tall case tips until it is fixed: do not let go of it, load it or leave children near it. Anchors must reach studs or rated masonry fixings.", "half of reported restraint failures were at the wall or furniture connection (furniture association note, 2013 to 2023)"),
        new(Work.Installing, "Before about 1980 paint may hold lead and textured ceilings asbestos: have them tested before you sand, scrape or drill.", "from memory; local rules come first"),
        new(Work.Installing, "Overhead work needs a platform, eye protection and a second person. Leave registers, returns, detectors, outlets and ways out free.", Practice),
    ];
}

using Casewright.Model.Measure;

namespace Casewright.Model.Site.Surveying;

/// <summary>Something on or in a wall that casework must keep clear of, cut round or be moved for.</summary>
public enum FeatureKind
{
    /// <summary>A door; its clear opening.</summary>
    Door,

    /// <summary>A window; its clear opening.</summary>
    Window,

    /// <summary>A socket outlet.</summary>
    Outlet,

    /// <summary>A switch.</summary>
    Switch,

    /// <summary>A grille that air comes out of or goes back through.</summary>
    Register,

    /// <summary>A radiator.</summary>
    Radiator,

    /// <summary>A beam, chase or other part of the building that stands out from wall or ceiling.</summary>
    Beam,

    /// <summary>A pipe or cable in or on the wall, where no screw may go.</summary>
    Pipe,
}

/// <summary>How a door opens, seen from the room.</summary>
public enum DoorSwing
{
    /// <summary>Into the room, hung on its left.</summary>
    InHungLeft,

    /// <summary>Into the room, hung on its right.</summary>
    InHungRight,

    /// <summary>Out of the room.</summary>
    Out,

    /// <summary>It slides, or there is only the opening.</summary>
    None,
}

/// <summary>Something on or in a wall, as measured: a rectangle on the wall and what stands out from it.</summary>
public sealed record WallFeature
{
    /// <summary>Name as people say it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required FeatureKind Kind { get; init; }

    /// <summary>Left edge along the wall, casing not counted; not negative.</summary>
    public required Length X { get; init; }

    /// <summary>Lower edge above the highest floor point; not negative.</summary>
    public required Length Y { get; init; }

    /// <summary>Width, casing not counted; positive.</summary>
    public required Length Width { get; init; }

    /// <summary>Height, casing not counted; positive.</summary>
    public required Length Height { get; init; }

    /// <summary>How far it stands out from the wall; zero for what is flush.</summary>
    public Length Depth { get; init; }

    /// <summary>Width of the casing round a door or window; zero without one.</summary>
    public Length Casing { get; init; }

    /// <summary>How far the stool under a window stands out from the wall; zero without one.</summary>
    public Length Stool { get; init; }

    /// <summary>Free space that must stay in front of it, from the wall; zero when none is asked.</summary>
    public Length KeepClear { get; init; }

    /// <summary>How a door opens; null for anything else, or when nobody said.</summary>
    public DoorSwing? Swing { get; init; }

    /// <summary>Whether it will be moved out of the way, by whoever may, before the casework comes.</summary>
    public bool Moves { get; init; }

    /// <summary>Left edge with the casing.</summary>
    public Length OuterLeft => X - Casing;

    /// <summary>Right edge with the casing.</summary>
    public Length OuterRight => X + Width + Casing;

    /// <summary>Lower edge with the casing; a door's casing ends at the floor.</summary>
    public Length OuterBottom => Kind == FeatureKind.Door ? Y : Y - Casing;

    /// <summary>Upper edge with the casing.</summary>
    public Length OuterTop => Y + Height + Casing;
}

/// <summary>A skirting or cornice that runs along the wall.</summary>
public sealed record WallMoulding
{
    /// <summary>Height on the wall; positive.</summary>
    public required Length Height { get; init; }

    /// <summary>How far it stands out from the wall; positive.</summary>
    public required Length Projection { get; init; }

    /// <summary>Whether it stays where the casework comes; otherwise it is cut back to the run.</summary>
    public bool Stays { get; init; }
}

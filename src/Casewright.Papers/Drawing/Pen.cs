namespace Casewright.Papers.Drawing;

/// <summary>How a line is broken.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Hidden edges and marks.</summary>
    Dashed,

    /// <summary>Sight lines and centre lines.</summary>
    DashDot,

    /// <summary>Fine helping lines.</summary>
    Dotted,
}

/// <summary>A drawn line: weight in millimetres, tone and dash.</summary>
public sealed record Pen(double Weight, Tone Tone = Tone.Ink, Dash Dash = Dash.Solid)
{
    /// <summary>An edge of an object.</summary>
    public static Pen Object { get; } = new(0.4);

    /// <summary>A thin line inside an object.</summary>
    public static Pen Thin { get; } = new(0.2);

    /// <summary>The reference edge: always the heavy line.</summary>
    public static Pen Reference { get; } = new(1.1);

    /// <summary>Dimension and extension lines.</summary>
    public static Pen Dimension { get; } = new(0.2, Tone.Graphite);

    /// <summary>Grain and rules between rows.</summary>
    public static Pen Hair { get; } = new(0.2, Tone.Hairline);

    /// <summary>Rules under headings.</summary>
    public static Pen Rule { get; } = new(0.5);

    /// <summary>Edges that lie behind, and marks to be drawn on the work.</summary>
    public static Pen Hidden { get; } = new(0.3, Tone.Ink, Dash.Dashed);

    /// <summary>A splice's sight line.</summary>
    public static Pen SightLine { get; } = new(0.35, Tone.Chalk, Dash.DashDot);

    /// <summary>Lengths of dash, gap, dash, gap ... in millimetres; empty for an unbroken line.</summary>
    public IReadOnlyList<double> Pattern => Dash switch
    {
        Dash.Solid => [],
        Dash.Dashed => [1.8, 1.0],
        Dash.DashDot => [3.6, 0.9, 0.5, 0.9],
        Dash.Dotted => [0.3, 0.8],
        _ => throw new InvalidOperationException($"Unknown dash {Dash}."),
    };
}

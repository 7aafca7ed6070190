namespace Casewright.Papers.Drawing;

/// <summary>What a colour means; a <see cref="Palette"/> says how it looks on paper, on a light or on a dark screen.</summary>
public enum Tone
{
    /// <summary>Lines and words.</summary>
    Ink,

    /// <summary>Second words and dimension lines.</summary>
    Graphite,

    /// <summary>Grain, rules between rows.</summary>
    Hairline,

    /// <summary>What is joined or chosen.</summary>
    Chalk,

    /// <summary>Ground of a page or drawing.</summary>
    Paper,

    /// <summary>Ground of a field, sheet or table.</summary>
    Sheet,

    /// <summary>A face of wood.</summary>
    Wood,

    /// <summary>An edge of wood, or wood in shade.</summary>
    WoodEdge,

    /// <summary>A finding that stops the work.</summary>
    Stop,

    /// <summary>A finding that asks for care.</summary>
    Caution,

    /// <summary>A finding that holds.</summary>
    Pass,
}

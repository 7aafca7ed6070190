namespace Casewright.Engine.Cutting.Layouts;

/// <summary>Axis along which the parts of a region lie side by side.</summary>
internal static class Axis
{
    /// <summary>Parts side by side along the length: made by crosscuts.</summary>
    public const byte X = 0;

    /// <summary>Parts side by side across: made by rips.</summary>
    public const byte Y = 1;
}

/// <summary>A region of a bin: a piece, or a row of regions and one free end.</summary>
internal struct BinNode
{
    /// <summary>Marks a slot that holds no region.</summary>
    public const int Unused = -2;

    /// <summary>Marks a row of regions.</summary>
    public const int Row = -1;

    /// <summary>Kind of piece, <see cref="Row"/> or <see cref="Unused"/>.</summary>
    public int Kind;

    public int Parent;
    public int First;
    public int Next;

    /// <summary>Cuts from the sheet to this region: the sheet has level 0.</summary>
    public int Level;

    /// <summary>Axis of a row.</summary>
    public byte Axis;

    /// <summary>Whether a piece lies turned.</summary>
    public bool Turned;

    public long SizeX;
    public long SizeY;

    /// <summary>Extent of a row's free end along its axis.</summary>
    public long Free;
}

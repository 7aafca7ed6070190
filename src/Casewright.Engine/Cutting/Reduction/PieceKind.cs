namespace Casewright.Engine.Cutting.Reduction;

/// <summary>
/// One size of piece, a kerf added to both sizes. With a kerf added to the sheet too, pieces that fit edge to edge
/// here fit with kerfs between them on the saw, and nothing else needs to know of kerfs.
/// </summary>
/// <param name="SizeX">Length plus kerf.</param>
/// <param name="SizeY">Width plus kerf.</param>
/// <param name="MayTurn">Whether the turned position is another one and allowed.</param>
internal sealed record PieceKind(long SizeX, long SizeY, bool MayTurn)
{
    public double Area { get; } = (double)SizeX * SizeY;

    public bool Fits(long x, long y) => (SizeX <= x && SizeY <= y) || (MayTurn && SizeY <= x && SizeX <= y);
}

using Casewright.Model.Collections;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Tests.Verifying;

/// <summary>Writes the cuts of one sheet down as a person would: edges, strips of one fence setting, crosscuts, last trims.</summary>
internal sealed class SheetHand(string id, string stock, string material, decimal cost, bool bought)
{
    private readonly List<Cut> _cuts = [];
    private readonly List<Piece> _pieces = [];
    private readonly List<KeptOffcut> _offcuts = [];

    private static Length SheetLength => Length.FromMillimetres(2440);

    private static Length SheetWidth => Length.FromMillimetres(1220);

    private static Length Trim => Length.FromMillimetres(5);

    private static Length Kerf => Length.FromMillimetres(3);

    public ValueList<Piece> Pieces => _pieces.ToValueList();

    public SheetLayout Layout => new()
    {
        Id = id,
        Stock = stock,
        Material = material,
        Length = SheetLength,
        Width = SheetWidth,
        Trim = Trim,
        Kerf = Kerf,
        Cost = cost,
        Bought = bought,
        Cuts = _cuts.ToValueList(),
        Offcuts = _offcuts.ToValueList(),
    };

    /// <summary>The four factory edges. The line of a cut is the low side of its kerf, so the first ones run at trim less kerf.</summary>
    public SheetHand TrimEdges()
    {
        Rip(0, Trim - Kerf, Length.Zero, SheetLength, Trim);
        Rip(0, SheetWidth - Trim, Length.Zero, SheetLength, Trim);
        Crosscut(0, Trim - Kerf, Trim, SheetWidth - Trim, Trim);
        Crosscut(0, SheetLength - Trim, Trim, SheetWidth - Trim, Trim);
        return this;
    }

    /// <summary>Rips strips of these widths off, one after another, then crosscuts and trims the pieces laid into them.</summary>
    public SheetHand Strips(params (decimal Width, Piece[] Pieces)[] strips)
    {
        var y = Trim;
        foreach (var (width, _) in strips)
        {
            var high = y + Length.FromMillimetres(width);
            Rip(1, high, Trim, SheetLength - Trim, Length.FromMillimetres(width));
            y = high + Kerf;
        }

        Keep(Trim, y, SheetLength - Trim, SheetWidth - Trim);
        y = Trim;
        foreach (var (width, pieces) in strips)
        {
            Strip(y, Length.FromMillimetres(width), pieces);
            y += Length.FromMillimetres(width) + Kerf;
        }

        return this;
    }

    private void Strip(Length y, Length width, Piece[] pieces)
    {
        var x = Trim;
        foreach (var piece in pieces)
        {
            Crosscut(2, x + piece.Length, y, y + width, piece.Length);
            _pieces.Add(piece with { Stock = id, X = x, Y = y });
            x += piece.Length + Kerf;
        }

        Keep(x, y, SheetLength - Trim, y + width);
        foreach (var piece in _pieces.Where(piece => piece.Y == y && piece.Width < width))
            Rip(3, y + piece.Width, piece.X, piece.X + piece.Length, piece.Width);
    }

    private void Keep(Length x0, Length y0, Length x1, Length y1)
    {
        if (x1 - x0 >= Length.FromMillimetres(300) && y1 - y0 >= Length.FromMillimetres(100))
            _offcuts.Add(new(x0, y0, x1 - x0, y1 - y0));
    }

    private void Rip(int stage, Length y, Length x0, Length x1, Length setting) =>
        _cuts.Add(new(_cuts.Count + 1, CutKind.Rip, stage, x0, y, x1, y, setting));

    private void Crosscut(int stage, Length x, Length y0, Length y1, Length setting) =>
        _cuts.Add(new(_cuts.Count + 1, CutKind.Crosscut, stage, x, y0, x, y1, setting));
}

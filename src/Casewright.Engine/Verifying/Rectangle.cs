using Casewright.Model.Cutting;
using Casewright.Model.Measure;

namespace Casewright.Engine.Verifying;

/// <summary>A rectangle on a sheet: x along its length, y across, both from the raw edges.</summary>
internal readonly record struct Rectangle(Length X0, Length Y0, Length X1, Length Y1)
{
    public Length SizeX => X1 - X0;

    public Length SizeY => Y1 - Y0;

    public bool IsEmpty => X1 <= X0 || Y1 <= Y0;

    public static Rectangle Of(SheetLayout sheet) => new(Length.Zero, Length.Zero, sheet.Length, sheet.Width);

    /// <summary>The part of a sheet that pieces may lie in.</summary>
    public static Rectangle Usable(SheetLayout sheet) => new(sheet.Trim, sheet.Trim, sheet.Length - sheet.Trim, sheet.Width - sheet.Trim);

    public static Rectangle Of(Piece piece) => Of(piece.X, piece.Y, piece.Length, piece.Width, piece.Rotated);

    public static Rectangle Of(Length x, Length y, Length length, Length width, bool rotated) => rotated
        ? new(x, y, x + width, y + length)
        : new(x, y, x + length, y + width);

    public static Rectangle Of(KeptOffcut offcut) => new(offcut.X, offcut.Y, offcut.X + offcut.Length, offcut.Y + offcut.Width);

    public bool Contains(Rectangle other) => X0 <= other.X0 && Y0 <= other.Y0 && other.X1 <= X1 && other.Y1 <= Y1;

    /// <summary>What of it lies inside another; empty when nothing does.</summary>
    public Rectangle Within(Rectangle other) => new(
        Length.Max(X0, other.X0),
        Length.Max(Y0, other.Y0),
        Length.Min(X1, other.X1),
        Length.Min(Y1, other.Y1));

    /// <summary>Whether the two come nearer than <paramref name="gap"/> both along and across.</summary>
    public bool IsNearerThan(Length gap, Rectangle other) =>
        X0 < other.X1 + gap && other.X0 < X1 + gap && Y0 < other.Y1 + gap && other.Y0 < Y1 + gap;

    public override string ToString() => $"x {X0} to {X1}, y {Y0} to {Y1}";
}

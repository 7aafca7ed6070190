using System.Globalization;
using Casewright.Model.Cutting;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Splices;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>The two pieces of a splice and their part.</summary>
internal sealed record SplicePair(Part Part, Splice Splice, Piece Near, Piece Far)
{
    /// <summary>
    /// Whether the reference edge lies away from the maker (up on the drawing) when the reference face is up and the reference end is
    /// at the left. It follows from the part's axes: seen on the reference face, with x to the right and z away from the eye, y runs
    /// down when x, y, z are right-handed. So a left side and a right side are drawn as they lie on the bench, never mirrored in words.
    /// </summary>
    public bool ReferenceEdgeUp => IsRightHanded(Part.Place);

    internal static bool IsRightHanded(Placement place)
    {
        var (x, y, z) = (Vector(place.AlongLength), Vector(place.AlongWidth), Vector(place.IntoThickness));
        var cross = ((x.Y * y.Z) - (x.Z * y.Y), (x.Z * y.X) - (x.X * y.Z), (x.X * y.Y) - (x.Y * y.X));
        return (cross.Item1 * z.X) + (cross.Item2 * z.Y) + (cross.Item3 * z.Z) > 0;
    }

    private static (int X, int Y, int Z) Vector(Axis axis) => axis switch
    {
        Axis.Right => (1, 0, 0),
        Axis.Left => (-1, 0, 0),
        Axis.Up => (0, 1, 0),
        Axis.Down => (0, -1, 0),
        Axis.Out => (0, 0, 1),
        _ => (0, 0, -1),
    };
}

/// <summary>
/// Draws one face of a splice: both pieces as they lie on the bench, tenons, connectors, match triangle and pair letter. Long pieces
/// are shortened by a break, so that the joint is drawn to one scale in both directions.
/// </summary>
internal sealed class SpliceFace
{
    private const double JointGap = 9;
    private const double ArrowRoom = 19;
    private const double LetterSize = 20;

    private static readonly Lettering EdgeName = new(10, Weight: FontWeight.SemiBold);
    private static readonly Lettering Number = new(10, FontFamily.BarlowCondensed, FontWeight.Bold);

    private readonly SplicePair _pair;
    private readonly Sketch _sketch;
    private readonly Face _face;
    private readonly Box _area;
    private readonly double _scale;
    private readonly double _nearLength;
    private readonly double _farLength;
    private readonly bool _edgeUp;

    public SpliceFace(SplicePair pair, Sketch sketch, Face face, Box area)
    {
        (_pair, _sketch, _face, _area) = (pair, sketch, face, area);
        _edgeUp = pair.ReferenceEdgeUp == (face == Face.Reference);
        _scale = Math.Min(area.Height / Mm(pair.Part.Width), 0.5);
        (_nearLength, _farLength) = Lengths(area.Width - ArrowRoom - JointGap);
    }

    /// <summary>The box of the piece nearer the reference end.</summary>
    public Box Near => new(_area.Left + ArrowRoom, _area.Top, _nearLength, Mm(_pair.Part.Width) * _scale);

    /// <summary>The box of the other piece.</summary>
    public Box Far => new(Near.Right + JointGap, _area.Top, _farLength, Near.Height);

    /// <summary>Draws the face.</summary>
    public void Draw()
    {
        DrawPiece(Near, _pair.Near, joinsRight: true, IsBroken(_pair.Near, _nearLength));
        DrawPiece(Far, _pair.Far, joinsRight: false, IsBroken(_pair.Far, _farLength));
        Symbols.Foot(_sketch, _area.Left, Near.Centre.Y - 2, 6.5, Words.EndsOf(_pair.Part).Start);
        DrawReferenceEdge();
        DrawPinRows();
        DrawTriangle();
        for (var i = 0; i < _pair.Splice.Tenons.Count; i++)
            DrawTenon(_pair.Splice.Tenons[i]);
        foreach (var connector in _pair.Splice.Connectors)
            DrawConnector(connector);
        DrawOverlap();
        DrawNumbers();
    }

    private (double Near, double Far) Lengths(double room)
    {
        var (near, far) = (Mm(_pair.Near.To - _pair.Near.From) * _scale, Mm(_pair.Far.To - _pair.Far.From) * _scale);
        if (near + far <= room)
            return (near, far);
        var least = room * 0.3;
        return near <= least ? (near, Math.Min(far, room - near))
            : far <= least ? (Math.Min(near, room - far), far)
            : Shared(near, far, room, least);
    }

    private static (double Near, double Far) Shared(double near, double far, double room, double least)
    {
        var share = Math.Clamp(room * near / (near + far), least, room - least);
        return (Math.Min(near, share), Math.Min(far, room - share));
    }

    private bool IsBroken(Piece piece, double drawn) => Mm(piece.To - piece.From) * _scale > drawn + 0.01;

    private void DrawPiece(Box box, Piece piece, bool joinsRight, bool broken)
    {
        var joint = joinsRight ? box.Right : box.Left;
        var outer = joinsRight ? box.Left : box.Right;
        _sketch.Group($"piece:{piece.Id}:{_face}", $"{_pair.Part.Name}, piece {piece.Id}", "piece", group =>
        {
            group.Rectangle(box, null, Tone.Sheet);
            DrawGrain(group, box, joint);
            group.Line(box.Left, box.Top, box.Right, box.Top, Pen.Object);
            group.Line(box.Left, box.Bottom, box.Right, box.Bottom, Pen.Object);
            group.Line(joint, box.Top, joint, box.Bottom, Pen.Object);
            group.Line(outer, box.Top, outer, box.Bottom, Pen.Object);
            if (broken)
                DrawBreak(group, box, outer + ((joint - outer) * 0.28));
        });
    }

    private void DrawGrain(Sketch sketch, Box box, double joint)
    {
        if (_pair.Part.Grain == Grain.None)
            return;
        var (left, right) = joint == box.Right ? (box.Left + (box.Width * 0.06), box.Left + (box.Width * 0.55)) : (box.Left + (box.Width * 0.5), box.Right - (box.Width * 0.06));
        if (_pair.Part.Grain == Grain.AlongLength)
        {
            foreach (var share in (double[])[0.28, 0.5, 0.72])
                sketch.Line(left, box.Top + (box.Height * share), right, box.Top + (box.Height * share), Pen.Hair);
        }
    }

    // The drafting sign of a shortened part: two wavering lines with nothing between.
    private static void DrawBreak(Sketch sketch, Box box, double x)
    {
        const double Half = 1.4, Throw = 1.6;
        sketch.Rectangle(new(x - Half, box.Top - 0.5, 2 * Half, box.Height + 1), null, Tone.Paper);
        foreach (var side in (double[])[-Half, Half])
        {
            var middle = box.Centre.Y;
            sketch.Chain([new(x + side, box.Top - 1), new(x + side, middle - 2.4), new(x + side - Throw, middle - 0.8), new(x + side + Throw, middle + 0.8), new(x + side, middle + 2.4), new(x + side, box.Bottom + 1)], Pen.Thin);
        }
    }

    private void DrawReferenceEdge()
    {
        var y = _edgeUp ? Near.Top : Near.Bottom;
        foreach (var box in (Box[])[Near, Far])
            _sketch.Line(box.Left, y, box.Right, y, Pen.Reference);
        var text = $"reference edge ({Words.ReferenceEdgeOf(_pair.Part)})";
        var baseline = _edgeUp ? y + 1.8 + EdgeName.CapHeight : y - 2.2;
        _sketch.Text(text, Near.Left + 3, baseline, EdgeName, backed: true);
    }

    private void DrawTenon(Tenon tenon)
    {
        var y = YOf(tenon.Offset);
        double half = Mm(tenon.Width + tenon.Play) * _scale / 2, depth = Math.Min(Mm(tenon.MortiseDepth) * _scale, Near.Width / 3);
        _sketch.Rectangle(new(Near.Right - depth, y - half, depth, 2 * half), null, Tone.Ink);
        _sketch.Rectangle(new(Far.Left, y - half, depth, 2 * half), null, Tone.Ink);
    }

    // Round access hole on the foot's side, slot on the other; dashed when they are on the face that lies down.
    private void DrawConnector(DrawConnector connector)
    {
        var y = YOf(connector.Offset);
        var here = _pair.Splice.AccessFace == _face;
        var pen = here ? Pen.Object : new Pen(0.25, Tone.Ink, Dash.Dashed);
        var radius = Math.Max(1.1, 7 * _scale);
        if (here)
            _sketch.Circle(Near.Right - (22 * _scale) - radius, y, radius, pen);
        else
            _sketch.Rectangle(new(Near.Right - (22 * _scale) - radius, y - radius, (22 * _scale) + radius, 2 * radius), pen);
        _sketch.Rectangle(new(Far.Left, y - radius, (22 * _scale) + radius, 2 * radius), pen);
    }

    private void DrawOverlap()
    {
        if (_pair.Splice.Method is not (SpliceMethod.HalfLap or SpliceMethod.Scarf))
            return;
        double near = Mm(_pair.Near.AllowanceEnd) * _scale, far = Mm(_pair.Far.AllowanceStart) * _scale;
        foreach (var box in (Box[])[new(Near.Right - far, Near.Top, far, Near.Height), new(Far.Left, Far.Top, near, Far.Height)])
        {
            if (box.Width > 0)
                _sketch.Add(Hatch.Lines([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], 45, 2, Pen.Thin));
        }
    }

    // The triangle takes the free band around its offset, so that no line of it crosses a mortise or a hole.
    private void DrawTriangle()
    {
        var half = MarkHalf;
        var y = YOf(_pair.Splice.MarkOffset);
        var toEdge = _edgeUp ? -1 : 1;
        var middle = (Near.Right + Far.Left) / 2;
        var halfWidth = Math.Clamp(half * 2.2, JointGap - 0.5, 20);
        if (half > 0.3)
            Symbols.Triangle(_sketch, middle, y + (toEdge * half), y - (toEdge * half), halfWidth);
        var letter = new Lettering(LetterSize, Weight: FontWeight.Bold);
        var deepest = _pair.Splice.Tenons.Select(tenon => Mm(tenon.MortiseDepth)).DefaultIfEmpty(0).Max() * _scale;
        var away = (JointGap / 2) + Math.Max(halfWidth - (JointGap / 2), Math.Max(deepest, 36 * _scale)) + 4;
        var baseline = Math.Clamp(y + (letter.CapHeight / 2), Near.Top + letter.CapHeight + 1.6, Near.Bottom - 2);
        _sketch.Text(_pair.Splice.PairLetter, middle - away, baseline, letter, Anchor.End, backed: true);
        _sketch.Text(_pair.Splice.PairLetter, middle + away, baseline, letter, Anchor.Start, backed: true);
    }

    // Half the height of the triangle on paper, with a hair of white left to the nearest mortise, hole or edge.
    private double MarkHalf => Math.Clamp((FreeHalfBand() * _scale) - 0.2, 0, Near.Height * 0.2);

    // Half the width (mm of the part) of the band around the mark's offset that no mortise, hole or edge enters.
    private double FreeHalfBand()
    {
        var mark = Mm(_pair.Splice.MarkOffset);
        var free = Math.Min(mark, Mm(_pair.Part.Width) - mark);
        foreach (var tenon in _pair.Splice.Tenons)
            free = Math.Min(free, Math.Abs(Mm(tenon.Offset) - mark) - (Mm(tenon.Width + tenon.Play) / 2));
        foreach (var connector in _pair.Splice.Connectors)
            free = Math.Min(free, Math.Abs(Mm(connector.Offset) - mark) - 8);
        return free;
    }

    private void DrawPinRows()
    {
        foreach (var row in _pair.Part.Machining.OfType<PinRow>().Where(row => row.Face == _face))
        {
            for (var i = 0; i < row.Count; i++)
            {
                if (PlaceOf(row.FirstX + (row.Pitch * i)) is { } x)
                    _sketch.Circle(x, YOf(row.Y), Math.Max(0.3, Mm(row.Diameter) * _scale / 2), new(0.15, Tone.Graphite));
            }
        }
    }

    // Only the stretch at the joint's side of a break is drawn to scale.
    private double? PlaceOf(Length position)
    {
        var offset = Mm(position - _pair.Splice.Position) * _scale;
        return offset < 0
            ? -offset < _nearLength * 0.66 ? Near.Right + offset : null
            : offset < _farLength * 0.66 ? Far.Left + offset : null;
    }

    private void DrawNumbers()
    {
        var last = double.NegativeInfinity;
        foreach (var (offset, number) in Holes(_pair.Splice).Select((hole, i) => (hole.Offset, i + 1)).OrderBy(hole => YOf(hole.Offset)))
        {
            var y = YOf(offset);
            if (y - last < Number.CapHeight + 0.8)
                continue;
            last = y;
            var middle = (Near.Right + Far.Left) / 2;
            // Where the triangle takes the gap, the number stands beside its hole instead.
            if (Math.Abs(y - YOf(_pair.Splice.MarkOffset)) < MarkHalf + (Number.CapHeight / 2) + 0.4)
                middle = Far.Left + (22 * _scale) + Math.Max(1.1, 7 * _scale) + 2.2;
            else
                _sketch.Line(Near.Right + 0.8, y, Far.Left - 0.8, y, new(0.15, Tone.Graphite, Dash.Dotted));
            _sketch.Add(new TextItem(number.ToString(CultureInfo.InvariantCulture), new(middle, y + (Number.CapHeight / 2)), Number, Anchor.Middle, Backed: true));
        }
    }

    /// <summary>Tenons and connectors by their distance from the reference edge.</summary>
    internal static IEnumerable<(Length Offset, bool IsTenon)> Holes(Splice splice) =>
        splice.Tenons.Select(tenon => (tenon.Offset, true)).Concat(splice.Connectors.Select(connector => (connector.Offset, false))).OrderBy(hole => hole.Offset);

    private double YOf(Length offset) => _edgeUp ? Near.Top + (Mm(offset) * _scale) : Near.Bottom - (Mm(offset) * _scale);

    private static double Mm(Length length) => (double)length.Millimetres;
}

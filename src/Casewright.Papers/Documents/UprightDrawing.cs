using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>
/// One face of an upright as one looks at it, foot down, with its dados, holes, grooves and joints, and a ladder of heights from the
/// foot beside it.
/// </summary>
internal sealed class UprightDrawing(PlanIndex index, Part upright, Face face)
{
    /// <summary>Width of the ladder of heights at the left of the drawing, in millimetres.</summary>
    public const double LadderWidth = 17;

    private const double TitleHeight = 15;
    private const double FootHeight = 17;

    private static readonly Lettering Code = Lettering.ListCode;
    private static readonly Lettering Height = Lettering.Figure.Sized(10.5);
    private static readonly Lettering Note = Lettering.Small;

    private readonly bool _edgeLeft = UprightMarks.ReferenceEdgeLeft(upright, face);

    /// <summary>Scale at which an upright fits a height and a width, ladder not counted.</summary>
    public static double ScaleFor(Part upright, double height, double width) => Math.Min(
        (height - TitleHeight - FootHeight) / PartBox.Mm(upright.Length), width / PartBox.Mm(upright.Width));

    /// <summary>Draws into a column: ladder at its left, the face beside it.</summary>
    public void Draw(Sketch sketch, Box column, double scale)
    {
        var body = new Box(column.Left + LadderWidth, column.Top + TitleHeight, PartBox.Mm(upright.Width) * scale, PartBox.Mm(upright.Length) * scale);
        var width = column.Right - column.Left;
        sketch.Text(Fitting(upright.Id, Code, width), column.Left, column.Top + 5.4, Code);
        var name = face == Face.Reference ? upright.ReferenceFaceName : upright.OppositeFaceName;
        sketch.Text(Fitting(name.ToUpperInvariant() + " face", Lettering.BodyStrong, width), column.Left, column.Top + 10.4, Lettering.BodyStrong);
        sketch.Group($"upright:{upright.Id}:{face}", $"{upright.Name}, {name} face", "part", group => DrawBody(group, body, scale));
        DrawFoot(sketch, body, column);
        DrawLadder(sketch, body, scale);
    }

    private static string Fitting(string text, Lettering lettering, double width) => Kit.Fitting.Cut(text, lettering, width);

    private double XOf(Box body, double scale, Length y) => _edgeLeft ? body.Left + (PartBox.Mm(y) * scale) : body.Right - (PartBox.Mm(y) * scale);

    private static double YOf(Box body, double scale, Length x) => body.Bottom - (PartBox.Mm(x) * scale);

    private void DrawBody(Sketch sketch, Box body, double scale)
    {
        sketch.Rectangle(body, Pen.Thin, Tone.Sheet);
        foreach (var work in upright.Machining)
            DrawWork(sketch, body, scale, work);
        foreach (var splice in index.SplicesOf(upright))
            sketch.Line(body.Left - 1.5, YOf(body, scale, splice.Position), body.Right + 1.5, YOf(body, scale, splice.Position), Pen.SightLine);
        var edge = _edgeLeft ? body.Left : body.Right;
        sketch.Line(edge, body.Top, edge, body.Bottom, Pen.Reference);
    }

    private void DrawWork(Sketch sketch, Box body, double scale, Machining work)
    {
        switch (work)
        {
            case Dado dado when dado.Face == face:
                sketch.Rectangle(Area(body, scale, dado.X, dado.X + dado.Width, dado.FromY, dado.ToY), Pen.Thin, Tone.WoodEdge);
                break;
            case Groove groove when groove.Face == face:
                sketch.Rectangle(Area(body, scale, groove.FromX, groove.ToX, groove.Y, groove.Y + groove.Width), Pen.Thin, Tone.WoodEdge);
                break;
            case Rabbet rabbet when rabbet.Face == face:
                DrawRabbet(sketch, body, scale, rabbet);
                break;
            case PinRow row when row.Face == face:
                for (var i = 0; i < row.Count; i++)
                    sketch.Circle(XOf(body, scale, row.Y), YOf(body, scale, row.FirstX + (row.Pitch * i)), Math.Max(0.35, PartBox.Mm(row.Diameter) * scale / 2), null, Tone.Ink);
                break;
            case Notch notch:
                sketch.Rectangle(Area(body, scale, notch.X, notch.X + notch.LengthX, notch.Y, notch.Y + notch.LengthY), Pen.Thin, Tone.Paper);
                break;
            case CutOut cut:
                sketch.Rectangle(Area(body, scale, cut.X, cut.X + cut.LengthX, cut.Y, cut.Y + cut.LengthY), Pen.Object, Tone.Paper);
                break;
            case Bevel bevel when bevel.Edge is PartEdge.Start or PartEdge.End:
                DrawBevel(sketch, body, scale, bevel);
                break;
            case Clip clip:
                DrawClip(sketch, body, scale, clip);
                break;
            case Bore bore when bore.Face == face:
                sketch.Circle(XOf(body, scale, bore.Y), YOf(body, scale, bore.X), Math.Max(0.5, PartBox.Mm(bore.Diameter) * scale / 2), Pen.Thin, Tone.Paper);
                break;
            case HardwareZone zone:
                DrawZone(sketch, body, scale, zone);
                break;
            default:
                break;
        }
    }

    // Cut away on the short face; on the long one a hidden line shows where the other ends.
    private void DrawBevel(Sketch sketch, Box body, double scale, Bevel bevel)
    {
        var (from, to) = bevel.Edge == PartEdge.Start ? (Length.Zero, bevel.Setback) : (upright.Length - bevel.Setback, upright.Length);
        var inner = YOf(body, scale, bevel.Edge == PartEdge.Start ? to : from);
        if (bevel.LongFace == face)
            sketch.Line(body.Left, inner, body.Right, inner, Pen.Hidden);
        else
            sketch.Rectangle(Area(body, scale, from, to, Length.Zero, upright.Width), Pen.Thin, Tone.Paper);
    }

    private void DrawClip(Sketch sketch, Box body, double scale, Clip clip)
    {
        var (x, inward) = clip.End == PartEdge.Start ? (Length.Zero, clip.AlongX) : (upright.Length, upright.Length - clip.AlongX);
        var (y, across) = clip.Edge == PartEdge.Reference ? (Length.Zero, clip.AlongY) : (upright.Width, upright.Width - clip.AlongY);
        Point At(Length along, Length over) => new(XOf(body, scale, over), YOf(body, scale, along));
        sketch.Area([At(x, y), At(inward, y), At(x, across)], Pen.Thin, Tone.Paper);
    }

    private void DrawRabbet(Sketch sketch, Box body, double scale, Rabbet rabbet)
    {
        var (from, to) = rabbet.Edge == PartEdge.Opposite ? (upright.Width - rabbet.Width, upright.Width) : (Length.Zero, rabbet.Width);
        if (rabbet.Edge is PartEdge.Reference or PartEdge.Opposite)
            sketch.Rectangle(Area(body, scale, Length.Zero, upright.Length, from, to), Pen.Thin, Tone.WoodEdge);
    }

    // A dashed bracket on the edge away from the reference edge.
    private void DrawZone(Sketch sketch, Box body, double scale, HardwareZone zone)
    {
        var (x, out1) = _edgeLeft ? (body.Right, 1.6) : (body.Left, -1.6);
        var (low, high) = (YOf(body, scale, zone.FromX), YOf(body, scale, zone.ToX));
        sketch.Chain([new(x, low), new(x + out1, low), new(x + out1, high), new(x, high)], new Pen(0.3, Tone.Graphite, Dash.Dashed));
    }

    private Box Area(Box body, double scale, Length fromX, Length toX, Length fromY, Length toY)
    {
        var (a, b) = (XOf(body, scale, fromY), XOf(body, scale, toY));
        return Box.Around([new(a, YOf(body, scale, fromX)), new(b, YOf(body, scale, toX))]);
    }

    private void DrawFoot(Sketch sketch, Box body, Box column)
    {
        Symbols.ArrowDown(sketch, body.Centre.X, body.Bottom + 8.4, 4);
        sketch.Text(Words.EndsOf(upright).Start, body.Centre.X + 3.4, body.Bottom + 5.8, new(Lettering.Smallest, Weight: FontWeight.Bold));
        var words = $"heavy: {Words.ReferenceEdgeOf(upright)} edge";
        sketch.Text(Fitting(words, Note, column.Width), column.Left, body.Bottom + 13.4, Note);
    }

    // Heights from the foot, moved apart where they would touch, each joined to its mark.
    private void DrawLadder(Sketch sketch, Box body, double scale)
    {
        const double Least = 4;
        var marks = Heights().ToList();
        var places = new List<double>();
        for (var i = 0; i < marks.Count; i++)
        {
            var wanted = YOf(body, scale, marks[i]);
            places.Add(i == 0 ? wanted : Math.Min(wanted, places[i - 1] - Least));
        }

        for (var i = marks.Count - 1; i >= 0; i--)
        {
            var highest = body.Top + ((marks.Count - 1 - i) * Least);
            places[i] = Math.Max(places[i], highest);
        }

        for (var i = 0; i < marks.Count; i++)
        {
            var y = YOf(body, scale, marks[i]);
            sketch.Chain([new(body.Left - 0.8, y), new(body.Left - 2.2, y), new(body.Left - 4, places[i])], Pen.Dimension);
            sketch.TextCentred(index.Figures.Main(marks[i]), body.Left - 4.6, places[i], Height, Anchor.End);
        }
    }

    private IEnumerable<Length> Heights() => UprightMarks.Of(index, upright)
        .Where(mark => mark.Face is null || mark.Face == face)
        .Where(mark => mark.Kind != UprightMarkKind.Along)
        .SelectMany(mark => mark.Kind is UprightMarkKind.Pins or UprightMarkKind.Cut or UprightMarkKind.Screws ? new[] { mark.From, mark.To } : [mark.From])
        .Append(upright.Length).Where(x => x > Length.Zero).Distinct().Order();
}

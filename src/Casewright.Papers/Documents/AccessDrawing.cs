using Casewright.Engine.Access;
using Casewright.Engine.Checks.Mechanics;
using Casewright.Model.Parts;
using Casewright.Model.Site;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;

namespace Casewright.Papers.Documents;

/// <summary>Drawings of cases being stood up and carried through, to scale.</summary>
internal static class AccessDrawing
{
    private const double Margin = 11;

    private static readonly Lettering Figure = Lettering.Figure.Sized(10);

    /// <summary>The case lying, on its diagonal and standing, from the side, under the ceiling.</summary>
    public static void Standing(Sketch sketch, Box area, SiteFigures site, CaseBox box, StandingUp way)
    {
        var (h, d) = (way.CaseHeight, box.Depth.Metres);
        var foot = way.Place == StandingPlace.OnBase ? box.Y.Metres : 0;
        var diagonal = Math.Sqrt((h * h) + (d * d));
        var tall = Math.Max(way.Have, foot + diagonal);
        var scale = Math.Min((area.Height - 8) / tall, (area.Width - Margin - 4) / (h + d + 0.1));
        var (floor, pivot) = (area.Bottom - 3, area.Left + 4 + ((d + 0.05) * scale));
        Point At(double x, double y) => new(pivot + (x * scale), floor - ((foot + y) * scale));
        var right = pivot + (h * scale);
        if (foot > 0)
            sketch.Rectangle(new(pivot - (d * scale), floor - (foot * scale), (h + d) * scale, foot * scale), Pen.Thin, Tone.WoodEdge);
        sketch.Area([At(0, 0), At(h, 0), At(h, d), At(0, d)], Pen.Hidden);
        sketch.Area([At(0, 0), At(-d, 0), At(-d, h), At(0, h)], Pen.Hidden);
        var (sin, cos) = Math.SinCos(Math.Atan2(h, d));
        sketch.Area([At(0, 0), At(h * cos, h * sin), At((h * cos) - (d * sin), (h * sin) + (d * cos)), At(-d * sin, d * cos)], Pen.Object, Tone.Wood);
        sketch.Line(area.Left, floor, right + 2, floor, Pen.Rule);
        var ceiling = floor - (way.Have * scale);
        sketch.Line(area.Left, ceiling, right + 2, ceiling, way.Passes ? Pen.Rule : new(0.6, Tone.Stop));
        DimensionLine.Vertical(sketch, ceiling, floor, right + 8, right + 2, site.Metres(way.Have), Figure);
    }

    /// <summary>A box at a narrow place.</summary>
    public static void Passing(Sketch sketch, Box area, SiteFigures site, PassageFit fit)
    {
        if (fit.Turning is { } turning && turning > 0)
            Turn(sketch, area, site, fit);
        else if (fit.Passage.Kind == PassageKind.LiftCar)
            Lift(sketch, area, site, fit);
        else
            Opening(sketch, area, site, fit);
    }

    /// <summary>From above: both passages, the box leaning on both outer walls at the angle where the inner corner is tightest.</summary>
    private static void Turn(Sketch sketch, Box area, SiteFigures site, PassageFit fit)
    {
        var (a, b) = (fit.Passage.Width.Metres, (fit.Passage.NextWidth ?? fit.Passage.Width).Metres);
        var (l, w) = (Math.Max(fit.Hold.Along, fit.Hold.Across), Math.Min(fit.Hold.Along, fit.Hold.Across));
        var (cos, sin) = Math.SinCos(CorridorTurn.TightestAngle(a, b, w));
        var (wide, high) = (Math.Max(a, (l * cos) + (w * sin)) + 0.15, Math.Max(b, (l * sin) + (w * cos)) + 0.15);
        var scale = Math.Min((area.Width - Margin - 3) / wide, (area.Height - Margin - 2) / high);
        Point At(double x, double y) => new(area.Left + 2 + (x * scale), area.Top + 2 + (y * scale));
        sketch.Chain([At(0, high), At(0, 0), At(wide, 0)], Pen.Rule);
        sketch.Chain([At(a, high), At(a, b), At(wide, b)], Pen.Rule);
        sketch.Area([At(l * cos, 0), At((l * cos) + (w * sin), w * cos), At(w * sin, (l * sin) + (w * cos)), At(0, l * sin)], fit.Passes ? Pen.Object : new(0.4, Tone.Stop), Tone.Wood);
        sketch.Circle(At(a, b).X, At(a, b).Y, 0.9, null, fit.Passes ? Tone.Ink : Tone.Stop);
        DimensionLine.Horizontal(sketch, At(0, 0).X, At(a, 0).X, At(0, high).Y + 4, At(0, high).Y, site.Metres(a), Figure);
        DimensionLine.Vertical(sketch, At(0, 0).Y, At(0, b).Y, At(wide, 0).X + 5, At(wide, 0).X, site.Metres(b), Figure);
    }

    /// <summary>From the front: the opening and the end of the box in it.</summary>
    private static void Opening(Sketch sketch, Box area, SiteFigures site, PassageFit fit)
    {
        var high = fit.Passage.Kind == PassageKind.Stair ? fit.Passage.Height.Metres * Math.Cos(double.DegreesToRadians(fit.Passage.Pitch ?? 0)) : fit.Passage.Height.Metres;
        Framed(sketch, area, site, (fit.Passage.Clear.Metres, high), (fit.Hold.Across, fit.Hold.Up), 0, fit.Passes);
    }

    /// <summary>Leaning from the side, or level from above; the door is told in words.</summary>
    private static void Lift(Sketch sketch, Box area, SiteFigures site, PassageFit fit)
    {
        var depth = (fit.Passage.NextWidth ?? fit.Passage.Width).Metres;
        if (fit.Hold.Tip > 0)
            Framed(sketch, area, site, (depth, fit.Passage.Height.Metres), (fit.Hold.Long, fit.Hold.Thick), double.DegreesToRadians(fit.Hold.Tip), fit.Passes);
        else
            Framed(sketch, area, site, (fit.Passage.Width.Metres, depth), (fit.Hold.Across, fit.Hold.Along), 0, fit.Passes);
    }

    private static void Framed(Sketch sketch, Box area, SiteFigures site, (double Wide, double High) frame, (double Wide, double High) box, double tip, bool passes)
    {
        var (wide, high) = (Math.Max(frame.Wide, Tipping.Along(box.Wide, box.High, tip)), Math.Max(frame.High, Tipping.Height(box.Wide, box.High, tip)));
        var scale = Math.Min((area.Width - Margin - 4) / wide, (area.Height - Margin - 2) / high);
        var (left, floor) = (area.Left + 3, area.Top + 2 + (high * scale));
        Point At(double x, double y) => new(left + (x * scale), floor - (y * scale));
        var (sin, cos) = Math.SinCos(tip);
        var shift = Math.Max(0, (frame.Wide - Tipping.Along(box.Wide, box.High, tip)) / 2) + (box.High * sin);
        sketch.Area(
            [At(shift, 0), At(shift + (box.Wide * cos), box.Wide * sin), At(shift + (box.Wide * cos) - (box.High * sin), (box.Wide * sin) + (box.High * cos)), At(shift - (box.High * sin), box.High * cos)],
            passes ? Pen.Object : new(0.4, Tone.Stop),
            Tone.Wood);
        sketch.Area([At(0, 0), At(frame.Wide, 0), At(frame.Wide, frame.High), At(0, frame.High)], Pen.Rule);
        DimensionLine.Horizontal(sketch, At(0, 0).X, At(frame.Wide, 0).X, floor + 4, floor, site.Metres(frame.Wide), Figure);
        DimensionLine.Vertical(sketch, At(0, frame.High).Y, floor, At(wide, 0).X + 5, At(wide, 0).X, site.Metres(frame.High), Figure);
    }
}

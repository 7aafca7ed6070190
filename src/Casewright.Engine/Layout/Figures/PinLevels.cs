using System.Globalization;
using Casewright.Engine.Layout.Fronts;
using Casewright.Model.Collections;
using Casewright.Model.Measure;

namespace Casewright.Engine.Layout.Figures;

/// <summary>
/// Pin rows and the places of loose shelves: N = ⌊(span − start − stop)/p⌋ + 1 holes in an opening, the shelves shared out so that
/// what is left between them is as even as the holes allow.
/// </summary>
internal sealed class PinLevels(CaseFigures box, ProblemList problems)
{
    /// <summary>Nearest that a hole comes to a fixed panel (60 mm; common practice, no source).</summary>
    public static Length NearestToPanel { get; } = Length.FromMillimetres(60);

    private readonly RunFigures _run = box.Run;

    /// <summary>The openings that hold loose shelves; problems go to the list.</summary>
    public ValueList<PinLevel> Find()
    {
        var wanted = box.Interior.Loose;
        var path = box.InteriorPath + ".loose";
        if (wanted < 0)
            problems.Add(path, "The number of loose shelves is negative.", Text(wanted), "0 or more");
        if (wanted <= 0 || !CheckRows())
            return [];
        var openings = Openings();
        var room = openings.Sum(o => o.Most);
        if (room < wanted)
        {
            problems.Add(path, "The pin rows have no room for so many loose shelves.", Text(wanted), $"at most {Text(room)} here, or a smaller joinery.pinMargin");
            return [];
        }

        var shares = Share(openings, wanted);
        return openings.Zip(shares)
            .Where(x => x.Second > 0)
            .Select(x => new PinLevel(x.First.Low, x.First.High, x.First.FirstHole, x.First.Holes, Rest(x.First, x.Second), x.First.Setback))
            .ToValueList();
    }

    private bool CheckRows()
    {
        var joinery = _run.Joinery;
        var path = _run.Path + ".joinery";
        var before = problems.All.Count;
        problems.Positive(path + ".pinPitch", "pitch of pin holes", joinery.PinPitch);
        problems.Positive(path + ".pinDiameter", "diameter of pin holes", joinery.PinDiameter);
        problems.Positive(path + ".pinDepth", "depth of pin holes", joinery.PinDepth);
        problems.Least(path + ".pinMargin", "margin of pin rows", joinery.PinMargin, Length.Zero);
        var most = _run.T - Length.FromMillimetres(5);
        if (joinery.PinDepth > most)
            problems.Add(path + ".pinDepth", "The pin holes nearly go through.", joinery.PinDepth, $"at most {problems.Say(most)} in this panel");
        if (joinery.PinPitch <= joinery.PinDiameter)
            problems.Add(path + ".pinPitch", "The pin holes run into each other.", joinery.PinPitch, $"more than {problems.Say(joinery.PinDiameter)}");
        var depth = _run.UprightFront - _run.BackFront - box.Fronts.Select(f => f.Into(_run)).Append(Length.Zero).Max();

        // Rows may stand half a pitch further in on the right face of a partition.
        var rows = joinery.PinPitch + joinery.PinDiameter;
        if (joinery.PinInset <= joinery.PinDiameter || depth <= (joinery.PinInset * 2) + rows)
            problems.Add(path + ".pinInset", "There is no room for a front and a rear pin row.", joinery.PinInset, $"more than {problems.Say(joinery.PinDiameter)} and less than half of {problems.Say(depth - rows)}");
        return problems.All.Count == before;
    }

    private sealed record Opening(Length Low, Length High, Length FirstHole, int Holes, int Stride, Length Setback)
    {
        public Length Span => High - Low;

        public int Most => Holes == 0 ? 0 : ((Holes - 1) / Stride) + 1;
    }

    private Opening[] Openings()
    {
        var lows = box.Fixed.Select(f => f.Upper).Prepend(box.BottomUpper);
        var highs = box.Fixed.Select(f => f.Upper - _run.T).Append(box.TopUnder);
        return [.. lows.Zip(highs).Select((x, i) => Open(x.First, Length.Min(x.Second, box.LowUnder), box.FrontOf(i)))];
    }

    /// <summary>Drawers leave no room for loose shelves.</summary>
    private Opening Open(Length low, Length high, FrontSpan? front)
    {
        var joinery = _run.Joinery;
        var radius = joinery.PinDiameter / 2;
        var hang = Length.Max(_run.ShelfNosing?.BoardWidth ?? Length.Zero, _run.T);
        var margin = Length.Max(joinery.PinMargin, NearestToPanel);
        var start = Length.Max(margin, hang - _run.T);
        var stop = Length.Max(margin, Nailers.InFrontUnder(box, high) + _run.T + radius);
        stop = Length.Max(stop, hang + radius);
        var span = high - low - start - stop;
        var holes = span < Length.Zero || front is { IsDrawers: true } ? 0 : (int)Math.Min(span / joinery.PinPitch, 10_000) + 1;
        return new(low, high, low + start, holes, (int)(hang / joinery.PinPitch) + 1, front?.Into(_run) ?? Length.Zero);
    }

    private static int[] Share(Opening[] openings, int wanted)
    {
        var shares = new int[openings.Length];
        for (var n = 0; n < wanted; n++)
            shares[Widest(openings, shares)]++;
        return shares;
    }

    /// <summary>The opening that has the most room for one more shelf; the lowest of equals.</summary>
    private static int Widest(Opening[] openings, int[] shares)
    {
        var best = -1;
        for (var i = 0; i < openings.Length; i++)
        {
            if (shares[i] >= openings[i].Most)
                continue;
            if (best < 0 || (Int128)openings[i].Span.Nanometres * (shares[best] + 1) > (Int128)openings[best].Span.Nanometres * (shares[i] + 1))
                best = i;
        }

        return best;
    }

    private ValueList<int> Rest(Opening opening, int shelves)
    {
        var pitch = _run.Joinery.PinPitch;
        var radius = _run.Joinery.PinDiameter / 2;
        var free = opening.Span - (_run.T * shelves);
        var holes = new int[shelves];
        for (var j = 0; j < shelves; j++)
        {
            var underside = opening.Low + (free * (j + 1) / (shelves + 1)) + (_run.T * j);
            var nearest = (underside - radius - opening.FirstHole).RoundTo(pitch) / pitch;
            var least = j == 0 ? 0 : holes[j - 1] + opening.Stride;
            var most = opening.Holes - 1 - (opening.Stride * (shelves - 1 - j));
            holes[j] = (int)Math.Clamp(nearest, least, most);
        }

        return holes.ToValueList();
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using Casewright.Model.Timeline;
using Casewright.Papers.Drawing;
using Casewright.Papers.Drawing.Text;
using Casewright.Papers.Kit;

namespace Casewright.Papers.Documents.Timetable;

/// <summary>
/// The chart of a timetable: a row for everybody and for every station, tasks by number where they lie, and what cures or dries through
/// the night as a hatched band.
/// </summary>
internal sealed class TimetableDrawing(TimetableIndex index, Sketch sketch, DayScale scale, Box area)
{
    /// <summary>Width that the names of the rows take, in millimetres.</summary>
    public const double Names = 30;

    private const double HeadHeight = 11;
    private const double RowHeight = 10.5;
    private const double BandHeight = 6.5;

    private static readonly Lettering Number = new(Lettering.Smallest, FontFamily.BarlowCondensed, FontWeight.SemiBold);
    private static readonly Lettering Name = new(10, Weight: FontWeight.Medium);

    /// <summary>Height of the chart of a timetable.</summary>
    public static double HeightOf(TimetableIndex index) => HeadHeight + (index.Job.Shop.People.Count * RowHeight) + 2
        + (StationsOf(index).Count * RowHeight) + 2 + (BandsOf(index, DateTime.MinValue, DateTime.MaxValue).Count * BandHeight) + 2;

    public void Draw()
    {
        var bands = BandsOf(index, scale.First.ToDateTime(default), scale.Last.AddDays(1).ToDateTime(default));
        var stations = StationsOf(index);
        DrawDays(area.Top + HeadHeight + ((index.Job.Shop.People.Count + stations.Count) * RowHeight) + 4 + (bands.Count * BandHeight));
        var y = area.Top + HeadHeight;
        foreach (var person in index.Job.Shop.People)
        {
            DrawRow(person.Name, y, RowHeight);
            DrawWork(index.Tasks.Where(t => t.People.Any(p => p == person.Id)), y, "person-" + person.Id);
            y += RowHeight;
        }

        y += 2;
        foreach (var station in stations)
        {
            DrawRow(station.Name, y, RowHeight);
            foreach (var task in index.Tasks.Where(t => t.Station == station.Id))
                DrawHold(task, y, "station-" + station.Id);
            y += RowHeight;
        }

        y += 2;
        for (var b = 0; b < bands.Count; b++)
        {
            if (b == 0)
                sketch.TextCentred("by itself", area.Left, y + (BandHeight / 2), Name);
            foreach (var band in bands[b])
                DrawBand(band, y);
            y += BandHeight;
        }
    }

    private static IReadOnlyList<Station> StationsOf(TimetableIndex index) =>
        [.. index.Job.Shop.Stations.Where(s => index.Tasks.Any(t => t.Station == s.Id))];

    /// <summary>
    /// What runs on by itself, packed into as few bands as it takes. What lies under clamps at a station is seen there; what begins on
    /// one day after alike work is one stretch, from the first task to the last hour.
    /// </summary>
    private static List<List<Stretch>> BandsOf(TimetableIndex index, DateTime from, DateTime to)
    {
        var stretches = index.Tasks
            .SelectMany(t => t.RunsOn.Where(r => t.Station is null || r.Until > t.StationUntil).Select(r => (Task: t, On: r)))
            .GroupBy(x => (x.On.What, x.Task.Phase, Day: x.Task.Finish.Date))
            .Select(g => new Stretch(g.Key.What, [.. g.Select(x => index.NumberOf(x.Task)).Distinct().Order()], g.Min(x => x.Task.Finish), g.Max(x => x.On.Until)))
            .Where(s => s.Until > from && s.From < to)
            .OrderBy(s => s.From)
            .ThenBy(s => s.Numbers[0]);
        var bands = new List<List<Stretch>>();
        foreach (var stretch in stretches)
        {
            if (bands.Find(b => b[^1].Until <= stretch.From) is { } free)
                free.Add(stretch);
            else
                bands.Add([stretch]);
        }

        return bands;
    }

    private void DrawRow(string name, double y, double height)
    {
        sketch.TextCentred(Fitting.Cut(name, Name, Names - 2), area.Left, y + (height / 2), Name);
        sketch.Line(area.Left, y + height, scale.Right, y + height, Pen.Hair);
    }

    private void DrawDays(double bottom)
    {
        foreach (var (day, left, width) in scale.Days)
        {
            sketch.Line(left, area.Top + 1, left, bottom, Pen.Hair);
            if (!scale.Works(day))
                continue;
            var (from, to) = scale.WorkOf(day);
            var name = Fitting.Cut(TimetableIndex.Day(day), Name, width - 1);
            sketch.Text(name, left + 0.8, area.Top + 4.4, Name);
            var clocks = $"{TimetableIndex.Clock(day.ToDateTime(scale.Open))}–{TimetableIndex.Clock(day.ToDateTime(scale.Close))}";
            if (TextLayout.Width(clocks, Lettering.Small) < to - from)
                sketch.Text(clocks, left + 0.8, area.Top + 8.8, Lettering.Small);
        }

        sketch.Line(scale.Right, area.Top + 1, scale.Right, bottom, Pen.Hair);
        sketch.Line(area.Left, area.Top + HeadHeight, scale.Right, area.Top + HeadHeight, Pen.Thin);
    }

    private void DrawWork(IEnumerable<ScheduledTask> tasks, double y, string row)
    {
        foreach (var task in tasks)
        {
            for (var s = 0; s < task.Spans.Count; s++)
            {
                var (from, to) = (scale.At(task.Spans[s].From), scale.At(task.Spans[s].To));
                if (to - from > 0.05)
                    DrawTask(task, new(from, y + 1.2, to - from, RowHeight - 2.4), string.Create(CultureInfo.InvariantCulture, $"{row}/{task.Id}/{s}"));
            }
        }
    }

    private void DrawTask(ScheduledTask task, Box box, string id)
    {
        var fill = task.Done ? Tone.Hairline : task.Phase is WorkPhase.Delivery or WorkPhase.Install ? Tone.Sheet : task.Phase == WorkPhase.Splicing ? Tone.WoodEdge : Tone.Wood;
        var number = index.NumberOf(task).ToString(CultureInfo.InvariantCulture);
        sketch.Group(id, $"{number} {task.Name}, {TimetableIndex.Day(task.Start)} {TimetableIndex.Clock(task.Start)} to {TimetableIndex.Clock(task.Finish, DateOnly.FromDateTime(task.Start))}", "task", inner =>
        {
            inner.Rectangle(box, Pen.Thin, fill);
            if (TextLayout.Width(number, Number) + 0.6 <= box.Width)
                inner.TextCentred(number, box.Centre.X, box.Centre.Y, Number, Anchor.Middle);
        });
    }

    private void DrawHold(ScheduledTask task, double y, string row)
    {
        var (from, to, until) = (scale.At(task.Start), scale.At(task.Finish), scale.At(task.StationUntil ?? task.Finish));
        if (until - from <= 0.05)
            return;
        var box = new Box(from, y + 1.2, until - from, RowHeight - 2.4);
        var number = index.NumberOf(task).ToString(CultureInfo.InvariantCulture);
        sketch.Group($"{row}/{task.Id}", $"{number} {task.Name}: in {TimetableIndex.Clock(task.Start)}, free {TimetableIndex.Clock(task.StationUntil ?? task.Finish, DateOnly.FromDateTime(task.Start))}", "hold", inner =>
        {
            inner.Rectangle(box, Pen.Thin, Tone.Sheet);
            Shade(inner, box with { Left = to, Width = Math.Max(0, until - to) });
            if (TextLayout.Width(number, Number) + 1 <= box.Width)
                inner.Add(new TextItem(number, new(box.Centre.X, box.Centre.Y + (Number.CapHeight / 2)), Number, Anchor.Middle, Backed: true));
        });
    }

    private void DrawBand(Stretch stretch, double y)
    {
        var (from, until) = (scale.At(stretch.From), scale.At(stretch.Until));
        if (until - from <= 0.3)
            return;
        var box = new Box(from, y + 1, until - from, BandHeight - 2);
        var number = stretch.Numbered;
        var words = $"{number} {stretch.What}";
        var text = TextLayout.Width(words, Number) + 1.6 <= box.Width ? words : TextLayout.Width(number, Number) + 1 <= box.Width ? number : "";
        sketch.Group($"band/{stretch.Numbers[0]}/{stretch.What}", $"{words} until {TimetableIndex.Day(stretch.Until)} {TimetableIndex.Clock(stretch.Until)}", "band", inner =>
        {
            Shade(inner, box);
            inner.Rectangle(box, Pen.Thin);
            if (text.Length > 0)
                inner.Add(new TextItem(text, new(box.Centre.X, box.Centre.Y + (Number.CapHeight / 2)), Number, Anchor.Middle, Backed: true));
        });
    }

    /// <summary>Something that goes on by itself after one task or several alike.</summary>
    private sealed record Stretch(string What, IReadOnlyList<int> Numbers, DateTime From, DateTime Until)
    {
        public string Numbered => Numbers.Count == 1
            ? Numbers[0].ToString(CultureInfo.InvariantCulture)
            : Numbers[^1] - Numbers[0] == Numbers.Count - 1
                ? string.Create(CultureInfo.InvariantCulture, $"{Numbers[0]}–{Numbers[^1]}")
                : string.Join(", ", Numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)));
    }

    private static void Shade(Sketch sketch, Box box)
    {
        if (box.Width < 0.3)
            return;
        Point[] corners = [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)];
        sketch.Add(Hatch.Lines(corners, 45, 1.5, new Pen(0.15, Tone.Graphite)));
    }
}

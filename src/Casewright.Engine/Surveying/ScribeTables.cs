using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Layout.Cases;
using Casewright.Model.Design;
using Casewright.Model.Jobs;
using Casewright.Model.Measure;
using Casewright.Model.Parts;
using Casewright.Model.Site.Surveying;

namespace Casewright.Engine.Surveying;

/// <summary>The scribe tables of one run, from its parts and the readings of its wall.</summary>
internal sealed class ScribeTables(Job job, Run run, WallSurvey survey, Length wallWidth, IReadOnlyList<Part> parts)
{
    private readonly FloorProfile _floor = new(survey);

    /// <summary>Rows every 200 mm, in inches every 8.</summary>
    private Length Step => job.Units == UnitSystem.Inches ? Length.FromInches(8) : Length.FromMillimetres(200);

    /// <summary>Fillers at walls, left and right.</summary>
    public IEnumerable<FillerFit> Fillers()
    {
        foreach (var (end, measured, isLeft) in new[] { (run.Left, survey.LeftEnd, true), (run.Right, survey.RightEnd, false) })
        {
            if (end.Kind == EndKind.Wall && end.Filler > Length.Zero && measured is { Plumb.Count: > 0 } && Find(PartRole.Filler, isLeft) is { } part)
                yield return Filler(part, end, measured, isLeft);
        }
    }

    /// <summary>Toe faces and base moulds, end panels, rear lippings, crowns.</summary>
    public IEnumerable<ScribeTable> Others() => ToeFaces().Concat(EndPanels()).Concat(RearLips()).Concat(Crowns()).Concat(SlopeFillers());

    private FillerFit Filler(Part part, RunEnd end, WallEnd measured, bool isLeft)
    {
        var profile = new EndProfile(measured, survey.FrontLine);
        var most = isLeft ? survey.Opening!.LeftIn : survey.Opening!.RightIn;
        var away = isLeft ? run.Offset : wallWidth - RunEnd;
        var box = ShelfReader.Box(part);
        Length Gap(Length at) => end.Filler + away + most - profile.In(box.Low.Y + at, box.High.Z);
        return new(part.Id, isLeft, end.Filler, new()
        {
            Part = part.Id,
            Name = part.Name,
            Against = isLeft ? "left wall" : "right wall",
            Blank = part.Width,
            Length = part.Length,
            Rows = ScribeTable.RowsOf(part.Length, Step, profile.Heights.Select(h => h - box.Low.Y), part.Width, Gap),
        });
    }

    private IEnumerable<ScribeTable> ToeFaces()
    {
        if (_floor.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role is PartRole.ToeFace or PartRole.BaseMould && p.Place.AlongLength is Axis.Right or Axis.Left))
        {
            var (low, high) = ShelfReader.Box(part);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "floor",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(
                    part.Length,
                    Step,
                    _floor.Points.Select(p => p.At - low.X).Distinct(),
                    part.Width,
                    at => high.Y + _floor.Below(low.X + at, high.Z)),
            };
        }
    }

    private IEnumerable<ScribeTable> EndPanels()
    {
        var plane = new WallPlane(survey);
        if (plane.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.EndPanel))
        {
            var (low, high) = ShelfReader.Box(part);
            var x = low.X + ((high.X - low.X) / 2);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "wall behind",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(
                    part.Length,
                    Step,
                    survey.PlumbLines.SelectMany(l => l.Readings.Select(r => r.At - low.Y)).Distinct(),
                    part.Width,
                    at => run.Depth + plane.Behind(x, low.Y + at)),
            };
        }
    }

    /// <summary>Rear lippings: the width of the lipped side, from its front edge, that is left where the lip is planed to the wall.</summary>
    private IEnumerable<ScribeTable> RearLips()
    {
        var plane = new WallPlane(survey);
        if (plane.IsEmpty)
            yield break;
        foreach (var part in parts.Where(RearLippings.Is))
        {
            var (low, high) = ShelfReader.Box(part);
            var x = low.X + ((high.X - low.X) / 2);
            var front = parts.First(p => p.Id == RearLippings.SideOf(part)).Nosing is { } id ? ShelfReader.Box(parts.First(p => p.Id == id)).High.Z : run.Depth;
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "wall behind",
                Blank = front - low.Z,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(
                    part.Length,
                    Step,
                    survey.PlumbLines.SelectMany(l => l.Readings.Select(r => r.At - low.Y)).Distinct(),
                    front - low.Z,
                    at => front + plane.Behind(x, low.Y + at)),
            };
        }
    }

    private IEnumerable<ScribeTable> Crowns()
    {
        var ceiling = new ReadingCurve(survey.Ceiling.Select(s => (s.At, survey.Datum + Length.Min(s.Back ?? s.Front!.Value, s.Front ?? s.Back!.Value))));
        if (ceiling.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.Crown && p.Place.AlongLength is Axis.Right or Axis.Left))
        {
            var (low, _) = ShelfReader.Box(part);
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "ceiling",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(part.Length, Step, ceiling.Readings.Select(r => r.At - low.X), part.Width, at => ceiling.At(low.X + at) - low.Y),
            };
        }
    }

    /// <summary>
    /// Strips along a sloping ceiling: what the ceiling leaves of them, square to the slope. Between stations the ceiling is as far off its
    /// stated line as the readings on either side say.
    /// </summary>
    private IEnumerable<ScribeTable> SlopeFillers()
    {
        var wall = job.Walls.First(w => w.Id == run.Wall);
        var lower = new ReadingCurve(survey.Ceiling.Select(s => (s.At, wall.CeilingAt(s.At) - (survey.Datum + Length.Min(s.Back ?? s.Front!.Value, s.Front ?? s.Back!.Value)))));
        if (lower.IsEmpty)
            yield break;
        foreach (var part in parts.Where(p => p.Role == PartRole.Filler && p.Place.Tilt is not null))
        {
            var slope = part.Place.Tilt!.Value;
            yield return new()
            {
                Part = part.Id,
                Name = part.Name,
                Against = "sloping ceiling",
                Blank = part.Width,
                Length = part.Length,
                Rows = ScribeTable.RowsOf(part.Length, Step, lower.Readings.Select(r => slope.Along(r.At - part.Place.Origin.X)), part.Width, at =>
                {
                    var point = part.Place.At(at, Length.Zero, Length.Zero);
                    return slope.Level(wall.CeilingAt(point.X) - lower.At(point.X) - point.Y);
                }),
            };
        }
    }

    private Length RunEnd => run.Width is { } width ? run.Offset + width : wallWidth;

    private Part? Find(PartRole role, bool isLeft)
    {
        var found = parts.Where(p => p.Role == role && p.Place.Tilt is null).OrderBy(p => ShelfReader.Box(p).Low.X).ToList();
        if (found.Count == 0)
            return null;
        var part = isLeft ? found[0] : found[^1];
        var middle = run.Offset + ((RunEnd - run.Offset) / 2);
        return ShelfReader.Box(part).Low.X < middle == isLeft ? part : null;
    }
}
